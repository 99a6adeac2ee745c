/** A review of any length for measuring: every sentence and paragraph differs, so that no memo is served for nothing. */

/** Seeded numbers in [0, 1): a linear congruential generator (Numerical Recipes' constants, from memory). */
export function seeded(seed: number): () => number {
  let state = (seed * 2654435761 + 1) >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

type Random = () => number;

function pick<T>(random: Random, list: readonly T[]): T {
  return list[Math.floor(random() * list.length)]!;
}

function between(random: Random, low: number, high: number, decimals = 0): string {
  return (low + random() * (high - low)).toFixed(decimals);
}

const hedges = ['about', 'around', 'roughly'];

/** A hedged number near the measured one: other words and another number each time, and sentences mostly agree. */
function near(random: Random, measured: number, decimals = 0): string {
  return `${pick(random, hedges)} ${between(random, measured * 0.97, measured * 1.03, decimals)}`;
}

const peaks = [
  ['2%', 700],
  ['10%', 742],
  ['25%', 610],
  ['50%', 480],
] as const;
const rivals = [
  ['Kasulind', 731],
  ['Veltrane', 412],
  ['Tamarick', 571],
  ['Nocthale', 980],
] as const;
const angles = [
  ['30', 60],
  ['45', 38],
  ['60', 25],
] as const;
const errors = [
  ['20%', 1.5],
  ['40%', 1.7],
  ['60%', 3.2],
  ['80%', 3.6],
] as const;

/** Sentences that claim something, with other numbers each time. */
const claims: readonly ((random: Random) => string)[] = [
  (random) => {
    const [window, nits] = pick(random, peaks);
    return `Peak luminance is ${near(random, nits)} nits in a ${window} window.`;
  },
  (random) => `The average error of the greyscale stays under ${between(random, 3, 4, 2)}.`,
  (random) => `It has ${pick(random, ['four', 'four', 'four', 'five'])} HDMI ports.`,
  (random) => `We paid ${near(random, 1039)} pounds, which is what shops ask for it now.`,
  (random) => `After adjustment the average error is ${near(random, 0.6, 2)}.`,
  (random) => {
    const [angle, share] = pick(random, angles);
    return `At ${angle} degrees it keeps ${near(random, share, 1)}% of its luminance.`;
  },
  (random) => {
    const [name, nits] = pick(random, rivals);
    return `The ${name} reaches ${near(random, nits)} nits.`;
  },
  (random) => `Its native contrast is ${near(random, 1890)}:1, as black as the panel allows.`,
  () => 'Blooming is only visible to a trained eye.',
  (random) => `It covers ${near(random, 98.2, 1)}% of P3 in xy.`,
  (random) => `From ${pick(random, ['60', '60', '60', '50'])}% upwards the greyscale error is over 3.`,
  (random) => {
    const [level, error] = pick(random, errors);
    return `At ${level} the greyscale error is ${near(random, error, 2)}.`;
  },
  (random) => {
    const [name, nits] = pick(random, rivals.slice(1, 3));
    return `It is ${near(random, (742 / nits - 1) * 100)}% brighter than the ${name}.`;
  },
  (random) => `The cabinet is ${near(random, 71)} mm deep, so that it hangs close to the wall in most rooms.`,
  (random) => `No greyscale error rises above ${between(random, 7, 8, 2)} before adjustment.`,
  (random) => `Measured at full screen, it still manages ${near(random, 350)} nits.`,
  (random) => `At £1,039 it is the brightest set under £${between(random, 1048, 1300)} this year.`,
  (random) => `Orrinvale claims ${near(random, 1000)} nits for it.`,
];

const openings = [
  'We lived with the set',
  'My neighbour watched the final',
  'Two colleagues sat down',
  'The evenings were spent',
  'Nobody in the house complained',
  'A long film ran',
  'The old sofa was moved',
  'Children came and went',
  'Our editor walked past',
  'The carpenter dropped in',
  'Somebody left the door open',
  'The cat slept',
  'An uncle told stories',
  'The radio murmured',
  'I kept a notebook',
  'The rain drummed on the roof',
  'Everyone brought a cushion',
  'The remote control went missing',
  'A parcel arrived',
  'The gardener asked for tea',
];
const middles = [
  'for three weeks in the room behind the kitchen',
  'while the lamps along the shelf were lit one after another',
  'in front of a wall that had been painted the summer before',
  'with the curtains drawn and the street outside asleep',
  'beside the window where the piano used to stand',
  'through a winter afternoon that seemed to have no end',
  'on the chairs that we had carried down from the attic',
  'until the last train had rattled over the bridge',
  'under the clock that my grandmother brought from the coast',
  'between the bookcase and the stove',
  'among boxes, tools and half a dozen cups of coffee',
  'at the table where the photographs are sorted',
];
const endings = [
  'and the longer it went on the more it felt like furniture',
  'so we wrote down what came to mind and left the rest for later',
  'though I could not say that anybody paid attention',
  'because that is how people use a television',
  'and then talked about something else entirely',
  'which tells you more about us than about the machine',
  'and nobody thought of switching it off',
  'as we do with everything that passes through this office',
  'before the conversation turned to the garden',
  'and it took a good hour to tidy up',
  'but the manual stayed in its bag',
  'and I was glad of the company',
  'while the dog waited for its walk',
  'so the notes begin with a list of names',
];
const asides = ['', '', 'That day', 'Later', 'Once more', 'As usual', 'By then', 'In the meantime'];

function plainSentence(random: Random): string {
  const aside = pick(random, asides);
  const opening = pick(random, openings);
  const first = aside === '' ? opening : `${aside}, ${opening.charAt(0).toLowerCase()}${opening.slice(1)}`;
  return `${first} ${pick(random, middles)}, ${pick(random, endings)}.`;
}

const headings = [
  'Setting up',
  'In SDR',
  'In HDR',
  'From the side',
  'Ports and price',
  'After adjustment',
  'Out of the box',
];

function tableOf(random: Random): string {
  const rows = peaks
    .slice(0, 3)
    .map(([window, nits]) => `| ${window} window | ${near(random, nits)} | ${near(random, 731)} |`);
  return ['| Patch | Peak luminance (cd/m²) | Kasulind |', '| --- | --- | --- |', ...rows].join('\n');
}

/** About `words` words of Markdown with one claim in fifty words, headings, and a table every 2,500 words. */
export function reviewOf(words: number, seed: number): string {
  const random = seeded(seed);
  const blocks: string[] = ['# Orrinvale Hearth 55'];
  const used = new Set<string>();
  let count = 0;
  let claimed = 0;
  let tables = 0;
  for (let paragraph = 0; count < words; paragraph++) {
    if (paragraph % 9 === 4) blocks.push(`${paragraph % 2 ? '##' : '###'} ${pick(random, headings)}`);
    if (count > (tables + 0.5) * 2500) {
      blocks.push(tableOf(random));
      tables++;
      claimed += 6;
    }
    const sentences: string[] = [];
    const length = 3 + Math.floor(random() * 5);
    // Every third paragraph is plain prose; claims fill the others up to their share.
    while (sentences.length < length) {
      const isClaim = paragraph % 3 !== 2 && claimed < count / 50 && random() < 0.7;
      const sentence = isClaim ? pick(random, claims)(random) : plainSentence(random);
      if (!isClaim && used.has(sentence)) continue;
      used.add(sentence);
      if (isClaim) claimed += 1;
      count += sentence.split(' ').length;
      sentences.push(sentence);
    }
    const isList = paragraph % 11 === 6;
    blocks.push(isList ? sentences.map((sentence) => `- ${sentence}`).join('\n') : sentences.join(' '));
  }
  return blocks.join('\n\n');
}
