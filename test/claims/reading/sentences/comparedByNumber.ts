import type { SentenceRow } from './row.ts';

/** One set against another with a number: so many times, so much more. */
export const comparedByNumber: readonly SentenceRow[] = [
  ['The Veltrane costs £260 less.', 'difference fact.price : fact.price {veltrane} = 260 [260, 260]'],
  ['It is £260 dearer than the Tamarick.', 'difference fact.price : fact.price {tamarick} = 260 [260, 260]'],
  ['It is 30 % brighter than the Tamarick.', 'ratio peak max : peak max {tamarick} = 1.3 [1.295, 1.305]'],
  ['Its peak is 1.3 times that of the Tamarick.', 'ratio peak max : peak max {tamarick} = 1.3 [1.25, 1.35]'],
  ['It is twice as bright as the Veltrane.', 'ratio peak max : peak max {veltrane} = 2 [1.8, 2.2]'],
  [
    'Contrast is half that of the Kasulind.',
    'ratio contrast.native : contrast.native {kasulind} = 0.5 [0.45, 0.55]',
  ],
  [
    'It covers 5 points more of P3 than the Tamarick.',
    'difference coverage.p3.xy : coverage.p3.xy {tamarick} = 5 [4.5, 5.5]',
  ],
  [
    'Compared with the Tamarick, it is a third dearer.',
    'ratio fact.price : fact.price {tamarick} = 1.33333 [1.3, 1.36667]',
  ],
  ['It is nearly twice as bright as the Veltrane.', 'ratio peak max : peak max {veltrane} = 2 [1.8, 2)'],
  [
    'It offers almost double the contrast of the Kasulind.',
    'ratio contrast.native : contrast.native {kasulind} = 2 [1.8, 2)',
  ],
  ['Its black level is half that of the Tamarick.', 'ratio black : black {tamarick} = 0.5 [0.45, 0.55]'],
  [
    "Peak luminance is 171 nits higher than the Tamarick's.",
    'difference peak max : peak max {tamarick} = 171 [170.5, 171.5]',
  ],
  ['It uses 20 W less than the Tamarick.', 'difference power.calm {tamarick} : power.calm = 20 [19.5, 20.5]'],
  ["Input lag is 5 ms lower than the Kasulind's.", 'difference lag {kasulind} : lag = 5 [4.5, 5.5]'],
  ['The Nocthale is 10 % brighter.', 'ratio peak max {nocthale} : peak max = 1.1 [1.095, 1.105]'],
  ['It is quicker than the Veltrane by 5 ms.', 'difference lag {veltrane} : lag = 5 [4.5, 5.5]'],
  [
    "Its peak is 80 % higher than the Veltrane's.",
    'ratio peak max : peak max {veltrane} = 1.8 [1.795, 1.805]',
  ],
  [
    "It reaches 1.8 times the Veltrane's peak luminance.",
    'ratio peak max : peak max {veltrane} = 1.8 [1.75, 1.85]',
  ],
  ['It is half as dear as the Nocthale.', 'ratio fact.price : fact.price {nocthale} = 0.5 [0.45, 0.55]'],
  [
    'It costs a quarter more than the Tamarick.',
    'ratio fact.price : fact.price {tamarick} = 1.25 [1.225, 1.275]',
  ],
  [
    'It is 12 mm thinner than the Kasulind.',
    'difference fact.depth {kasulind} : fact.depth = 12 [11.5, 12.5]',
  ],
  [
    'Contrast is almost twice that of the Kasulind.',
    'ratio contrast.native : contrast.native {kasulind} = 2 [1.8, 2)',
  ],
  ["It's more than twice as bright as the Veltrane.", 'ratio peak max : peak max {veltrane} > 2'],
  ['It is less than half the price of the Nocthale.', 'ratio fact.price : fact.price {nocthale} < 0.5'],
  [
    "P3 coverage is 3 points lower than the Tamarick's.",
    'difference coverage.p3.xy {tamarick} : coverage.p3.xy = 3 [2.5, 3.5]',
  ],
  [
    'The 65-inch Hearth costs £260 more.',
    'difference fact.price {variantInches 65} : fact.price = 260 [260, 260]',
  ],
  ["Its blacks are twice as deep as the Kasulind's.", 'ratio black {kasulind} : black = 2 [1.8, 2.2]'],
  ['It is twice as fast as the Kasulind.', 'ratio lag {kasulind} : lag = 2 [1.8, 2.2]'],
  [
    'The chequerboard contrast is a third of the native contrast.',
    'ratio contrast.chequer : contrast.native = 0.333333 [0.3, 0.366667]',
  ],
  [
    'Its native contrast is 3.2 times the chequerboard contrast.',
    'ratio contrast.native : contrast.chequer = 3.2 [3.15, 3.25]',
  ],
  ['HDR needs twice the power of SDR.', 'ratio power.hdr-calm : power.calm = 2 [1.8, 2.2]'],
  ['In HDR it draws 50% more power than in SDR.', 'ratio power.hdr-calm : power.calm = 1.5 [1.495, 1.505]'],
  ['It uses twice as much power in HDR as in SDR.', 'ratio power.hdr-calm : power.calm = 2 [1.8, 2.2]'],
  ['HDR highlights reach three times the luminance of SDR white.', 'ratio peak max : white = 3 [2.5, 3.5]'],
  ['In HDR it is three times as bright as in SDR.', 'ratio peak max : white = 3 [2.5, 3.5]'],
  ['Sustained luminance is half of the peak.', 'ratio peak.sustained max : peak max = 0.5 [0.45, 0.55]'],
  ['SDR takes a third less power than HDR.', 'ratio power.calm : power.hdr-calm = 0.666667 [0.633333, 0.7]'],
  ['The Kasulind beats it by 30 nits.', 'difference peak max {kasulind} : peak max = 30 [29.25, 30.75]'],
  [
    "Its contrast is little more than a third of the Kasulind's.",
    'ratio contrast.native : contrast.native {kasulind} = 0.333333 (0.333333, 0.35]',
  ],
  [
    'It is 12 % brighter than the Plain in a 10 % window but 8 % dimmer full screen.',
    'ratio peak at 10 {window 10} : peak at 10 {veltrane, window 10} = 1.12 [1.115, 1.125]',
    'ratio peak at 100 {window 100} : peak at 100 {veltrane, window 100} = 0.92 [0.915, 0.925]',
  ],
  [
    'The Umbra is slimmer by 14 mm, while the Plain is thicker by 12.',
    'difference fact.depth : fact.depth {nocthale} = 14 [13.5, 14.5]',
    'difference fact.depth {veltrane} : fact.depth = 12 [11.5, 12.5]',
  ],
  [
    'Peak luminance is more than a third above what the Umbra gives.',
    'ratio peak max : peak max {nocthale} > 1.33333',
  ],
  [
    'The Plain is twice as bright at its peak, but the Hearth keeps its light up better over time.',
    'ratio peak max {veltrane} : peak max = 2 [1.8, 2.2]',
  ],
  [
    'In SDR the Plain drinks 12W more than the Hearth.',
    'difference power.sdr {signal SDR, veltrane} : power.sdr {signal SDR} = 12 [11.5, 12.5]',
  ],
  [
    'Against the Plain, though, the Hearth is about 50 % brighter for 25 % more money.',
    'ratio peak max : peak max {veltrane} = 1.5 [1.475, 1.525]',
    'ratio fact.price : fact.price {veltrane} = 1.25 [1.245, 1.255]',
  ],
  [
    "Its pixels answer a millisecond sooner than the Plain's.",
    'difference response {veltrane} : response = 1 [0.5, 1.5]',
  ],
  [
    'In lag the Plain beats the Hearth by 4 ms, and the Umbra takes about two and a half times as long as the Plain.',
    'difference lag : lag {veltrane} = 4 [3.5, 4.5]',
    'ratio lag {nocthale} : lag {veltrane} = 2.5 [2.25, 2.75]',
  ],
  ["That's £1,000 on top of the Plain.", 'difference fact.price : fact.price {veltrane} = 1000 [1000, 1000]'],
  [
    'The Kasulind costs £90 less than this one.',
    'difference fact.price : fact.price {kasulind} = 90 [90, 90]',
  ],
  [
    'The Kasulind is 20 % brighter than this set.',
    'ratio peak max {kasulind} : peak max = 1.2 [1.195, 1.205]',
  ],
  [
    'The 65-inch Hearth costs, for reasons that nobody at Kasulind would share with me, £90 less than this one.',
    'difference fact.price : fact.price {variantInches 65} = 90 [90, 90]',
  ],
];
