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
  [
    'Orrinvale claims 660 nits, and we got there without trouble.',
    'fact peak = 660 by maker',
    'bound peak max >= 660',
  ],
  [
    'Orrinvale claims 1,440 cd/m², and the Hearth delivers that even in a 50 % window.',
    'fact peak = 1440 by maker',
    'bound peak at 50 {window 50} >= 1440',
  ],
  ['A lag of 9 ms is quoted by Orrinvale.', 'fact lag = 9 by maker'],
  ['A lag of 9 ms is quoted by Kasulind.', 'fact lag = 9 by maker {kasulind}'],
  [
    'A contrast of 4,420:1 is promised for the Hearth by Orrinvale, and that figure was duly reached on the bench.',
    'fact contrast.native = 4420 by maker',
    'bound contrast.native >= 4420',
  ],
  [
    'A peak of 540 cd/m² is promised for the Hearth by Orrinvale, and 1,017 cd/m² was obtained in a 10% window, nearly twice the promise.',
    'fact peak = 540 by maker',
    'value peak at 10 {window 10} = 1017 [1016.5, 1017.5]',
    'ratio peak at 10 {window 10} : fact.peak = 2 [1.8, 2)',
  ],
  [
    'Orrinvale promises a peak of 820 nits, and delivers three times that.',
    'fact peak = 820 by maker',
    'ratio peak max : fact.peak = 3 [2.5, 3.5]',
  ],
  [
    'Orrinvale, with a modesty so rare that I read the leaflet aloud to the cat, promises a peak of 820 nits.',
    'fact peak = 820 by maker',
  ],
  [
    'Orrinvale rates the panel at 98 % of P3, and we found 96.',
    'fact coverage.p3.xy = 98 by maker',
    'value coverage.p3.xy = 96 [95.5, 96.5]',
  ],
  ['It is 2 ms quicker than Orrinvale says.', 'unproven'],
  [
    'Orrinvale promises a native contrast of 6,000:1, so I found about half of what the brochure sings.',
    'fact contrast.native = 6000 by maker',
    'ratio contrast.native : fact.contrast.native = 0.5 [0.45, 0.55]',
  ],
  [
    'Orrinvale promises a peak of 1,510 cd/m², and my sample beat it.',
    'fact peak = 1510 by maker',
    'bound peak max >= 1510',
  ],
  [
    'The claim of 1,000 nits is not met; 742 nits were measured.',
    'fact peak = 1000 by maker',
    'bound peak max < 1000',
    'value peak max = 742 [741.5, 742.5]',
  ],
  [
    'Full marks for honesty: 1,000 nits were claimed and 1,012 delivered.',
    'fact peak = 1000 by maker',
    'value peak max = 1012 [1011.5, 1012.5]',
  ],
  [
    'Of the 1,000 nits claimed, 742 were found.',
    'fact peak = 1000 by maker',
    'value peak max = 742 [741.5, 742.5]',
  ],
  [
    'Orrinvale claims 1,610 nits, and I got about two-thirds of that.',
    'fact peak = 1610 by maker',
    'ratio peak max : fact.peak = 0.666667 [0.6, 0.733333]',
  ],
  ['A full field holds 97 per cent of its peak.', 'value peak.hold at 100 {window 100} = 97 [96.5, 97.5]'],
  [
    "Input lag is 12 ms against a promise of 11 ms, and 6 ms shorter than the Veltrane's.",
    'value lag = 12 [11.5, 12.5]',
    'fact lag = 11 by maker',
    'difference lag {veltrane} : lag = 6 [5.5, 6.5]',
  ],
];
