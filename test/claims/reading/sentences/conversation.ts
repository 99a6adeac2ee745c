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
  [
    "Contrast is 5,240:1. The Plain? 2,000:1. The Umbra's? 12,000:1.",
    'value contrast.native = 5240 [5235, 5245]',
    'value contrast.native {veltrane} = 2000 [1950, 2050]',
    'value contrast.native {nocthale} = 12000 [11700, 12300]',
  ],
  ['HDR10+? No. HLG? Yes.', 'not fact hdr.formats includes HDR10+', 'fact hdr.formats includes HLG'],
  ["It does HLG, it does HDR10+, it doesn't do anything else.", 'fact hdr.formats includes HLG+HDR10+'],
  [
    'The Plain? Cheaper. It costs £579.',
    'order fact.price {veltrane} lower ahead of orrinvale-hearth-55',
    'fact price = 579 {veltrane}',
  ],
  ['Who needs the Plain? It weighs 15 kg.', 'fact weight = 15'],
  [
    'Gamers may sniff at the lag of the Hearth, 9.6 ms, although the rest of us have slower thumbs.',
    'value lag = 9.6 [9.55, 9.65]',
  ],
  [
    'Gamers should note a lag of 19.5ms, although Orrinvale quotes 16.',
    'value lag = 19.5 [19.45, 19.55]',
    'fact lag = 16 by maker',
  ],
  [
    'Its white uniformity beats the Plain’s, if that’s any comfort.',
    'order uniformity.white {level white} lower ahead of veltrane-plain-50',
  ],
  ['Those with longer walls may have the 65-inch Hearth for £1,299.', 'fact price = 1299 {variantInches 65}'],
  ['The television cannot be blamed, since its lag is 9.1 ms.', 'value lag = 9.1 [9.05, 9.15]'],
];
