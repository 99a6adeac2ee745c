import type { SentenceRow } from './row.ts';

/** Levels, angles, patches and limits that are taken up again: "that line", "at that angle", "from there". */
export const placesTakenUp: readonly SentenceRow[] = [
  [
    'The Umbra averages 2.1. On that set the error is visible from 80 % upwards.',
    'value grey.de2000 average {nocthale} = 2.1 [2.05, 2.15]',
    'onset grey.de2000 {nocthale} over 3 from 80 included',
  ],
  [
    "Blue is oversaturated by 4%. Its hue turns by 4.5 degrees, and cyan's by six.",
    'value sweep.blue.saturation average = 4 [3.5, 4.5]',
    'value sweep.blue.hue average = 4.5 [4.45, 4.55] either side',
    'value sweep.cyan.hue average = 6 [5.5, 6.5] either side',
  ],
  [
    "Blooming is obvious. The Plain shows none at all, and the Umbra's is faint on axis but distracting from 45 degrees.",
    'observed blooming 2–4',
    'observed blooming 0–0 {veltrane}',
    'observed blooming 3–4 {angle 45, nocthale}',
  ],
  [
    "Our best reading was 1,764 nits, in a 10% window. Shrink that to 2% and you're still looking at about 1,700.",
    'value peak at 10 {window 10} = 1764 [1763.5, 1764.5]',
    'value peak at 2 {window 2} = 1700 [1615, 1785]',
  ],
  [
    'The worst step is 4.1. Below 80% nothing is visible. From 90% up, it is.',
    'value grey.de2000 max = 4.1 [4.05, 4.15]',
    'bound grey.de2000 max <80 <= 3',
    'onset grey.de2000 over 3 from 90 included',
  ],
  [
    'We measured 912 nits in a 10 % window. With the whole screen white that falls to 548 nits. At 50 % of the area it manages 705 nits.',
    'value peak at 10 {window 10} = 912 [911.5, 912.5]',
    'value peak at 100 {window 100} = 548 [547.5, 548.5]',
    'value peak at 50 {window 50} = 705 [704.5, 705.5]',
  ],
  [
    'The error becomes visible from 60 % upwards. The Umbra is worse, with an average of 4.0. Its greys are obviously blue. The Plain leans red instead.',
    'onset grey.de2000 over 3 from 60 included',
    'order grey.de2000 average {nocthale} higher ahead of orrinvale-hearth-55',
    'value grey.de2000 average {nocthale} = 4 [3.95, 4.05]',
    'direction grey.tint average ≥50 ≤100 {nocthale} blue obvious',
    'direction grey.tint average ≥50 ≤100 {veltrane} red',
  ],
  [
    'Seen from 45 degrees the Hearth keeps about half its light. The Plain keeps 71 % there. At 60 degrees the Plain is the best of the three for brightness.',
    'value angle.luminance at 45 {angle 45} = 50 [45, 55]',
    'value angle.luminance at 45 {angle 45, veltrane} = 71 [70.5, 71.5]',
    'order angle.luminance at 60 {angle 60, veltrane} higher best',
  ],
  [
    'At 45 degrees the Hearth keeps 48% of its brightness. The Plain, from the same seat, keeps 74%.',
    'value angle.luminance at 45 {angle 45} = 48 [47.5, 48.5]',
    'value angle.luminance at 45 {angle 45, veltrane} = 74 [73.5, 74.5]',
  ],
  [
    'At 45 degrees the Hearth keeps 61%. At the same angle the Plain drops to 39%.',
    'value angle.luminance at 45 {angle 45} = 61 [60.5, 61.5]',
    'value angle.luminance at 45 {angle 45, veltrane} = 39 [38.5, 39.5]',
  ],
  [
    'The average error is 2.8. From 70 % grey upwards it shows.',
    'value grey.de2000 average = 2.8 [2.75, 2.85]',
  ],
  ['Errors stay under 3 up to 60%. Above that line they show.', 'bound grey.de2000 max ≤60 < 3'],
  [
    "Blue's hue is 3 degrees off. The Plain's tint is obviously blue.",
    'value sweep.blue.hue average = 3 [2.5, 3.5] either side',
    'direction grey.tint average ≥50 ≤100 {veltrane} blue obvious',
  ],
  ['Nothing is visible below 80%. From 90% upwards it is hot.', 'bound grey.de2000 max <80 <= 3'],
  [
    'At 45 degrees it keeps 61%. The Plain loses 30% there.',
    'value angle.luminance at 45 {angle 45} = 61 [60.5, 61.5]',
    'value angle.luminance at 45 {angle 45, veltrane} = 70 [69.5, 70.5]',
  ],
  [
    'The average is 3.6. It is visible from 20 to 40%, but from 50% upwards nothing rises above 3.',
    'value grey.de2000 average = 3.6 [3.55, 3.65]',
    'bound grey.de2000 min ≥20 ≤40 > 3',
    'bound grey.de2000 max ≥50 <= 3',
  ],
  [
    'The average grey error is 2.8. From 70 % grey upwards it shows.',
    'value grey.de2000 average = 2.8 [2.75, 2.85]',
  ],
  [
    "From 45 degrees the Plain's blooming is obvious, and the Hearth shows none.",
    'observed blooming 2–4 {angle 45, veltrane}',
    'observed blooming 0–0 {angle 45}',
  ],
  [
    "The Hearth's peak was measured at 1,882 cd/m² in a 1 % window, at 1,666 in one of 10 % and at 331 across the full screen.",
    'value peak at 1 {window 1} = 1882 [1881.5, 1882.5]',
    'value peak at 10 {window 10} = 1666 [1665.5, 1666.5]',
    'value peak at 100 {window 100} = 331 [330.5, 331.5]',
  ],
  ['At 10 % stimulus its shadows lie 19 % under target.', 'value eotf.error at 10 = -19 [-19.5, -18.5]'],
  [
    'It reaches 1,340 nits in a 10 percent window that has settled at 1,240 nits after three minutes.',
    'value peak at 10 {window 10} = 1340 [1335, 1345]',
    'value peak.sustained at 10 {window 10} = 1240 [1235, 1245]',
  ],
  [
    'Gamma comes out at 2.16 on the Hearth and at 2.25 on the Umbra.',
    'value gamma.average = 2.16 [2.155, 2.165]',
    'value gamma.average {nocthale} = 2.25 [2.245, 2.255]',
  ],
  ['At 60 % on the Plain the error is 3.4.', 'value grey.de2000 at 60 {veltrane} = 3.4 [3.35, 3.45]'],
  [
    'After two minutes the 10 % window has fallen to 690. The Plain manages 412 in the same window.',
    'value peak.sustained at 10 {window 10} = 690 [685, 695]',
    'value peak at 10 {veltrane, window 10} = 412 [411.5, 412.5]',
  ],
  [
    'In HDR10 shadows are 12 % too dark. At 10 % it is 20 %.',
    'value eotf.error average ≥5 ≤30 {signal HDR10} = -12 [-12.5, -11.5]',
    'value eotf.error at 10 {signal HDR10} = -20 [-20.5, -19.5]',
  ],
  [
    'Peak luminance is 742 nits, the second highest of the three sets we have measured.',
    'value peak max = 742 [741.5, 742.5]',
    'unproven',
  ],
  ['Pure red falls 7 per cent short on saturation.', 'value sweep.red.saturation at 100 = -7 [-7.5, -6.5]'],
  ['No sweep contains an error above 3, so skin looks like skin.', 'unproven'],
];
