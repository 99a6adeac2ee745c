import type { SentenceRow } from './row.ts';

/** Answers that leave out what they repeat: of another set the same, or the opposite. */
export const echoes: readonly SentenceRow[] = [
  [
    "The Kasulind's white is uniform to within 5 %. The Hearth's isn't.",
    'bound uniformity.white {kasulind} <= 5',
    'not bound uniformity.white <= 5',
  ],
  [
    "The Hearth's greys are accurate; the Kasulind's are not.",
    'bound grey.de2000 average < 3',
    'not bound grey.de2000 average {kasulind} < 3',
  ],
  [
    'Greys are accurate here. Not so on the Kasulind.',
    'bound grey.de2000 average < 3',
    'not bound grey.de2000 average {kasulind} < 3',
  ],
  [
    'The Kasulind shows no banding. Nor does the Hearth.',
    'observed banding 0–0 {kasulind}',
    'observed banding 0–0',
  ],
  [
    "The Kasulind shows banding. The Hearth doesn't.",
    'observed banding 1–4 {kasulind}',
    'observed banding 0–0',
  ],
  [
    'The Kasulind shows banding. So does the Hearth.',
    'observed banding 1–4 {kasulind}',
    'observed banding 1–4',
  ],
  ['It shows no banding. The Kasulind does.', 'observed banding 0–0', 'observed banding 1–4 {kasulind}'],
  [
    'The Kasulind is under 3 on average, and so is the Hearth.',
    'bound grey.de2000 average {kasulind} < 3',
    'bound grey.de2000 average < 3',
  ],
  [
    'It is not the brightest set we have tested this year. The Kasulind is.',
    'not order peak max higher best in 2026',
    'order peak max {kasulind} higher best in 2026',
  ],
  [
    "The Kasulind supports HLG. The Hearth doesn't.",
    'fact hdr.formats includes HLG {kasulind}',
    'not fact hdr.formats includes HLG',
  ],
  [
    "Is it the brightest set we've tested this year? No, the Kasulind is.",
    'order peak max {kasulind} higher best in 2026',
  ],
  ['Is the greyscale accurate? It is.', 'bound grey.de2000 average < 3'],
  ['Is the greyscale accurate? No.', 'not bound grey.de2000 average < 3'],
  [
    'Does it support HLG? Yes. It has four HDMI ports.',
    'fact hdr.formats includes HLG',
    'fact hdmi.count = 4',
  ],
  [
    'The Kasulind shows banding. Haloes? Not on the Hearth.',
    'observed banding 1–4 {kasulind}',
    'observed haloes 0–0',
  ],
  ['Is it any good? No.'],
  ['Would it beat the Kasulind? No.'],
  ['It peaks at 742 nits. Do you need more? No.', 'value peak max = 742 [741.5, 742.5]'],
  // Less than 742 nits, or only another number: nobody knows.
  ["The Hearth reaches 742 nits. The Kasulind doesn't.", 'value peak max = 742 [741.5, 742.5]', 'unproven'],
  // A comparison names two sets already.
  [
    "It is 30 % brighter than the Kasulind. The Veltrane isn't.",
    'ratio peak max : peak max {kasulind} = 1.3 [1.295, 1.305]',
    'unproven',
  ],
  ['The Kasulind is here. The Hearth is too.'],
  [
    'It lacks HDR10+, which the Plain has.',
    'fact hdr.formats excludes HDR10+',
    'not fact hdr.formats excludes HDR10+ {veltrane}',
  ],
  [
    'It lacks HDR10+, the Plain does not.',
    'fact hdr.formats excludes HDR10+',
    'not fact hdr.formats excludes HDR10+ {veltrane}',
  ],
  [
    'Blue is also oversaturated, as is red, while green errs the other way and is undersaturated.',
    'direction sweep.blue.saturation average over',
    'direction sweep.red.saturation average over',
    'direction sweep.green.saturation average under',
  ],
  [
    'The grey error averages 2.4. The same goes for the Plain.',
    'value grey.de2000 average = 2.4 [2.35, 2.45]',
    'value grey.de2000 average {veltrane} = 2.4 [2.35, 2.45]',
  ],
  [
    'Red is over-saturated. The same is true of the Plain.',
    'direction sweep.red.saturation average over',
    'direction sweep.red.saturation average {veltrane} over',
  ],
  ['The same goes for the Plain.'],
];
