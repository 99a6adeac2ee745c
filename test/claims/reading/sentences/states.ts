import type { SentenceRow } from './row.ts';

/** Which state a number is of: before and after work on the picture, changes by so much, what an imperative sets. */
export const states: readonly SentenceRow[] = [
  [
    'An hour with the white balance gets the average to 0.91, from 3.4.',
    'value grey.de2000 average {stage adjusted} = 0.91 [0.905, 0.915]',
    'value grey.de2000 average {stage as-delivered} = 3.4 [3.35, 3.45]',
  ],
  [
    'An hour with the controls brings the average down to 0.91.',
    'value grey.de2000 average {stage adjusted} = 0.91 [0.905, 0.915]',
  ],
  [
    'A quick tweak of the white balance took the average from 3.4 to 0.91.',
    'value grey.de2000 average {stage as-delivered} = 3.4 [3.35, 3.45]',
    'value grey.de2000 average {stage adjusted} = 0.91 [0.905, 0.915]',
  ],
  [
    'With the white balance tamed, the average is 0.91.',
    'value grey.de2000 average {stage adjusted} = 0.91 [0.905, 0.915]',
  ],
  [
    'Ten minutes in the menu, and the average drops to 0.91 from 3.4.',
    'value grey.de2000 average {stage adjusted} = 0.91 [0.905, 0.915]',
    'value grey.de2000 average {stage as-delivered} = 3.4 [3.35, 3.45]',
  ],
  [
    'I spent an hour on the white balance. The average is now 0.91. It used to be 3.4.',
    'value grey.de2000 average {stage adjusted} = 0.91 [0.905, 0.915]',
    'value grey.de2000 average {stage as-delivered} = 3.4 [3.35, 3.45]',
  ],
  [
    'An hour with the white balance gets the average to 0.91. The cast has gone. None of the steps is visible now.',
    'value grey.de2000 average {stage adjusted} = 0.91 [0.905, 0.915]',
    'direction grey.tint average ≥50 ≤100 {stage adjusted} none',
    'bound grey.de2000 max {stage adjusted} <= 3',
  ],
  // Nothing before it says what was done.
  ['The cast has gone.', 'unproven'],
  [
    'Before adjustment the white balance drifts; the average error is 3.4.',
    'value grey.de2000 average {stage as-delivered} = 3.4 [3.35, 3.45]',
  ],
  [
    'The average falls to 0.91 from 3.4.',
    'value grey.de2000 average = 0.91 [0.905, 0.915]',
    'value grey.de2000 average {before true} = 3.4 [3.35, 3.45]',
  ],
  ['The update cut the average error from 3.8 to 1.8.', 'unproven'],
  [
    'After adjustment the chart mean shrinks to 0.84, which is less than half.',
    'value chart.de2000 average {stage adjusted} = 0.84 [0.835, 0.845]',
    'ratio chart.de2000 average {stage adjusted} : chart.de2000 average {stage as-delivered} < 0.5',
  ],
  [
    'After adjustment the average is 0.91. White loses about 26 nits in the process.',
    'value grey.de2000 average {stage adjusted} = 0.91 [0.905, 0.915]',
    'difference white {stage as-delivered} : white {stage adjusted} = 26 [24.7, 27.3]',
  ],
  [
    'After adjustment white drops by 26 nits.',
    'difference white {stage as-delivered} : white {stage adjusted} = 26 [25.5, 26.5]',
  ],
  [
    'After adjustment white is 26 nits lower.',
    'difference white {stage as-delivered} : white {stage adjusted} = 26 [25.5, 26.5]',
  ],
  // Without a word on the state nobody knows from what.
  ['White drops by 26 nits.', 'unproven'],
  [
    'Set dimming to high and black sinks to 0.009 nits.',
    'value black {dimming high} = 0.009 [0.0085, 0.0095]',
  ],
  [
    'Set dimming to high, and the contrast rises to 20,000:1. Lag is 14 ms.',
    'value contrast.sequential {dimming high} = 20000 [19500, 20500]',
    'value lag = 14 [13.5, 14.5]',
  ],
  ['Turn off local dimming and black rises to 0.12 nits.', 'value black {dimming off} = 0.12 [0.115, 0.125]'],
  ['Switch to Game and lag falls to 9 ms.', 'value lag {mode Game} = 9 [8.5, 9.5]'],
  // What has changed was something else before: each number is a statement of its own state.
  [
    'Lag has dropped from 18.2 ms to 12.4 ms.',
    'value lag {before true} = 18.2 [18.15, 18.25]',
    'value lag = 12.4 [12.35, 12.45]',
  ],
  [
    'Average gamma has risen from 2.17 to 2.34.',
    'value gamma.average {before true} = 2.17 [2.165, 2.175]',
    'value gamma.average = 2.34 [2.335, 2.345]',
  ],
  [
    'Cyan has gone from 6.5 % under to 2 % under, on average.',
    'value sweep.cyan.saturation average {before true} = -6.5 [-6.55, -6.45]',
    'value sweep.cyan.saturation average = -2 [-2.5, -1.5]',
  ],
  [
    'Native contrast is 3,280:1, against 3,260:1 before.',
    'value contrast.native = 3280 [3275, 3285]',
    'value contrast.native {before true} = 3260 [3255, 3265]',
  ],
  [
    'It draws 61 W in SDR, down from 68 W.',
    'value power.calm {signal SDR} = 61 [60.5, 61.5]',
    'value power.calm {before true, signal SDR} = 68 [67.5, 68.5]',
  ],
  [
    'Noise has fallen from 24 dB(A) to 19 dB(A), which turns the fan into a rumour.',
    'value noise {before true} = 24 [23.5, 24.5]',
    'value noise = 19 [18.5, 19.5]',
  ],
  [
    'On a white field the error has come down from 14% to under 9%, and on mid-grey from 20% to 12%.',
    'value uniformity.white {before true, level white} = 14 [13.5, 14.5]',
    'bound uniformity.white {level white} < 9',
    'value uniformity.grey50 {before true, level grey50} = 20 [19.5, 20.5]',
    'value uniformity.grey50 {level grey50} = 12 [11.5, 12.5]',
  ],
  // Along the signal, an angle or a time it is the same set in one state.
  ['By 60 % the error has risen from 0.9 to 4.1.', 'unproven', 'unproven'],
  ['At 45 degrees contrast has fallen from 3,260:1 to 1,100:1.', 'unproven', 'unproven'],
  ['After ten minutes the peak has dropped from 742 to 690 nits.', 'unproven'],
  [
    'Cyan was 7% undersaturated on average as delivered, and after adjustment it is 2%.',
    'value sweep.cyan.saturation average {stage as-delivered} = -7 [-7.5, -6.5]',
    'value sweep.cyan.saturation average {stage adjusted} = -2 [-2.5, -1.5]',
  ],
  [
    'At 10% of signal it was 30% above its target as delivered; after adjustment it is 9% below.',
    'value eotf.error at 10 {stage as-delivered} = 30 [29.5, 30.5]',
    'value eotf.error at 10 {stage adjusted} = -9 [-9.5, -8.5]',
  ],
  [
    'Before the update the average error was 2.7; it is now 1.1.',
    'value grey.de2000 average {before update} = 2.7 [2.65, 2.75]',
    'value grey.de2000 average = 1.1 [1.05, 1.15]',
  ],
  [
    '## On firmware 4.1\n\nThe average error is 2.7.\n\n## Greyscale\n\nThe average error is 1.1.',
    'value grey.de2000 average {firmware 4.1} = 2.7 [2.65, 2.75]',
    'value grey.de2000 average = 1.1 [1.05, 1.15]',
  ],
  [
    '## Before the update\n\nThe average error is 2.7. It is 1.1 today.',
    'value grey.de2000 average {before update} = 2.7 [2.65, 2.75]',
    'value grey.de2000 average = 1.1 [1.05, 1.15]',
  ],
  [
    "After a proper calibration the Hearth's average error drops to 0.6.",
    'value grey.de2000 average {stage adjusted} = 0.6 [0.55, 0.65]',
  ],
  [
    'After careful adjustment the average error is 0.6.',
    'value grey.de2000 average {stage adjusted} = 0.6 [0.55, 0.65]',
  ],
  [
    'Following a full calibration, the error averages 0.6.',
    'value grey.de2000 average {stage adjusted} = 0.6 [0.55, 0.65]',
  ],
  [
    'Calibrate the Plain, though, and its average error falls to 0.4.',
    'value grey.de2000 average {stage adjusted, veltrane} = 0.4 [0.35, 0.45]',
  ],
  [
    'Calibrate it and the average error falls to 0.4.',
    'value grey.de2000 average {stage adjusted} = 0.4 [0.35, 0.45]',
  ],
  [
    'Give the Hearth the same treatment and its average lands at 0.9.',
    'value grey.de2000 average = 0.9 [0.85, 0.95]',
  ],
];
