import type { SentenceRow } from './row.ts';

/** Conversations, in which each turn is a paragraph of its own and goes on from the one before. */
export const conversation: readonly SentenceRow[] = [
  ['Host: Any banding?\n\nReviewer: None.', 'observed banding 0–0'],
  [
    'Host: And the contrast?\n\nReviewer: 4,310:1. The Plain does 1,120:1.',
    'value contrast.native = 4310 [4305, 4315]',
    'value contrast.native {veltrane} = 1120 [1115, 1125]',
  ],
  [
    'Host: And the price?\n\nReviewer: £1,149.\n\nHost: That’s a hundred more than the Plain.',
    'fact price = 1149',
    'difference fact.price : fact.price {veltrane} = 100 [100, 100]',
  ],
  // Another label begins anew.
  ['Any banding?\n\nSound: none.'],
  [
    '## Gamma\n\nIt averages 2.31. The target is 2.2.',
    'value gamma.average = 2.31 [2.305, 2.315]',
    'unproven',
  ],
  ['## Verdict\n\n- Quick: 11.2 ms', 'value lag = 11.2 [11.15, 11.25]'],
];
