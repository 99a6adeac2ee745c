import type { SentenceRow } from './row.ts';

/** Places among sets, counts that are compared, numbers given for a set, and which set a comparing word only names. */
export const ranked: readonly SentenceRow[] = [
  [
    'Of the five sets the Hearth has the lowest average error and the Plain is second.',
    'order grey.de2000 average lower best',
    'order grey.de2000 average {veltrane} lower position 2',
  ],
  ['The Hearth has the most USB ports of the five.', 'order fact.usb.count higher best'],
  [
    'The Hearth has the lowest average error on greys, 2.5 against 3.3 for the Plain and 3.6 for the Umbra.',
    'order grey.de2000 average lower best',
    'value grey.de2000 average = 2.5 [2.45, 2.55]',
    'value grey.de2000 average {veltrane} = 3.3 [3.25, 3.35]',
    'value grey.de2000 average {nocthale} = 3.6 [3.55, 3.65]',
  ],
  [
    'Black is 0.044 nits on the Hearth, and the Plain’s is about four times as high.',
    'value black = 0.044 [0.0435, 0.0445]',
    'ratio black {veltrane} : black = 4 [3.5, 4.5]',
  ],
  [
    'We found it 34 mm deeper than the Plain.',
    'difference fact.depth : fact.depth {veltrane} = 34 [33.5, 34.5]',
  ],
  ['On the cheaper of its two rivals banding is visible.', 'unproven', 'unproven'],
  ['Orrinvale claims 900 nits. Nobody misses it.', 'fact peak = 900 by maker'],
  [
    'The average error is 2.4, which gives it an airy manner, and the Plain a brooding one.',
    'value grey.de2000 average = 2.4 [2.35, 2.45]',
  ],
  ['Anyone who wants one will pay £869.', 'fact price = 869'],
  ['By full white it has climbed to 6.4, though.', 'value grey.de2000 at 100 = 6.4 [6.35, 6.45]'],
  [
    'With nothing adjusted, the average error is 2.4.',
    'value grey.de2000 average {stage as-delivered} = 2.4 [2.35, 2.45]',
  ],
  ['VRR works between 48 and 120 Hz.', 'unproven'],
  ['At launch it cost £1,299.', 'unproven'],
  ['At its thinnest it is 12 mm, at its thickest 52 mm.', 'unproven', 'fact depth = 52'],
  [
    'In native contrast the Umbra comes first, the Plain second.',
    'order contrast.native {nocthale} higher best',
    'order contrast.native {veltrane} higher position 2',
  ],
  // A gap between two sets ranks neither.
  ['The gap between the Plain and the Umbra is £250.', 'unproven'],
  ['It costs as much as the Plain.', 'order fact.price higher matches of veltrane-plain-50'],
  ['Blooming is worst on the Umbra and its rival from Veltrane shows it only to a trained eye.', 'unproven'],
  ['It is the brightest this year.', 'order peak max higher best in 2026'],
  ['It is the cheapest this year.', 'order fact.price lower best in 2026'],
  ['It is the third brightest of the year.', 'order peak max higher position 3 in 2026'],
  ['The Hearth has the lowest average greyscale error.', 'order grey.de2000 average lower best'],
  ['The Hearth has the lowest maximum error.', 'order grey.de2000 max lower best'],
  ['The Hearth has the largest error in blue.', 'unproven'],
  [
    'The Plain has the highest average error, 4.3.',
    'order grey.de2000 average {veltrane} higher best',
    'value grey.de2000 average {veltrane} = 4.3 [4.25, 4.35]',
  ],
  ['The Hearth has the highest standby power.', 'order standby higher best'],
  [
    'Lag is 9.4 ms, the second-best figure here.',
    'value lag = 9.4 [9.35, 9.45]',
    'order lag lower position 2',
  ],
  [
    'The Plain has twelve times the contrast.',
    'ratio contrast.native {veltrane} : contrast.native = 12 [11.5, 12.5]',
  ],
  ['The best reading is 1.2, at 40 %.', 'value grey.de2000 at 40 = 1.2 [1.15, 1.25]'],
  ['It holds its luminance best at 45°.', 'order angle.luminance at 45 {angle 45} higher best'],
  [
    'Contrast is 3,260:1, second only to the Umbra.',
    'value contrast.native = 3260 [3255, 3265]',
    'order contrast.native higher position 2 of veltrane-plain-50 kasulind-vane-50 tamarick-crest-55 nocthale-umbra-55',
    'order contrast.native higher behind of nocthale-umbra-55',
  ],
  [
    "The Hearth's white varies by 14 per cent across the screen, which leaves the Hearth second behind the Plain.",
    'value uniformity.white = 14 [13.5, 14.5]',
    'order uniformity.white lower position 2 of veltrane-plain-50 kasulind-vane-50 tamarick-crest-55 nocthale-umbra-55',
    'order uniformity.white lower behind of veltrane-plain-50',
  ],
  ['Rec. 709 coverage is 99 %, and second to none.', 'value coverage.bt709.xy = 99 [98.5, 99.5]'],
  ['The Hearth ranks last of the three for contrast.', 'unproven'],
  ['The Hearth comes last of the three in contrast.', 'unproven'],
  [
    'In SDR the Plain has an average gray error of 1.2, the best of the three, and the Hearth comes in second.',
    'value grey.de2000 average {signal SDR, veltrane} = 1.2 [1.15, 1.25]',
    'order grey.de2000 average {signal SDR, veltrane} lower best',
    'order grey.de2000 average {signal SDR} lower position 2',
  ],
  [
    'In SDR the Plain has an average gray error of 1.2, the best of the three, and the Hearth comes second.',
    'value grey.de2000 average {signal SDR, veltrane} = 1.2 [1.15, 1.25]',
    'order grey.de2000 average {signal SDR, veltrane} lower best',
    'order grey.de2000 average {signal SDR} lower position 2',
  ],
];
