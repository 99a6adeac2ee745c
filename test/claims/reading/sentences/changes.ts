import type { SentenceRow } from './row.ts';

/** What work, an update or another patch made of a number, and what lies near another. */
export const changes: readonly SentenceRow[] = [
  [
    'Out of the box the average is 3.8; an hour’s work brings that to 0.7.',
    'value grey.de2000 average {stage as-delivered} = 3.8 [3.75, 3.85]',
    'value grey.de2000 average {stage adjusted} = 0.7 [0.65, 0.75]',
  ],
  [
    'Since the update lag has dropped from 18 to 11 ms.',
    'value lag {before true} = 18 [17.5, 18.5]',
    'value lag = 11 [10.5, 11.5]',
  ],
  ['White sits within 150 K of 6,500 K.', 'bound white.cct >= 6350 and white.cct <= 6650'],
  ['Colour temperature holds within 150 K of 6,500 K from 20 per cent up.', 'unproven'],
  ['Red is the worst of the six, at 4.6.', 'value sweep.red.de2000 max = 4.6 [4.55, 4.65]'],
  ['Skin tones are accurate.', 'unproven'],
  ['The slowest transition takes 14 ms.', 'unproven'],
  ['HDR adds another 54 W.', 'unproven'],
  ['It idles at 0.4 W.', 'value standby = 0.4 [0.35, 0.45]'],
  [
    'It reaches 742 nits at 10 per cent, 640 at 25, 398 at full screen.',
    'value peak at 10 = 742 [741.5, 742.5]',
    'value peak at 25 {window 25} = 640 [635, 645]',
    'value peak at 100 {window 100} = 398 [397.5, 398.5]',
  ],
  ['The price has fallen from £1,349 to £1,149.', 'fact price = 1149'],
  [
    'After an hour of work the average is 0.8 and no level exceeds 1.5.',
    'value grey.de2000 average {stage adjusted} = 0.8 [0.75, 0.85]',
    'bound grey.de2000 max {stage adjusted} <= 1.5',
  ],
  ['It used to cost £1,349.', 'unproven'],
  [
    'The error grows from 1.2 at 10 % to 5.1 at 100 %.',
    'value grey.de2000 at 10 = 1.2 [1.15, 1.25]',
    'value grey.de2000 at 100 = 5.1 [5.05, 5.15]',
  ],
  [
    'Gamma climbs from 2.1 at 10 % to 2.4 at 90 %.',
    'value gamma at 10 = 2.1 [2.05, 2.15]',
    'value gamma at 90 = 2.4 [2.35, 2.45]',
  ],
  [
    'From 10 to 90 % gamma stays between 2.1 and 2.3.',
    'value gamma.average = 2.1 [2.05, 2.15] to 2.3 [2.25, 2.35]',
  ],
];
