import type { SentenceRow } from './row.ts';

/** Comparisons that leave out what they compare, as the words before have said it; light that is kept or lost. */
export const comparedWithBefore: readonly SentenceRow[] = [
  [
    'It tops out at 742 nits. That is just under twice the Veltrane, and about 20 % over the Kasulind.',
    'value peak max = 742 [741.5, 742.5]',
    'ratio peak max : peak max {veltrane} = 2 [1.8, 2)',
    'ratio peak max : peak max {kasulind} = 1.2 [1.19, 1.21]',
  ],
  [
    "Contrast is 4,400:1 with dimming off, or a little over three times the Tamarick's.",
    'value contrast.native {dimming off} = 4400 [4350, 4450]',
    'ratio contrast.native {dimming off} : contrast.native {dimming off, tamarick} = 3 (3, 3.15]',
  ],
  [
    "It costs £899. It's a third more than the Veltrane.",
    'fact price = 899',
    'ratio fact.price : fact.price {veltrane} = 1.33333 [1.3, 1.36667]',
  ],
  [
    'It reaches 231 nits, which is less than the Kasulind gives.',
    'value peak max = 231 [230.5, 231.5]',
    'order peak max lower ahead of kasulind-vane-50',
  ],
  [
    'White reaches 347 nits. That makes it 30 % brighter than the Nocthale.',
    'value white = 347 [346.5, 347.5]',
    'ratio white : white {nocthale} = 1.3 [1.295, 1.305]',
  ],
  [
    'Over the full screen it gives 240 nits. That is a third of what the Kasulind gives.',
    'value peak at 100 {window 100} = 240 [235, 245]',
    'ratio peak at 100 {window 100} : peak at 100 {kasulind, window 100} = 0.333333 [0.3, 0.366667]',
  ],
  // Two quantities stand before it: nobody knows which is meant.
  [
    'The lag is 9 ms and the price £899. That is twice the Kasulind.',
    'value lag = 9 [8.5, 9.5]',
    'fact price = 899',
    'unproven',
  ],
  [
    'It holds on to more light at 45 degrees than the Nocthale.',
    'order angle.luminance at 45 {angle 45} higher ahead of nocthale-umbra-55',
  ],
  [
    'At 45 degrees it loses less light than the Kasulind.',
    'order angle.luminance at 45 {angle 45} higher ahead of kasulind-vane-50',
  ],
  [
    'The Kasulind holds its peak better than the Nocthale.',
    'order peak.hold max {kasulind} higher ahead of nocthale-umbra-55',
  ],
  ['At 30 degrees it is brighter than the Kasulind.', 'unproven'],
  ['At 45 degrees it loses twice as much light as the Kasulind.', 'unproven'],
  [
    'At 45 degrees it keeps half as much light again as the Kasulind.',
    'ratio angle.luminance at 45 {angle 45} : angle.luminance at 45 {angle 45, kasulind} = 1.5 [1.45, 1.55]',
  ],
  [
    'Contrast is 4,400:1. Even the Kasulind, which costs less, has twice as much.',
    'value contrast.native = 4400 [4350, 4450]',
    'order fact.price {kasulind} lower ahead of orrinvale-hearth-55',
    'ratio contrast.native {kasulind} : contrast.native = 2 [1.8, 2.2]',
  ],
  [
    'It costs £899, £70 below the Kasulind and £50 above the Nocthale.',
    'fact price = 899',
    'difference fact.price {kasulind} : fact.price = 70 [70, 70]',
    'difference fact.price : fact.price {nocthale} = 50 [50, 50]',
  ],
  ['The Kasulind is 100 cd/m² behind.', 'difference peak max : peak max {kasulind} = 100 [97.5, 102.5]'],
  [
    'It covers 95 % of P3 in xy, which beats the Kasulind and loses to the Nocthale.',
    'value coverage.p3.xy = 95 [94.5, 95.5]',
    'order coverage.p3.xy higher ahead of kasulind-vane-50',
    'order coverage.p3.xy higher behind of nocthale-umbra-55',
  ],
  [
    'An all-white screen brings 240 nits, a third of the peak.',
    'value peak at 100 {window 100} = 240 [235, 245]',
    'ratio peak at 100 {window 100} : peak max = 0.333333 [0.3, 0.366667]',
  ],
  [
    'At 45 degrees three fifths of the light survive.',
    'value angle.luminance at 45 {angle 45} = 60 [54, 66]',
  ],
  [
    'The lag is 9 ms, the shortest we have measured this year.',
    'value lag = 9 [8.5, 9.5]',
    'order lag lower best in 2026',
  ],
  // A maker's number is compared on the set that it was promised for.
  [
    'The Vane promises 750 nits and keeps to it.',
    'fact peak = 750 by maker {kasulind}',
    'bound peak max {kasulind} >= 750',
  ],
  // Two rivals: only where the review compares with two.
  ['It is brighter than either rival.', 'unproven'],
  // What stands behind "with" is not denied.
  ['It does not tire, with more than 95 % of its output left after two minutes.', 'bound peak.hold max > 95'],
  [
    'The average is 2.7 and the worst 5.1. It is visible from 70 % onwards.',
    'value grey.de2000 average = 2.7 [2.65, 2.75]',
    'value grey.de2000 max = 5.1 [5.05, 5.15]',
    'onset grey.de2000 over 3 from 70 included',
  ],
  // A thing that is no quantity is not what was said before.
  [
    'The lag is 9 ms. Its remote is smaller than that of the Kasulind.',
    'value lag = 9 [8.5, 9.5]',
    'unproven',
  ],
  ["The lag is 9 ms. The Kasulind's remote is smaller.", 'value lag = 9 [8.5, 9.5]'],
  [
    "The lag is 9 ms. The Kasulind's is shorter.",
    'value lag = 9 [8.5, 9.5]',
    'order lag {kasulind} lower ahead of orrinvale-hearth-55',
  ],
  [
    'The average is 4.1. After adjustment it is 1.8 on average, less than half of that.',
    'value grey.de2000 average = 4.1 [4.05, 4.15]',
    'value grey.de2000 average {stage adjusted} = 1.8 [1.75, 1.85]',
    'ratio grey.de2000 average {stage adjusted} : grey.de2000 average {stage as-delivered} < 0.5',
  ],
  [
    'You can have it for 15 % less than the Kasulind.',
    'ratio fact.price : fact.price {kasulind} = 0.85 [0.845, 0.855]',
  ],
  [
    "It's a kilo and a half heavier than the Kasulind.",
    'difference fact.weight : fact.weight {kasulind} = 1.5 [1.25, 1.75]',
  ],
  [
    'At 30 degrees you lose a fifth of the light, at 60 four fifths.',
    'value angle.luminance at 30 {angle 30} = 80 [78, 82]',
    'value angle.luminance at 60 {angle 60} = 20 [12, 28]',
  ],
  [
    'At 30 degrees it loses 20 % of its light and at 60 degrees 50 %.',
    'value angle.luminance at 30 {angle 30} = 80 [79.5, 80.5]',
    'value angle.luminance at 60 {angle 60} = 50 [49.5, 50.5]',
  ],
  [
    'At 30 degrees it loses a fifth of its light, the Plain a third.',
    'value angle.luminance at 30 {angle 30} = 80 [78, 82]',
    'value angle.luminance at 30 {angle 30, veltrane} = 66.6667 [63.3333, 70]',
  ],
  [
    'At 30 degrees you lose 20 % of the light, at 60 80 %.',
    'value angle.luminance at 30 {angle 30} = 80 [79.5, 80.5]',
    'value angle.luminance at 60 {angle 60} = 20 [19.5, 20.5]',
  ],
  [
    'The Hearth is brightest in a 10 % window and a 25 % window.',
    'order peak at 10 {window 10} higher best',
    'order peak at 25 {window 25} higher best',
  ],
  [
    'The Hearth is brighter than the Plain in a 10 % window and in a 25 % window.',
    'order peak at 10 {window 10} higher ahead of veltrane-plain-50',
    'order peak at 25 {window 25} higher ahead of veltrane-plain-50',
  ],
  [
    "Its lag is about 7ms longer than the Plain's, and the longest of our three.",
    'difference lag : lag {veltrane} = 7 [6.5, 7.5]',
    'unproven',
  ],
  [
    'It reaches 742 nits, and the Plain manages less.',
    'value peak max = 742 [741.5, 742.5]',
    'order peak max {veltrane} lower ahead of orrinvale-hearth-55',
  ],
  [
    'At 45 degrees the Hearth keeps 56 per cent of its luminance, and the Plain keeps more.',
    'value angle.luminance at 45 {angle 45} = 56 [55.5, 56.5]',
    'order angle.luminance at 45 {angle 45, veltrane} higher ahead of orrinvale-hearth-55',
  ],
  [
    'Average greyscale error is 2.6. The Plain does better.',
    'value grey.de2000 average = 2.6 [2.55, 2.65]',
    'order grey.de2000 average {veltrane} lower ahead of orrinvale-hearth-55',
  ],
];
