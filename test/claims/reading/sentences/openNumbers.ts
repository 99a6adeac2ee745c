import type { SentenceRow } from './row.ts';

/** Numbers in other forms, numbers that stay open, counts of levels, and amounts that are no set's price. */
export const openNumbers: readonly SentenceRow[] = [
  ['The cabinet is 1.4 m wide.', 'fact width = 1400'],
  ["It's under two inches deep, too.", 'fact depth < 50.8'],
  [
    'It weighs two kilos and a half more than the Kasulind.',
    'difference fact.weight : fact.weight {kasulind} = 2.5 [2.25, 2.75]',
  ],
  ['The average error is three and a bit.', 'unproven'],
  ['Its lag is in the mid-twenties.', 'unproven'],
  ['Peak luminance sits in the high 700s.', 'unproven'],
  ['It costs £900 and change.', 'unproven'],
  ['The neighbour is in his mid-thirties.'],
  ['After two minutes: 99.4 %.', 'value peak.hold max = 99.4 [99.35, 99.45]'],
  [
    'Green: 9.7 % oversaturated (mean of the sweep).',
    'value sweep.green.saturation average = 9.7 [9.65, 9.75]',
  ],
  ['I paid £19.99 for the fern.'],
  ['We gave £4 to the busker.'],
  ['We paid £1,039 for the set.', 'fact price = 1039'],
  ['Picture editor: £1,039.', 'fact price = 1039'],
  ['300 nits is not enough for HDR.', 'unproven'],
  [
    'With white set to 120 nits the average error is 0.6.',
    'unproven',
    'value grey.de2000 average = 0.6 [0.55, 0.65]',
  ],
];
