import type { SentenceRow } from './row.ts';

/** Two whole statements in one sentence, by whatever they are joined: each is of its own set. */
export const joined: readonly SentenceRow[] = [
  [
    'It is not as bright as the Nocthale and it misses 7 % of P3.',
    'order peak max higher behind of nocthale-umbra-55',
    'unproven',
  ],
  [
    'It is £260 dearer than the Tamarick, and the Plain leans to red.',
    'difference fact.price : fact.price {tamarick} = 260 [260, 260]',
    'direction grey.tint average ≥50 ≤100 {veltrane} red',
  ],
  [
    'It is taller than the Kasulind, and the gap between the Plain and the Umbra is £250.',
    'order fact.height higher ahead of kasulind-vane-50',
    'unproven',
  ],
  [
    "Its contrast is well ahead of the Kasulind's, while it is on a par with the Plain for contrast.",
    'order contrast.native higher ahead of kasulind-vane-50',
    'order contrast.native higher matches of veltrane-plain-50',
  ],
  [
    "It is nearly as bright as the Umbra, the Kasulind's blacks are brighter.",
    'order peak max higher matches of nocthale-umbra-55',
    'order black {kasulind} higher ahead of orrinvale-hearth-55',
  ],
  [
    'It is cheaper than the Umbra, and the Kasulind and the Tamarick are dimmer.',
    'order fact.price lower ahead of nocthale-umbra-55',
    'unproven',
  ],
  [
    'It misses P3 by 7 %, and the greys are a mild blue below 40 %.',
    'unproven',
    'direction grey.tint average <40 blue mild',
  ],
  [
    "It used to cost £1,499, but the error isn't below 3 at every level.",
    'unproven',
    'bound grey.de2000 max >= 3',
  ],
  [
    'It is not quite as bright as the Kasulind and the warranty is two years.',
    'order peak max higher behind of kasulind-vane-50',
    'fact warranty = 24',
  ],
  [
    'It is 200 pounds dearer than the Tamarick, and it weighs less than 18 kg.',
    'difference fact.price : fact.price {tamarick} = 200 [200, 200]',
    'fact weight < 18',
  ],
  [
    "It isn't as deep as the Kasulind, and the remote weighs 90 grams.",
    'order fact.depth higher behind of kasulind-vane-50',
  ],
  [
    'It is as bright as the Plain, and the 65-inch Hearth costs £1,299.',
    'order peak max higher matches of veltrane-plain-50',
    'fact price = 1299 {variantInches 65}',
  ],
  [
    'Gamma averages 2.11, so shadows open up and night scenes look airy.',
    'value gamma.average = 2.11 [2.105, 2.115]',
  ],
  [
    'The Plain costs 50 % more and would suit a darkened room.',
    'ratio fact.price {veltrane} : fact.price = 1.5 [1.495, 1.505]',
  ],
  [
    'Magentas are over-saturated and yellows under-saturated, although faces come through it all looking human.',
    'direction sweep.magenta.saturation average over',
    'direction sweep.yellow.saturation average under',
  ],
];
