import type { SentenceRow } from './row.ts';

/** How many levels, which one stands out, and whites that are spoken of as a level. */
export const levels: readonly SentenceRow[] = [
  ['Two of the levels are over 3.', 'bound grey.de2000 any but 2 > 3 and grey.de2000 all but 2 <= 3'],
  ['Three of the eleven steps exceed 3.', 'bound grey.de2000 any but 3 > 3 and grey.de2000 all but 3 <= 3'],
  [
    'Of the eleven steps, four are visible.',
    'bound grey.de2000 any but 4 > 3 and grey.de2000 all but 4 <= 3',
  ],
  ['Only one of the levels is visible.', 'bound grey.de2000 any but 1 > 3 and grey.de2000 all but 1 <= 3'],
  ['At least six of the steps exceed 2.', 'bound grey.de2000 any but 6 > 2'],
  ['At most two patches exceed 2.5.', 'bound chart.de2000 all but 2 <= 2.5'],
  ['All but three of the levels are under 2.', 'bound grey.de2000 all but 3 < 2'],
  ['Of the 24 patches, one is over 4.', 'bound chart.de2000 any but 1 > 4 and chart.de2000 all but 1 <= 4'],
  ['About five of the levels are over 3.', 'unproven'],
  ['No two levels are over 3.', 'unproven'],
  ['The darkest three steps exceed 2.', 'unproven'],
  ['On the chart one stubborn patch reaches 5.1.', 'value chart.de2000 max = 5.1 [5.05, 5.15]'],
  ['The worst of the 24 is 3.9.', 'value chart.de2000 max = 3.9 [3.85, 3.95]'],
  ['The worst of the 11 levels is 2.7.', 'value grey.de2000 max = 2.7 [2.65, 2.75]'],
  ['Only full white is past the threshold.', 'bound grey.de2000 at 100 > 3 and grey.de2000 max <100 <= 3'],
  ['Only 100 % white exceeds 3.', 'bound grey.de2000 at 100 > 3 and grey.de2000 max <100 <= 3'],
  [
    'Only the 80 % step exceeds 2.5.',
    'bound grey.de2000 at 80 > 2.5 and grey.de2000 max <80 <= 2.5 and grey.de2000 max >80 <= 2.5',
  ],
  ['Full white reaches 118 nits.', 'value white {signal SDR, window 100} = 118 [117.5, 118.5]'],
  [
    'From 70 % up the error is visible, and the whites turn yellow.',
    'onset grey.de2000 over 3 from 70 included',
    'direction grey.tint average ≥50 ≤100 yellow',
  ],
  ['From 80 % upwards the greys go a little pink.', 'direction grey.tint average ≥80 magenta mild'],
  ['Near-black steps are visible.', 'asks observed near-black 1–4 or bound grey.de2000 max ≥5 ≤10 > 3'],
  ['It delivers a sustained 640 nits.', 'value peak.sustained max = 640 [635, 645]'],
  ['The colour of the white field stays within 0.002.', 'bound uniformity.white.colour <= 0.002'],
  ['White is within 0.0007 of D65.', 'bound white.distance <= 0.0007'],
  ['Gamma sits above 2.2 throughout.', 'bound gamma min > 2.2'],
  // One of the two numbers can be no gamma, so neither is.
  [
    'Gamma averages 2.31. After adjustment the average went from 2.9 to 0.3.',
    'value gamma.average = 2.31 [2.305, 2.315]',
    'unproven',
    'unproven',
  ],
  [
    'Gamma averages 2.31. After adjustment the average went from 0.9 to 0.3.',
    'value gamma.average = 2.31 [2.305, 2.315]',
    'unproven',
    'unproven',
  ],
  [
    'Errors in the greyscale average 0.9. Gamma is 2.31. Then the average is 0.3 after adjustment.',
    'value grey.de2000 average = 0.9 [0.85, 0.95]',
    'value gamma.average = 2.31 [2.305, 2.315]',
    'value grey.de2000 average {stage adjusted} = 0.3 [0.25, 0.35]',
  ],
  [
    'Gamma averages 2.31. After adjustment the average went from 2.8 to 0.4.',
    'value gamma.average = 2.31 [2.305, 2.315]',
    'unproven',
    'unproven',
  ],
  [
    'Errors stay below 3 up to 60 %, where they reach 3.4.',
    'bound grey.de2000 max ≤60 < 3',
    'value grey.de2000 at 60 = 3.4 [3.35, 3.45]',
  ],
  [
    'The error is visible from 60 %, where it is 3.4, to 100 %, where it is 5.1.',
    'onset grey.de2000 over 3 from 60 included',
    'value grey.de2000 at 60 = 3.4 [3.35, 3.45]',
    'value grey.de2000 at 100 = 5.1 [5.05, 5.15]',
  ],
  [
    'Luminance falls steadily to 50 degrees, where only 44 % remains.',
    'value angle.luminance at 50 {angle 50} = 44 [43.5, 44.5]',
  ],
  [
    'The EOTF is followed up to 70 %, where the set is 4 % too dark.',
    'direction eotf.error average ≤70 on-target',
    'value eotf.error at 70 = -4 [-4.5, -3.5]',
  ],
  [
    'The HDR tone curve of the Hearth lies 30% above target at a signal level of 20% and rolls off from 60%.',
    'value eotf.error at 20 {signal HDR} = 30 [29.5, 30.5]',
    'direction eotf.rolloff {signal HDR} rolls-off',
    'value eotf.rolloff {signal HDR} = 60 [59.5, 60.5]',
  ],
  [
    'White uniformity comes in at 11%, with the lower left corner as the culprit.',
    'value uniformity.white {level white} = 11 [10.5, 11.5]',
    'difference uniformity.white.cell at bottom left {level white} : uniformity.white.cell min {level white} = 0 [0, 0]',
  ],
  ["White varies by 21 per cent across the Hearth's screen.", 'value uniformity.white = 21 [20.5, 21.5]'],
  [
    'Every hue I swept is undersaturated.',
    'bound sweep.red.saturation average < -5 and sweep.yellow.saturation average < -5 and sweep.green.saturation average < -5 and sweep.cyan.saturation average < -5 and sweep.blue.saturation average < -5 and sweep.magenta.saturation average < -5',
  ],
  [
    'A screen filled with white keeps roughly three quarters of the peak.',
    'ratio peak at 100 {window 100} : peak max = 0.75 [0.675, 0.825]',
  ],
  [
    'In HDR it needs 75 watts fewer than the Plain.',
    'difference power.hdr-calm {signal HDR, veltrane} : power.hdr-calm {signal HDR} = 75 [74.5, 75.5]',
  ],
  [
    'It uses 75 watts less than the Plain in HDR.',
    'difference power.hdr-calm {signal HDR, veltrane} : power.hdr-calm {signal HDR} = 75 [74.5, 75.5]',
  ],
  ['Shadow ramps show visible near-black trouble.', 'observed near-black 1–3'],
  ['There is no crush near black.', 'observed near-black 0–0'],
  ['Seen from above or below, the Hearth loses less luminance than it does from the side.', 'unproven'],
];
