import type { SentenceRow } from './row.ts';

/** Two lists of numbers: each place with the number that has its turn. */
export const pairedLists: readonly SentenceRow[] = [
  [
    'At 10 and 90 % the error is 1.2 and 4.5.',
    'value grey.de2000 at 10 = 1.2 [1.15, 1.25]',
    'value grey.de2000 at 90 = 4.5 [4.45, 4.55]',
  ],
  [
    'The error at 10 and 90 % is 1.2 and 4.5.',
    'value grey.de2000 at 10 = 1.2 [1.15, 1.25]',
    'value grey.de2000 at 90 = 4.5 [4.45, 4.55]',
  ],
  [
    'At 30, 45 and 60 degrees it keeps 70, 50 and 35 % of its light.',
    'value angle.luminance at 30 {angle 30} = 70 [69.5, 70.5]',
    'value angle.luminance at 45 {angle 45} = 50 [49.5, 50.5]',
    'value angle.luminance at 60 {angle 60} = 35 [34.5, 35.5]',
  ],
  [
    'In windows of 2, 10 and 100 % it reaches 468, 503 and 288 nits.',
    'value peak at 2 {window 2} = 468 [467.5, 468.5]',
    'value peak at 10 {window 10} = 503 [502.5, 503.5]',
    'value peak at 100 {window 100} = 288 [287.5, 288.5]',
  ],
  [
    'In 2, 10 and 100 % windows we measured 468, 503 and 288 nits.',
    'value peak at 2 {window 2} = 468 [467.5, 468.5]',
    'value peak at 10 {window 10} = 503 [502.5, 503.5]',
    'value peak at 100 {window 100} = 288 [287.5, 288.5]',
  ],
  [
    'At 15, 30, 45 and 60° to the side the Hearth keeps 88, 68, 45 and 30 % of its on-axis luminance respectively.',
    'value angle.luminance at 15 {angle 15} = 88 [87.5, 88.5]',
    'value angle.luminance at 30 {angle 30} = 68 [67.5, 68.5]',
    'value angle.luminance at 45 {angle 45} = 45 [44.5, 45.5]',
    'value angle.luminance at 60 {angle 60} = 30 [29.5, 30.5]',
  ],
  [
    'In Calm mode the greyscale error averages 2.7 and so counts as accurate, but the single levels tell more: 1.8, 2.6 and 4.4 at 30, 50 and 100 % respectively.',
    'value grey.de2000 average {mode Calm} = 2.7 [2.65, 2.75]',
    'bound grey.de2000 average {mode Calm} < 3',
    'value grey.de2000 at 30 {mode Calm} = 1.8 [1.75, 1.85]',
    'value grey.de2000 at 50 {mode Calm} = 2.6 [2.55, 2.65]',
    'value grey.de2000 at 100 {mode Calm} = 4.4 [4.35, 4.45]',
  ],
  [
    'Red is out by 2.1, 3.3 and 4.0 at 20, 60 and 100 % saturation.',
    'value sweep.red.de2000 at 20 = 2.1 [2.05, 2.15]',
    'value sweep.red.de2000 at 60 = 3.3 [3.25, 3.35]',
    'value sweep.red.de2000 at 100 = 4 [3.95, 4.05]',
  ],
  ['At 30 and 60 degrees the Plain keeps 70, 50 and 35 %.', 'unproven', 'unproven', 'unproven'],
  [
    'At 20 and 40 % the error is under 1 and 2.',
    'bound grey.de2000 at 20 < 1',
    'bound grey.de2000 at 40 < 2',
  ],
  [
    'In windows of 10 and 100 % it does not reach 742 and 400 nits.',
    'bound peak at 10 {window 10} < 742',
    'bound peak at 100 {window 100} < 400',
  ],
];
