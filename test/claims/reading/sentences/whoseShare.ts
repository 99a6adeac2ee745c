import type { SentenceRow } from './row.ts';

/** Whose share is taken, which set has so many times as much, and a verb that two sets share. */
export const whoseShare: readonly SentenceRow[] = [
  [
    'The Kasulind undercuts the Hearth by £200 and the Plain by £90.',
    'difference fact.price : fact.price {kasulind} = 200 [200, 200]',
    'difference fact.price {veltrane} : fact.price {kasulind} = 90 [90, 90]',
  ],
  [
    'It beats the Kasulind by 100 nits and the Plain by 330.',
    'difference peak max : peak max {kasulind} = 100 [97.5, 102.5]',
    'difference peak max : peak max {veltrane} = 330 [325, 335]',
  ],
  [
    'It outshines the Plain by a third and the Umbra by half.',
    'ratio peak max : peak max {veltrane} = 1.33333 [1.3, 1.36667]',
  ],
  [
    'It undercuts the Plain by £90, the Umbra by £160 and the Kasulind by £200.',
    'difference fact.price {veltrane} : fact.price = 90 [90, 90]',
    'difference fact.price {nocthale} : fact.price = 160 [160, 160]',
    'difference fact.price {kasulind} : fact.price = 200 [200, 200]',
  ],
  [
    'It trails the Umbra by 200 nits and the Vane by about 50 nits.',
    'difference peak max {nocthale} : peak max = 200 [195, 205]',
    'difference peak max {kasulind} : peak max = 50 [47.5, 52.5]',
  ],
  [
    'Its warranty runs to 12 months, a third of what Veltrane gives its customers.',
    'fact warranty = 12',
    'ratio fact.warranty : fact.warranty {veltrane} = 0.333333 [0.3, 0.366667]',
  ],
  ['The Plain is the best, whose average error is less than a third of ours.', 'unproven', 'unproven'],
  [
    'Its contrast is more than doubled by the Plain.',
    'ratio contrast.native {veltrane} : contrast.native > 2',
  ],
  [
    'Its contrast is doubled by the Plain.',
    'ratio contrast.native {veltrane} : contrast.native = 2 [1.8, 2.2]',
  ],
  [
    'Its contrast is almost doubled by the Plain.',
    'ratio contrast.native {veltrane} : contrast.native = 2 [1.8, 2)',
  ],
  [
    'At 45 degrees it keeps 48 % of its luminance, whereas 74 % is kept by the Plain.',
    'value angle.luminance at 45 {angle 45} = 48 [47.5, 48.5]',
    'value angle.luminance at 45 {angle 45, veltrane} = 74 [73.5, 74.5]',
  ],
  [
    'At 45 degrees 74 % is kept by the Plain.',
    'value angle.luminance at 45 {angle 45, veltrane} = 74 [73.5, 74.5]',
  ],
  [
    'The Plain is more accurate, with an average error that is less than a third of ours.',
    'order grey.de2000 average {veltrane} lower ahead of orrinvale-hearth-55',
    'ratio grey.de2000 average {veltrane} : grey.de2000 average < 0.333333',
  ],
  [
    "The Plain's average error is less than a third of ours.",
    'ratio grey.de2000 average {veltrane} : grey.de2000 average < 0.333333',
  ],
  [
    'The Plain averages 1.5, a third of ours.',
    'value grey.de2000 average {veltrane} = 1.5 [1.45, 1.55]',
    'ratio grey.de2000 average {veltrane} : grey.de2000 average = 0.333333 [0.3, 0.366667]',
  ],
  [
    'The warranty is 12 months, half of what Veltrane allows its Plain.',
    'fact warranty = 12',
    'ratio fact.warranty : fact.warranty {veltrane} = 0.5 [0.45, 0.55]',
  ],
  [
    'The warranty is 12 months, half of what Veltrane gives.',
    'fact warranty = 12',
    'ratio fact.warranty : fact.warranty {veltrane} = 0.5 [0.45, 0.55]',
  ],
  [
    'Black measures 0.047 nits, a quarter of the glow that the Kasulind leaves behind.',
    'value black = 0.047 [0.0465, 0.0475]',
    'ratio black : black {kasulind} = 0.25 [0.225, 0.275]',
  ],
  [
    'Black is 0.047 nits, a quarter of the light that the Kasulind lets through.',
    'value black = 0.047 [0.0465, 0.0475]',
    'unproven',
  ],
  [
    'Its lag is 9.6 ms, half of what the Plain needs.',
    'value lag = 9.6 [9.55, 9.65]',
    'ratio lag : lag {veltrane} = 0.5 [0.45, 0.55]',
  ],
  ['In the thrifty corner is the Plain, and the Hearth costs about twice as much as that.', 'unproven'],
  [
    'The Plain costs £629, and the Hearth costs about twice as much as that.',
    'fact price = 629 {veltrane}',
    'ratio fact.price : fact.price {veltrane} = 2 [1.8, 2.2]',
  ],
];
