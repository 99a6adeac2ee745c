import type { SentenceRow } from './row.ts';

/** Places and comparisons among the three sets that a review compares. */
export const amongThree: readonly SentenceRow[] = [
  [
    'The Hearth costs £839, which is to say that it undercuts the Kasulind by exactly £90 and the Umbra by £160, and so becomes the cheapest of the three.',
    'fact price = 839',
    'difference fact.price {kasulind} : fact.price = 90 [90, 90]',
    'difference fact.price {nocthale} : fact.price = 160 [160, 160]',
    'order fact.price lower best of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'That makes the Hearth second of the three for peak brightness.',
    'order peak max higher position 2 of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'That puts the Hearth last of the three for peak luminance.',
    'order peak max higher position 3 of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'It covers 80 % of P3 in xy, where the Plain manages 99.7 %, and comes last of the three.',
    'value coverage.p3.xy = 80 [79.5, 80.5]',
    'value coverage.p3.xy {veltrane} = 99.7 [99.65, 99.75]',
    'order coverage.p3.xy higher position 3 of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'It has an error of 2.9, so that the Hearth may claim the best greyscale of the three.',
    'value grey.de2000 = 2.9 [2.85, 2.95]',
    'order grey.de2000 average lower best of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'It covers 99.4 % of P3, and it is the widest of the three.',
    'value coverage.p3.xy = 99.4 [99.35, 99.45]',
    'order coverage.p3.xy higher best of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'A 50 percent grey field varies by 13 percent, with its worst patch on the right edge, and neither rival is as even.',
    'value uniformity.grey50 {level grey50} = 13 [12.5, 13.5]',
    'order uniformity.grey50 {level grey50} lower best of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'For peak luminance that puts the Hearth last of the three.',
    'order peak max higher position 3 of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'It comes last of the three for peak luminance.',
    'order peak max higher position 3 of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'It covers 80 % of P3 in xy and comes last of the three.',
    'value coverage.p3.xy = 80 [79.5, 80.5]',
    'order coverage.p3.xy higher position 3 of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'It covers 99.4 % of P3, the widest of the three.',
    'value coverage.p3.xy = 99.4 [99.35, 99.45]',
    'order coverage.p3.xy higher best of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'The lag is 12 ms, and it is the longest of the three.',
    'value lag = 12 [11.5, 12.5]',
    'order lag higher best of veltrane-plain-50 nocthale-umbra-55',
  ],
  ['The lag is 12 ms. It is the longest of the three.', 'value lag = 12 [11.5, 12.5]', 'unproven'],
  [
    'Both rivals keep more of theirs at 45 degrees.',
    'order angle.luminance at 45 {angle 45} lower best of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'Both rivals keep more of their light at 45 degrees.',
    'order angle.luminance at 45 {angle 45} lower best of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'Both rivals lose less at 45 degrees.',
    'order angle.luminance at 45 {angle 45} lower best of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'On price the Hearth is the middle child of the three.',
    'order fact.price lower position 2 of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'On price, in other words, the Hearth is the middle child of the three.',
    'order fact.price lower position 2 of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'The board has nothing to toast, oddly: of the three sets the Hearth draws the least power in HDR.',
    'order power.hdr-calm {signal HDR} lower best of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'The contrast is fine: of the three sets the Hearth draws the least power in HDR.',
    'opinion',
    'order power.hdr-calm {signal HDR} lower best of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'The contrast is 3,283:1, which puts it second of the three.',
    'value contrast.native = 3283 [3282.5, 3283.5]',
    'order contrast.native higher position 2 of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'It covers 86.2 % of P3, which leaves it the last of the three.',
    'value coverage.p3.xy = 86.2 [86.15, 86.25]',
    'order coverage.p3.xy higher position 3 of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'The maker quotes 16 ms of input lag; we clocked 18.5, the slowest of the three.',
    'fact lag = 16 by maker',
    'value lag = 18.5 [18.45, 18.55]',
    'order lag higher best of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    "Brightness varies by 12% across the white screen, a tidier result than either rival's.",
    'value uniformity.white {level white} = 12 [11.5, 12.5]',
    'order uniformity.white {level white} lower best of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'Faster than both is the Plain.',
    'order lag {veltrane} lower ahead of orrinvale-hearth-55 nocthale-umbra-55',
  ],
  [
    'More accurate than either is the Plain, whose average error is less than a third of ours.',
    'order grey.de2000 average {veltrane} lower best of orrinvale-hearth-55 nocthale-umbra-55',
    'ratio grey.de2000 average {veltrane} : grey.de2000 average < 0.333333',
  ],
  [
    'The Umbra is faster than both.',
    'order lag {nocthale} lower ahead of orrinvale-hearth-55 veltrane-plain-50',
  ],
  ['It is faster than both.', 'order lag lower ahead of veltrane-plain-50 nocthale-umbra-55'],
  [
    'The Plain is brighter than the other two.',
    'order peak max {veltrane} higher best of orrinvale-hearth-55 nocthale-umbra-55',
  ],
  [
    'Its greyscale error is the lowest of the three, and its P3 coverage is the widest.',
    'order grey.de2000 average lower best of veltrane-plain-50 nocthale-umbra-55',
    'order coverage.p3.xy higher best of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'Of the three, the Plain fades the most at 45 degrees.',
    'order angle.luminance at 45 {angle 45, veltrane} lower best of orrinvale-hearth-55 nocthale-umbra-55',
  ],
  [
    'The Hearth is thus second of the three in peak luminance.',
    'order peak max higher position 2 of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'Between them stands the Hearth, second of the three for peak luminance.',
    'order peak max higher position 2 of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'It has the most even picture of the three.',
    'order uniformity.white lower best of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'A white field on the Hearth varies by 4.2%, the most even showing of the three.',
    'value uniformity.white {level white} = 4.2 [4.15, 4.25]',
    'order uniformity.white {level white} lower best of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'Black on the Hearth is the deepest of the three.',
    'order black lower best of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'Of the three sets, the Hearth has the most even white.',
    'order uniformity.white lower best of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'It keeps 77% at 45 degrees, and neither rival keeps as much.',
    'value angle.luminance at 45 {angle 45} = 77 [76.5, 77.5]',
    'order angle.luminance at 45 {angle 45} higher best of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'Kept running in a 10% window, the Hearth holds 88% of its peak, the best share of the three.',
    'value peak.hold at 10 {window 10} = 88 [87.5, 88.5]',
    'order peak.hold at 10 {window 10} higher best of veltrane-plain-50 nocthale-umbra-55',
  ],
  [
    'The lag of 12 ms is among the shortest we have measured.',
    'value lag = 12 [11.5, 12.5]',
    'order lag lower among',
  ],
  [
    'At 45° the Hearth keeps 56 % of its luminance, the highest share of the three sets.',
    'value angle.luminance at 45 {angle 45} = 56 [55.5, 56.5]',
    'order angle.luminance at 45 {angle 45} higher best of veltrane-plain-50 nocthale-umbra-55',
  ],
  ['Only one step is over 3.', 'bound grey.de2000 any but 1 > 3 and grey.de2000 all but 1 <= 3'],
  [
    'Both rivals have a smaller average greyscale error.',
    'order grey.de2000 average higher best of veltrane-plain-50 nocthale-umbra-55',
  ],
];
