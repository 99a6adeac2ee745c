import type { SentenceRow } from './row.ts';

/** Words that take up what stands before: that set, that angle, the promise, a unit or a topic that is not said again. */
export const takenUp: readonly SentenceRow[] = [
  [
    'The Umbra averages 2.1. On that set the error is visible from 80 % upwards.',
    'value grey.de2000 average {nocthale} = 2.1 [2.05, 2.15]',
    'onset grey.de2000 {nocthale} over 3 from 80 included',
  ],
  [
    'The Umbra is slimmer by 14 mm, while the Plain is thicker by 12.',
    'difference fact.depth : fact.depth {nocthale} = 14 [13.5, 14.5]',
    'difference fact.depth {veltrane} : fact.depth = 12 [11.5, 12.5]',
  ],
  // No unit was spoken of: 12 of what, nobody knows, and plain "thicker" would say less than the text does.
  ['The Umbra is thicker by 12 than the Plain.', 'unproven', 'unproven'],
  [
    'Orrinvale promises 900 nits, and we measured 836, or 93 % of the promise.',
    'fact peak = 900 by maker',
    'value peak max = 836 [835.5, 836.5]',
    'ratio peak max : fact.peak = 0.93 [0.925, 0.935]',
  ],
  [
    'In HDR the Umbra reaches 468 nits, where Nocthale claims 480, and it clears 465 with a hair to spare.',
    'value peak max {nocthale, signal HDR} = 468 [467.5, 468.5]',
    'fact peak = 480 by maker {nocthale}',
    'bound peak max {nocthale, signal HDR} > 465',
  ],
  [
    'Blooming is visible on the Plain, and the Umbra has none for a viewer straight ahead.',
    'observed blooming 1–3 {veltrane}',
    'observed blooming 0–0 {angle 0, nocthale}',
  ],
  [
    "From 45 degrees the Umbra's blooming stays invisible, but the Plain's becomes distracting at that angle.",
    'observed blooming 0–0 {angle 45, nocthale}',
    'observed blooming 3–4 {angle 45, veltrane}',
  ],
  [
    'Reflections are visible on the Plain by day, and on the Umbra they are faint.',
    'observed reflections 1–3 {room lit, veltrane}',
    'observed reflections 1–1 {nocthale, room lit}',
  ],
  [
    'A white field on the Plain is 13.8 % down in the top right corner, and at mid-grey the loss grows to 23 %.',
    'value uniformity.white.cell at top right {level white, veltrane} = -13.8 [-13.85, -13.75]',
    'value uniformity.grey50 {level grey50, veltrane} = 23 [22.5, 23.5]',
  ],
  [
    'Its lag is 8.7 ms, and Orrinvale says 8. The Umbra’s is nearly twice the Plain’s, and we like it.',
    'value lag = 8.7 [8.65, 8.75]',
    'fact lag = 8 by maker',
    'ratio lag {nocthale} : lag {veltrane} = 2 [1.8, 2)',
  ],
  [
    'The foot of the Plain is 410 mm wide, less than half as wide as the Umbra’s.',
    'fact stand.width = 410 {veltrane}',
    'ratio fact.stand.width {veltrane} : fact.stand.width {nocthale} < 0.5',
  ],
  [
    'A patch of the size of a street lamp, 2 % of its area, reaches 705, and a 5 % window stays under 800.',
    'value peak at 2 {window 2} = 705 [704.5, 705.5]',
    'bound peak at 5 {window 5} < 800',
  ],
  [
    'The Umbra is yours for £579, which saves you £250 against the Plain.',
    'fact price = 579 {nocthale}',
    'difference fact.price {veltrane} : fact.price {nocthale} = 250 [250, 250]',
  ],
  [
    'In HDR the Umbra clips from 70 %, and the Plain from 80 %.',
    'direction eotf.rolloff {nocthale, signal HDR} clips',
    'value eotf.rolloff {nocthale, signal HDR} = 70 [69.5, 70.5]',
    'value eotf.rolloff {signal HDR, veltrane} = 80 [79.5, 80.5]',
  ],
  [
    'The contrast of the Umbra is 5,240:1, and its rival from Veltrane reaches 2,000:1.',
    'value contrast.native {nocthale} = 5240 [5235, 5245]',
    'value contrast.native {veltrane} = 2000 [1950, 2050]',
  ],
  ['In its brightest mode it manages 742 nits.', 'value peak max = 742 [741.5, 742.5]'],
  [
    'Peak luminance is more than a third above what the Umbra gives.',
    'ratio peak max : peak max {nocthale} > 1.33333',
  ],
  ['Greys are clean up to 60 %, then bluish.', 'unproven'],
  ['The set draws no more than 96 W, standby included.', 'unproven'],
  [
    'The Plain has deeper blacks but less light: 0.02 against 0.044 nits, 571 against 742.',
    'order black {veltrane} lower ahead of orrinvale-hearth-55',
    'unproven',
    'unproven',
    'unproven',
    'unproven',
  ],
  ['Our meter read 742, 738 and 745 nits on three days.', 'unproven', 'unproven', 'unproven'],
  ['It is the only set here to stay under 3 on average.', 'unproven'],
  ['Two thirds of the chart stay under 2.', 'unproven'],
  ['Skin patches stay under 2.', 'unproven'],
  ['The halo around a white cross reaches 0.3 nits.', 'unproven'],
  [
    'A white cross on black shows haloes at 45 degrees, not from the front.',
    'observed haloes 1–4 {angle 45, level black}',
  ],
  [
    'Lag is 9.6 milliseconds, which is exactly what Orrinvale promises.',
    'value lag = 9.6 [9.55, 9.65]',
    'fact lag = 9.6 by maker',
  ],
  ['No HDR10+ on this one, though.', 'fact hdr.formats excludes HDR10+'],
  ['The Umbra is less than half the price.', 'ratio fact.price {nocthale} : fact.price < 0.5'],
  [
    "Lag is 9.6 milliseconds. The Plain's slower at 11.8.",
    'value lag = 9.6 [9.55, 9.65]',
    'order lag {veltrane} higher ahead of orrinvale-hearth-55',
    'value lag {veltrane} = 11.8 [11.75, 11.85]',
  ],
  ['On the Plain, three of the sockets are 2.1.', 'fact hdmi.count.2.1 = 3 {veltrane}'],
  ['The Hearth has the most accurate grey of the three, too.', 'order grey.de2000 average lower best'],
  [
    "P3 coverage is over 99%, and the Plain's barely past 90.",
    'bound coverage.p3.xy > 99',
    'value coverage.p3.xy {veltrane} = 90 (90, 94.5]',
  ],
  [
    'The error stays under 3 up to 60% and crosses that threshold at 70%.',
    'bound grey.de2000 max ≤60 < 3',
    'onset grey.de2000 over 3 from 70 included',
  ],
  [
    'The error stays under 2 up to 60% and rises above that mark from 70% upwards.',
    'bound grey.de2000 max ≤60 < 2',
    'onset grey.de2000 over 2 from 70 included',
  ],
  ['The average keeps under 3.', 'bound grey.de2000 average < 3'],
  [
    'The Plain reaches 1,300:1, and the Umbra has about four times that.',
    'value contrast.native {veltrane} = 1300 [1267.5, 1332.5]',
    'ratio contrast.native {nocthale} : contrast.native {veltrane} = 4 [3.5, 4.5]',
  ],
  [
    'The Plain reaches 1,300:1. The Umbra has about four times that.',
    'value contrast.native {veltrane} = 1300 [1267.5, 1332.5]',
    'ratio contrast.native {nocthale} : contrast.native {veltrane} = 4 [3.5, 4.5]',
  ],
  [
    'The Plain draws 80 W. The Hearth needs twice that.',
    'value power.sdr {veltrane} = 80 [79.5, 80.5]',
    'ratio power.sdr : power.sdr {veltrane} = 2 [1.8, 2.2]',
  ],
  [
    'The Plain has a lag of 12.6 ms, and the Umbra manages it in half the time.',
    'value lag {veltrane} = 12.6 [12.55, 12.65]',
    'ratio lag {nocthale} : lag {veltrane} = 0.5 [0.45, 0.55]',
  ],
  [
    "Blue is oversaturated by 4%. Its hue turns by 4.5 degrees, and cyan's by six.",
    'value sweep.blue.saturation average = 4 [3.5, 4.5]',
    'value sweep.blue.hue average = 4.5 [4.45, 4.55] either side',
    'value sweep.cyan.hue average = 6 [5.5, 6.5] either side',
  ],
  [
    'Orrinvale quotes 16 milliseconds of lag; our little box on the glass said 19.3.',
    'fact lag = 16 by maker',
    'value lag = 19.3 [19.25, 19.35]',
  ],
  [
    'Greens are under-saturated, and so are reds.',
    'direction sweep.green.saturation average under',
    'direction sweep.red.saturation average under',
  ],
  [
    "The Hearth's greys lean to green. The Plain errs the other way, towards red.",
    'direction grey.tint average ≥50 ≤100 green',
    'direction grey.tint average ≥50 ≤100 {veltrane} red',
  ],
  [
    'The greys carry a faint green tint. The Plain, on the other hand, has a mild yellow cast, while the Umbra is obviously blue (yes, even to my wife).',
    'direction grey.tint average ≥50 ≤100 green slight',
    'direction grey.tint average ≥50 ≤100 {veltrane} yellow mild',
    'direction grey.tint average ≥50 ≤100 {nocthale} blue obvious',
  ],
  [
    "Blooming is obvious. The Plain shows none at all, and the Umbra's is faint on axis but distracting from 45 degrees.",
    'observed blooming 2–4',
    'observed blooming 0–0 {veltrane}',
    'observed blooming 3–4 {angle 45, nocthale}',
  ],
  [
    'I saw flicker on the Plain. I never saw any on the Hearth.',
    'observed flicker 1–4 {veltrane}',
    'observed flicker 0–0',
  ],
  [
    'In HDR scenes shown in the dark, blooming on the Hearth is distracting; on the Umbra none was seen.',
    'observed blooming 3–4 {room dark, signal HDR}',
    'observed blooming 0–0 {nocthale, room dark, signal HDR}',
  ],
  [
    'Veltrane promises 900 nits and delivers. HDR power draw is 117 W.',
    'fact peak = 900 by maker {veltrane}',
    'bound peak max {veltrane} >= 900',
    'unproven',
  ],
  [
    'White measures 7,511 K, which is plainly cool.',
    'value white.cct = 7511 [7510.5, 7511.5]',
    'direction white.cct cool',
  ],
  [
    'The greys lean towards green. The Nocthale leans towards blue as well; with an average error of 2.6 it may nevertheless be called accurate.',
    'direction grey.tint average ≥50 ≤100 green',
    'direction grey.tint average ≥50 ≤100 {nocthale} blue',
    'value grey.de2000 average {nocthale} = 2.6 [2.55, 2.65]',
    'bound grey.de2000 average {nocthale} < 3',
  ],
];
