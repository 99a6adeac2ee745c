import type { SentenceRow } from './row.ts';

/** Which way the greys lean, and how much. */
export const tints: readonly SentenceRow[] = [
  ['Greys lean towards green.', 'direction grey.tint average ≥50 ≤100 green'],
  ['There is no tint.', 'direction grey.tint average ≥50 ≤100 none'],
  ['Greys are neutral.', 'direction grey.tint average ≥50 ≤100 none'],
  ['Greys lose their neutrality above 60 %: green creeps in.', 'direction grey.tint average >60 tinted'],
  ['White leans blue.', 'direction grey.tint at 100 blue'],
  ['White has a blue tint.', 'direction grey.tint at 100 blue'],
  ['Greys are tinted green.', 'direction grey.tint average ≥50 ≤100 green'],
  ['The greyscale has a faint green tint from 50 % up.', 'direction grey.tint average ≥50 green slight'],
  ["There's a slight magenta cast in the shadows.", 'direction grey.tint average ≥5 ≤30 magenta slight'],
  ['No colour cast mars the greys.', 'direction grey.tint average ≥50 ≤100 none'],
  ['Bright greys look greenish.', 'direction grey.tint average ≥50 ≤100 green'],
  ['Greys are slightly yellowish in the highlights.', 'direction grey.tint average ≥70 ≤100 yellow slight'],
  ['The midtones are faintly reddish.', 'direction grey.tint average ≥30 ≤70 red slight'],
  ['There is a clear blue cast.', 'direction grey.tint average ≥50 ≤100 blue obvious'],
  ['Highlights have no tint.', 'direction grey.tint average ≥70 ≤100 none'],
  [
    'White is not neutral: it leans towards cyan.',
    'direction grey.tint at 100 tinted',
    'direction grey.tint at 100 cyan',
  ],
  ['The greyscale is neutral from 50 % up.', 'direction grey.tint average ≥50 none'],
  ['Greys lean slightly towards green.', 'direction grey.tint average ≥50 ≤100 green slight'],
  ["There's a hint of red in the mid-tones.", 'direction grey.tint average ≥30 ≤70 red slight'],
  ['After adjustment the tint is gone.', 'direction grey.tint average ≥50 ≤100 {stage adjusted} none'],
  ['Greys lean slightly to green below 40 %.', 'direction grey.tint average <40 green slight'],
  [
    "You hardly need a meter to see why: the Hearth's greys have an obvious blue tint, as if somebody had left the fridge door open.",
    'direction grey.tint average ≥50 ≤100 blue obvious',
  ],
  ['The Plain is obviously blue.', 'direction grey.tint average ≥50 ≤100 {veltrane} blue obvious'],
  [
    'The greys are neutral, no colour is oversaturated.',
    'direction grey.tint average ≥50 ≤100 none',
    'unproven',
  ],
  ['The tint is a mild blue.', 'direction grey.tint average ≥50 ≤100 blue mild'],
  [
    'A faint green cast that nobody will notice is all we saw.',
    'direction grey.tint average ≥50 ≤100 green slight',
    'unproven',
  ],
  ['It not only has a green cast, it is also dim.', 'direction grey.tint average ≥50 ≤100 green', 'opinion'],
  ['Greys lean green.', 'direction grey.tint average ≥50 ≤100 green'],
  ['The picture leans green.', 'direction grey.tint average ≥50 ≤100 green'],
  ['Near black leans green.', 'direction grey.tint average ≥5 ≤10 green'],
  [
    "The Hearth's greys carry a mild red cast, the Plain's an obvious blue one, and the Vane's a slight lean towards magenta.",
    'direction grey.tint average ≥50 ≤100 red mild',
    'direction grey.tint average ≥50 ≤100 {veltrane} blue obvious',
    'direction grey.tint average ≥50 ≤100 {kasulind} magenta slight',
  ],
  [
    'What cast the Hearth has is a slight one towards magenta.',
    'direction grey.tint average ≥50 ≤100 magenta slight',
  ],
  [
    "The Hearth's greys drift towards blue, whereas those of the Plain go the other way, towards yellow.",
    'direction grey.tint average ≥50 ≤100 blue',
  ],
  [
    'As for the tint, from 10 to 40 percent it is a mild blue and from 50 percent to white a slight green.',
    'direction grey.tint average ≥10 ≤40 blue mild',
    'direction grey.tint average ≥50 green slight',
  ],
  [
    "Look at this grey ramp. Can you see what's happening towards the top? It's obviously blue.",
    'direction grey.tint average ≥50 ≤100 blue obvious',
  ],
  ['The tint leans mildly towards yellow.', 'direction grey.tint average ≥50 ≤100 yellow mild'],
  [
    'The greys are a mild blue below 40 % and neutral above.',
    'direction grey.tint average <40 blue mild',
    'unproven',
  ],
  [
    "Its tint is yellow, where the Plain's leans to green.",
    'direction grey.tint average ≥50 ≤100 yellow',
    'direction grey.tint average ≥50 ≤100 {veltrane} green',
  ],
  [
    'The cause isn’t hard to find, for the upper half of the scale wears an obvious blue tint.',
    'direction grey.tint average ≥50 ≤100 blue obvious',
  ],
  [
    "Its greys lean a little towards red, where the Plain's are clearly blue.",
    'direction grey.tint average ≥50 ≤100 red mild',
  ],
  [
    'From 10 to 40% the greys lean towards blue; from 70% upwards they turn green.',
    'direction grey.tint average ≥10 ≤40 blue',
    'direction grey.tint average ≥70 green',
  ],
  [
    'The greys are blue from 10 to 40% and green from 70% up.',
    'direction grey.tint average ≥10 ≤40 blue',
    'direction grey.tint average ≥70 green',
  ],
  [
    'Its greys lean towards green, though you would be hard pressed to see it.',
    'direction grey.tint average ≥50 ≤100 green',
  ],
  [
    'The hue of yellow is off by 3.5 degrees, and cyan leans towards blue.',
    'value sweep.yellow.hue average = 3.5 [3.45, 3.55] either side',
    'direction sweep.cyan.hue average blue',
  ],
  ['The greyscale has a mild tint towards blue.', 'direction grey.tint average ≥50 ≤100 blue mild'],
  [
    'White lands at about 5,990 K, on the warm side of neutral.',
    'value white.cct = 5990 [5870.2, 6109.8]',
    'direction white.cct warm',
  ],
];
