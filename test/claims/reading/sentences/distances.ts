import type { SentenceRow } from './row.ts';

/** How far one number lies from another, and whose each is: extras, halves of another's, extremes and who has them. */
export const distances: readonly SentenceRow[] = [
  [
    'It runs at 60 Hz, half the Plain’s 120 Hz.',
    'fact refresh = 60',
    'ratio fact.refresh : fact.refresh {veltrane} = 0.5 [0.45, 0.55]',
    'fact refresh = 120 {veltrane}',
  ],
  ['The average error is 0.3 lower.', 'unproven'],
  ['HDR costs you 0.3 more in average error.', 'unproven'],
  ['It falls short of its promise by 53 nits.', 'unproven'],
  ['For £600 more you can have the Umbra.', 'difference fact.price {nocthale} : fact.price = 600 [600, 600]'],
  ['For another £250 you get the Umbra.', 'difference fact.price {nocthale} : fact.price = 250 [250, 250]'],
  ['If you can find another £250, the Umbra is the better set.', 'unproven', 'unproven'],
  [
    'The lowest average error we have measured belongs to the Plain.',
    'order grey.de2000 average {veltrane} lower best',
  ],
  ['The brightest of the five is the Plain.', 'order peak max {veltrane} higher best'],
  ['The lowest error is 0.6, at 10 %.', 'value grey.de2000 at 10 = 0.6 [0.55, 0.65]'],
  [
    'The average error in HDR is 2.1, twice the SDR figure.',
    'value grey.de2000 average {signal HDR} = 2.1 [2.05, 2.15]',
    'ratio grey.de2000 average {signal HDR} : grey.de2000 average {signal SDR} = 2 [1.8, 2.2]',
  ],
  [
    'It draws 139 W in HDR, half as much again as the SDR figure.',
    'value power.hdr-calm {signal HDR} = 139 [138.5, 139.5]',
    'ratio power.hdr-calm {signal HDR} : power.calm {signal SDR} = 1.5 [1.35, 1.65]',
  ],
  [
    'A box on older firmware, 1.4.0, gave us 765 nits in a 10 % window.',
    'value peak at 10 {firmware 1.4.0, window 10} = 765 [764.5, 765.5]',
  ],
  ['Red is off by 5.7 at full saturation.', 'value sweep.red.de2000 at 100 = 5.7 [5.65, 5.75]'],
  [
    'None of the primaries is over 3.',
    'bound sweep.red.de2000 max <= 3 and sweep.green.de2000 max <= 3 and sweep.blue.de2000 max <= 3',
  ],
  [
    'At full saturation red reaches 5.7, and neither of the other primaries does.',
    'value sweep.red.de2000 at 100 = 5.7 [5.65, 5.75]',
  ],
  ['A white field varies by 6 %.', 'value uniformity.white {level white} = 6 [5.5, 6.5]'],
  ['Across a white field it loses 6 %.', 'value uniformity.white {level white} = 6 [5.5, 6.5]'],
  ['The panel is an OLED, 47 mm deep.', 'fact panel includes OLED', 'fact depth = 47'],
  ['The speakers reach down to 48 Hz.'],
  [
    'It has four HDMI ports, and every single one of them is 2.1.',
    'fact hdmi.count = 4',
    'fact hdmi.count.2.1 = 4',
  ],
  // How far apart two sets are, or how far from a number, is no value and no limit.
  ['Under 1 ms of lag separates the three sets.', 'unproven'],
  ['No rival comes within 1,000 of its contrast.', 'unproven'],
  ['Gamma lies within a tenth of 2.2 at every level.', 'unproven', 'unproven'],
  ['Only 3 % of P3 is missing.', 'unproven'],
  ['Two thirds of P3 is all that the Plain can show.', 'unproven'],
  ['The Umbra wins on contrast, the Hearth on price.', 'unproven'],
  [
    "The Hearth's lag is 9.6 ms, within a millisecond of the Plain's.",
    'value lag = 9.6 [9.55, 9.65]',
    'difference lag : lag {veltrane} = 0 [-1, 1]',
  ],
  ["Its lag is within 2 ms of the Umbra's.", 'difference lag : lag {nocthale} = 0 [-2, 2]'],
  ['It is a slim set, as slim as the Plain.', 'order fact.depth lower matches of veltrane-plain-50'],
  ['The Hearth has the widest view of the three.'],
  ['Neither rival is as bright as the Plain.', 'unproven'],
];
