import type { SentenceRow } from './row.ts';

/** The terse passive of a laboratory: uncertainties, factors, brackets. */
export const labReport: readonly SentenceRow[] = [
  [
    'Measured at delivery, mean greyscale ΔE2000 was 2.4 (maximum 5.1 at 100 %).',
    'value grey.de2000 average {stage as-delivered} = 2.4 [2.35, 2.45]',
    'value grey.de2000 at 100 {stage as-delivered} = 5.1 [5.05, 5.15]',
  ],
  [
    'Native contrast was 5,240:1 (±160), chequerboard contrast 2,310:1.',
    'value contrast.native = 5240 [5235, 5245]',
    'value contrast.chequer = 2310 [2305, 2315]',
  ],
  [
    'EOTF error stayed within ±5 % between 10 and 70 % stimulus.',
    'bound eotf.error max ≥10 ≤70 <= 5 and eotf.error min ≥10 ≤70 >= -5',
  ],
  [
    'At 45° horizontally, luminance had fallen to 44 % and contrast to 2,100:1.',
    'value angle.luminance at 45 {angle 45, plane horizontal} = 44 [43.5, 44.5]',
    'value angle.contrast at 45 {angle 45, plane horizontal} = 2100 [2050, 2150]',
  ],
  [
    'Compared with the Plain, native contrast was higher by a factor of 2.6.',
    'ratio contrast.native : contrast.native {veltrane} = 2.6 [2.55, 2.65]',
  ],
  ['The mean error decreased by 1.8 on adjustment.', 'unproven'],
  [
    'The difference in peak luminance between the Hearth and the Plain was 171 cd/m² in favour of the former.',
    'unproven',
  ],
  ['Lag was found to be 9.8 ± 0.3 ms.', 'value lag = 9.8 [9.75, 9.85]'],
  ['The measurement uncertainty of the contrast figure is 3 % (k = 2).', 'unproven'],
  [
    'Black level was 0.028 cd/m² with dimming high and 0.044 cd/m² with dimming off.',
    'value black {dimming high} = 0.028 [0.0275, 0.0285]',
    'value black {dimming off} = 0.044 [0.0435, 0.0445]',
  ],
  ['Input lag (1080p/60) was 9.8 ms.', 'unproven', 'value lag = 9.8 [9.75, 9.85]'],
  [
    'Uniformity: the worst cell, bottom right, is at −14 %.',
    'value uniformity.white.cell at bottom right = -14 [-14.5, -13.5]',
  ],
  [
    'The darkest cell, bottom right, is 14 % down.',
    'value uniformity.white.cell at bottom right = -14 [-14.5, -13.5]',
  ],
  [
    'The bottom left corner loses 14 % of its luminance.',
    'value uniformity.white.cell at bottom left = -14 [-14.5, -13.5]',
  ],
  [
    'On mid-grey the top right cell loses 9 %.',
    'value uniformity.grey50.cell at top right {level grey50} = -9 [-9.5, -8.5]',
  ],
  [
    'Native contrast was determined as 4,279 ± 181:1, or 2.5 times that of the Plain.',
    'value contrast.native = 4279 [4278.5, 4279.5]',
    'ratio contrast.native : contrast.native {veltrane} = 2.5 [2.45, 2.55]',
  ],
  [
    'A white screen is 10.7% uneven, and the worst spot is the bottom left corner.',
    'value uniformity.white = 10.7 [10.65, 10.75]',
    'difference uniformity.white.cell at bottom left : uniformity.white.cell min = 0 [0, 0]',
  ],
  [
    'Shuffle out to 60 degrees, and more than half of the luminance is gone.',
    'bound angle.luminance at 60 {angle 60} < 50',
  ],
  [
    'After adjustment, the SDR greyscale error falls from an average of 2.7 to 0.29.',
    'value grey.de2000 average {signal SDR, stage as-delivered} = 2.7 [2.65, 2.75]',
    'value grey.de2000 average {signal SDR, stage adjusted} = 0.29 [0.285, 0.295]',
  ],
  [
    'White in HDR10 measures about 5,870 K, so snow scenes come out on the cool side.',
    'value white.cct {signal HDR10} = 5870 [5752.6, 5987.4]',
    'direction white.cct {signal HDR10} cool',
  ],
];
