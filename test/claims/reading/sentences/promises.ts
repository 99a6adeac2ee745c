import type { SentenceRow } from './row.ts';

/** What a maker promises, and words that take its number up: "gets there", "93 % of the promise". */
export const promises: readonly SentenceRow[] = [
  [
    'Its lag is 8.7 ms, and Orrinvale says 8. The Umbra’s is nearly twice the Plain’s, and we like it.',
    'value lag = 8.7 [8.65, 8.75]',
    'fact lag = 8 by maker',
    'ratio lag {nocthale} : lag {veltrane} = 2 [1.8, 2)',
  ],
  [
    'Veltrane promises 900 nits and delivers. HDR power draw is 117 W.',
    'fact peak = 900 by maker {veltrane}',
    'bound peak max {veltrane} >= 900',
    'unproven',
  ],
  [
    'Orrinvale quotes 700 nits. Veltrane, mind you, promises 1,200 nits, and the Plain gets there.',
    'fact peak = 700 by maker',
    'fact peak = 1200 by maker {veltrane}',
    'bound peak max {veltrane} >= 1200',
  ],
  ['Orrinvale quotes 700 nits. The Plain gets there.', 'fact peak = 700 by maker', 'unproven'],
  [
    'Veltrane promises 900 nits. It costs £629.',
    'fact peak = 900 by maker {veltrane}',
    'fact price = 629 {veltrane}',
  ],
  [
    'Orrinvale claims 96% of P3. I measured 95.7% in xy, so call that honest rounding.',
    'fact coverage.p3.xy = 96 by maker',
    'value coverage.p3.xy = 95.7 [95.65, 95.75]',
  ],
  [
    'In HDR it reaches 549 nits. In a ten per cent window. Orrinvale promises 550.',
    'value peak max {signal HDR} = 549 [548.5, 549.5]',
    'fact peak = 550 by maker',
  ],
  [
    'Orrinvale promises 500 nits; in a 10% window we measured 336, a quarter short of the claim.',
    'fact peak = 500 by maker',
    'value peak at 10 {window 10} = 336 [335.5, 336.5]',
    'ratio peak at 10 {window 10} : fact.peak = 0.75 [0.725, 0.775]',
  ],
  [
    'Orrinvale promises 15 ms of lag. It promises 1,600 nits, too, and the Hearth gets a little over 60 percent of the way there.',
    'fact lag = 15 by maker',
    'fact peak = 1600 by maker',
    'ratio peak max : fact.peak = 0.6 (0.6, 0.63]',
  ],
  [
    'Orrinvale promises 15 ms of lag. On native contrast it promises 6,000 to 1, and there the Hearth delivers.',
    'fact lag = 15 by maker',
    'fact contrast.native = 6000 by maker',
    'bound contrast.native >= 6000',
  ],
  [
    'Orrinvale promises 1,000 nits, and the Hearth beats that by a third, with 1,340 nits in a 10 percent window.',
    'fact peak = 1000 by maker',
    'ratio peak max : fact.peak = 1.33333 [1.3, 1.36667]',
    'value peak at 10 {window 10} = 1340 [1335, 1345]',
  ],
  [
    'Orrinvale promises 1,000 nits, and the Hearth gets three quarters of the way there.',
    'fact peak = 1000 by maker',
    'ratio peak max : fact.peak = 0.75 [0.675, 0.825]',
  ],
  [
    'Orrinvale promises 1,000 nits. The maker has delivered what it promised.',
    'fact peak = 1000 by maker',
    'bound peak max >= 1000',
  ],
  [
    'Orrinvale promises 1,000 nits. The maker has not delivered what it promised.',
    'fact peak = 1000 by maker',
    'bound peak max < 1000',
  ],
  ['The promised lag of 10 ms is met.', 'fact lag = 10 by maker', 'bound lag <= 10'],
  [
    'Orrinvale promises 1,800 nits, and the set does not deliver them.',
    'fact peak = 1800 by maker',
    'bound peak max < 1800',
  ],
  [
    'The average greyscale error is 3.4, a figure the engineer received like a man told that the bar has closed.',
    'value grey.de2000 average = 3.4 [3.35, 3.45]',
  ],
  [
    'Orrinvale promises 650 nits, and the TV blows right past that.',
    'fact peak = 650 by maker',
    'bound peak max >= 650',
  ],
  [
    'Orrinvale claims 95 percent of P3, and it delivers: I got 97.',
    'fact coverage.p3.xy = 95 by maker',
    'bound coverage.p3.xy >= 95',
    'value coverage.p3.xy = 97 [96.5, 97.5]',
  ],
  [
    'Orrinvale claims 95 percent of P3. I got 97.',
    'fact coverage.p3.xy = 95 by maker',
    'value coverage.p3.xy = 97 [96.5, 97.5]',
  ],
  [
    'Tamarick promises 650 nits, and it sails straight past that.',
    'fact peak = 650 by maker {tamarick}',
    'bound peak max {tamarick} >= 650',
  ],
  [
    'Orrinvale claims 94 per cent of P3, a promise that the Hearth keeps.',
    'fact coverage.p3.xy = 94 by maker',
    'bound coverage.p3.xy >= 94',
  ],
  [
    'Orrinvale claims 94 per cent of P3, a promise that it has kept.',
    'fact coverage.p3.xy = 94 by maker',
    'bound coverage.p3.xy >= 94',
  ],
  [
    'Orrinvale claims 94 per cent of P3, a promise the Hearth does not keep.',
    'fact coverage.p3.xy = 94 by maker',
    'unproven',
  ],
  ['Orrinvale promises 1,000 nits, a promise broken.', 'fact peak = 1000 by maker', 'bound peak max < 1000'],
  [
    'Orrinvale claims 94 per cent of P3, a promise that the Plain keeps.',
    'fact coverage.p3.xy = 94 by maker',
    'unproven',
  ],
];
