import type { SentenceRow } from './row.ts';

/** Several sets in one sentence: what the first conjunct says in full, the later ones say with set and number only. */
export const parallel: readonly SentenceRow[] = [
  [
    'On the Hearth errors are visible from 40 % upwards, on the Kasulind from 60 % upwards and on the Veltrane from 90 % upwards.',
    'onset grey.de2000 over 3 from 40 included',
    'onset grey.de2000 {kasulind} over 3 from 60 included',
    'onset grey.de2000 {veltrane} over 3 from 90 included',
  ],
  [
    'At 30 degrees the Kasulind keeps about 60 % of its light, the Hearth 55 % and the Veltrane 39 %.',
    'value angle.luminance at 30 {angle 30, kasulind} = 60 [57, 63]',
    'value angle.luminance at 30 {angle 30} = 55 [54.5, 55.5]',
    'value angle.luminance at 30 {angle 30, veltrane} = 39 [38.5, 39.5]',
  ],
  // What the first is said to lose, the second loses too.
  [
    'At 30 degrees the Kasulind loses 35 % of its light and the Hearth 45 %.',
    'value angle.luminance at 30 {angle 30, kasulind} = 65 [64.5, 65.5]',
    'value angle.luminance at 30 {angle 30} = 55 [54.5, 55.5]',
  ],
  // The diagram that the first names is the others' too.
  [
    'In the xy diagram the Veltrane covers 98.1 % of P3, the Hearth 95.3 % and the Kasulind 87.2 %.',
    'value coverage.p3.xy {veltrane} = 98.1 [98.05, 98.15]',
    'value coverage.p3.xy = 95.3 [95.25, 95.35]',
    'value coverage.p3.xy {kasulind} = 87.2 [87.15, 87.25]',
  ],
  [
    'In HDR, blooming is distracting on the Kasulind, visible on the Hearth and, on the Veltrane, invisible.',
    'observed blooming 3–4 {kasulind, signal HDR}',
    'observed blooming 1–3 {signal HDR}',
    'observed blooming 0–0 {signal HDR, veltrane}',
  ],
  [
    'The average error stays under 3 on the Kasulind, under 2 on the Veltrane and under 4 on the Hearth.',
    'bound grey.de2000 average {kasulind} < 3',
    'bound grey.de2000 average {veltrane} < 2',
    'bound grey.de2000 average < 4',
  ],
  [
    'The Kasulind has four HDMI ports, the Veltrane three and the Hearth two.',
    'fact hdmi.count = 4 {kasulind}',
    'fact hdmi.count = 3 {veltrane}',
    'fact hdmi.count = 2',
  ],
  [
    'Red is under-saturated by 6.5 % and blue by 8 %.',
    'value sweep.red.saturation average = -6.5 [-6.55, -6.45]',
    'value sweep.blue.saturation average = -8 [-8.5, -7.5]',
  ],
  // Whom it is said of may stand behind; what stands behind "than" is the other side.
  ['Lag is 9.6 ms on the Kasulind.', 'value lag {kasulind} = 9.6 [9.55, 9.65]'],
  [
    'We measured 742 nits, more than on the Kasulind.',
    'value peak max = 742 [741.5, 742.5]',
    'order peak max higher ahead of kasulind-vane-50',
  ],
  // A heading that asks still names the signal of its section.
  [
    '## Which is the brightest, in HDR?\n\nThe Kasulind draws 120 W.',
    'value power.hdr {kasulind, signal HDR} = 120 [119.5, 120.5]',
  ],
  [
    'The Hearth, the Kasulind and the Veltrane cost £749, £599 and £899 respectively.',
    'fact price = 749',
    'fact price = 599 {kasulind}',
    'fact price = 899 {veltrane}',
  ],
  [
    'Beside the Hearth stood the Kasulind. They weigh 16.4 and 13.9 kg respectively.',
    'fact weight = 16.4',
    'fact weight = 13.9 {kasulind}',
  ],
  // Three sets and two prices: nobody knows whose.
  ['The Hearth, the Kasulind and the Veltrane cost £749 and £899 respectively.', 'unproven', 'unproven'],
];
