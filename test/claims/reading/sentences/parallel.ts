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
  [
    'Among the five it is second in peak luminance, first in native contrast and last in grey error.',
    'order peak max higher position 2',
    'order contrast.native higher best',
    'order grey.de2000 average lower position 5',
  ],
  // "Last" of nobody knows how many.
  [
    'The Kasulind is first in peak luminance and last for lag.',
    'order peak max {kasulind} higher best',
    'unproven',
  ],
  // Who beats another for lag is below it, for light above.
  [
    'Input lag is 11.4 ms. The Hearth beats the Kasulind by 5.4 ms and loses to the Veltrane by 2.8.',
    'value lag = 11.4 [11.35, 11.45]',
    'difference lag {kasulind} : lag = 5.4 [5.35, 5.45]',
    'difference lag : lag {veltrane} = 2.8 [2.75, 2.85]',
  ],
  [
    'The Hearth beats the Kasulind by 64 nits of peak luminance and loses to the Veltrane by 18.',
    'difference peak max : peak max {kasulind} = 64 [63.5, 64.5]',
    'difference peak max {veltrane} : peak max = 18 [17.5, 18.5]',
  ],
  [
    'The Kasulind is lighter by three and a half kilos and the Veltrane heavier by nearly two.',
    'difference fact.weight : fact.weight {kasulind} = 3.5 [3.25, 3.75]',
    'difference fact.weight {veltrane} : fact.weight = 2 [1.9, 2)',
  ],
  [
    'The Kasulind leans to red where the Veltrane leans to green, and its white is 5,780 K.',
    'direction grey.tint average ≥50 ≤100 {kasulind} red',
    'direction grey.tint average ≥50 ≤100 {veltrane} green',
    'value white.cct {kasulind} = 5780 [5775, 5785]',
  ],
  [
    'On a black field clouding is clearly visible on the Kasulind, and the Hearth shows none.',
    'observed clouding 2–4 {kasulind, level black}',
    'observed clouding 0–0 {level black}',
  ],
  // A list of what one set has goes on; "there" and "that" point at what was just named.
  [
    'The Kasulind errs the other way, with an average error of 2.7 and a white of 5,910 K.',
    'value grey.de2000 average {kasulind} = 2.7 [2.65, 2.75]',
    'value white.cct {kasulind} = 5910 [5905, 5915]',
  ],
  [
    'The Kasulind keeps 71 % of its light at 45 degrees, and the colour shift there is 1.9.',
    'value angle.luminance at 45 {angle 45, kasulind} = 71 [70.5, 71.5]',
    'value angle.de2000 at 45 {angle 45, kasulind} = 1.9 [1.85, 1.95]',
  ],
  [
    "The Kasulind takes 19.2 ms to answer. That is nearly twice the Hearth's lag.",
    'value lag {kasulind} = 19.2 [19.15, 19.25]',
    'ratio lag {kasulind} : lag = 2 [1.8, 2)',
  ],
  ['BT.709 is filled to at least 98 % by the Kasulind.', 'bound coverage.bt709.xy {kasulind} >= 98'],
  // Little more than a quarter is no more than that.
  [
    "The Kasulind's chequerboard contrast is little more than a quarter of the Hearth's.",
    'ratio contrast.chequer {kasulind} : contrast.chequer = 0.25 (0.25, 0.2625]',
  ],
  // Said in passing, no condition; a denial ends at the colon.
  ['The Hearth costs £839, and it would like a word.', 'fact price = 839'],
  ['The average error stays under 4, if only by a whisker.', 'bound grey.de2000 average < 4'],
  ['If you sit in the dark, blooming is visible.', 'observed blooming 1–3 {room dark}'],
  ['If they had chosen 6,500 K, it would be accurate.', 'unproven', 'unproven'],
  ['If that stings, the Hearth costs £839.', 'fact price = 839'],
  ['If you want to be picky, the average error is 2.4.', 'value grey.de2000 average = 2.4 [2.35, 2.45]'],
  ["If we're being strict, the average error is 2.4.", 'value grey.de2000 average = 2.4 [2.35, 2.45]'],
  ['The average error is 2.4, if you must.', 'value grey.de2000 average = 2.4 [2.35, 2.45]'],
  ['If you care to adjust it, the average error is 2.4.', 'unproven'],
  ['If the firmware fixed it, the average error would be 2.4.', 'unproven'],
  [
    'If you want 900 nits, the average error is 2.4.',
    'unproven',
    'value grey.de2000 average = 2.4 [2.35, 2.45]',
  ],
  ['Our buyer would like it noted that the Hearth costs £839.', 'fact price = 839'],
  ['The Hearth costs, apparently, £839.', 'fact price = 839'],
  [
    'The Hearth leans to blue, and not shyly: white comes out at about 7,700 K.',
    'direction grey.tint average ≥50 ≤100 blue',
    'value white.cct = 7700 [7546, 7854]',
  ],
  [
    'At 45 degrees the Hearth keeps 70 % of its brightness, the Plain keeps 50 % and the Vane still has 58 %.',
    'value angle.luminance at 45 {angle 45} = 70 [69.5, 70.5]',
    'value angle.luminance at 45 {angle 45, veltrane} = 50 [49.5, 50.5]',
    'value angle.luminance at 45 {angle 45, kasulind} = 58 [57.5, 58.5]',
  ],
  [
    'At 45 degrees the Hearth keeps 70 % of its brightness, the Plain loses more than half and the Vane still has 58 %.',
    'value angle.luminance at 45 {angle 45} = 70 [69.5, 70.5]',
    'bound angle.luminance at 45 {angle 45, veltrane} < 50',
    'value angle.luminance at 45 {angle 45, kasulind} = 58 [57.5, 58.5]',
  ],
  [
    'From 45 degrees the Hearth keeps 70 % of its brightness, the Plain loses 50 % and the Vane has 58 %.',
    'value angle.luminance at 45 {angle 45} = 70 [69.5, 70.5]',
    'value angle.luminance at 45 {angle 45, veltrane} = 50 [49.5, 50.5]',
    'value angle.luminance at 45 {angle 45, kasulind} = 58 [57.5, 58.5]',
  ],
  [
    'Seen from 45 degrees the Hearth keeps 70 % of its brightness, the Plain 50 %.',
    'value angle.luminance at 45 {angle 45} = 70 [69.5, 70.5]',
    'value angle.luminance at 45 {angle 45, veltrane} = 50 [49.5, 50.5]',
  ],
  ['Lag: 9.6 ms (Plain: 21 ms).', 'value lag = 9.6 [9.55, 9.65]', 'value lag {veltrane} = 21 [20.5, 21.5]'],
  [
    'The Plain covers more than 98 per cent of P3, and the Umbra just over 85 per cent.',
    'bound coverage.p3.xy {veltrane} > 98',
    'value coverage.p3.xy {nocthale} = 85 (85, 89.25]',
  ],
  [
    'The Plain covers more than 98 per cent of P3, the Umbra 85 per cent and the Hearth 93.',
    'bound coverage.p3.xy {veltrane} > 98',
    'value coverage.p3.xy {nocthale} = 85 [84.5, 85.5]',
    'value coverage.p3.xy = 93 [92.5, 93.5]',
  ],
  [
    "A white field varies by 13 %, and the Plain's by 19 %. Football shows a visible dirty screen.",
    'value uniformity.white {level white} = 13 [12.5, 13.5]',
    'value uniformity.white {level white, veltrane} = 19 [18.5, 19.5]',
    'observed dirty-screen 1–3',
  ],
  [
    "Peak luminance is 742 nits, and the Plain's 571. Black is 0.04 nits.",
    'value peak max = 742 [741.5, 742.5]',
    'value peak max {veltrane} = 571 [570.5, 571.5]',
    'value black = 0.04 [0.035, 0.045]',
  ],
  [
    "The Kasulind's peak is 742 nits, and the Plain's 571. Black is 0.04 nits.",
    'value peak max {kasulind} = 742 [741.5, 742.5]',
    'value peak max {veltrane} = 571 [570.5, 571.5]',
    'unproven',
  ],
];
