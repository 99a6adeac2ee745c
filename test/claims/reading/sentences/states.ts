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
    'value grey.de2000 average {unmatched} = 3.4 [3.35, 3.45]',
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
];
