import type { SentenceRow } from './row.ts';

/** How far one number lies from another, and whose each is: extras, halves of another's, extremes and who has them. */
export const distances: readonly SentenceRow[] = [
  ['For £600 more you can have the Umbra.', 'difference fact.price {nocthale} : fact.price = 600 [600, 600]'],
  ['For another £250 you get the Umbra.', 'difference fact.price {nocthale} : fact.price = 250 [250, 250]'],
  [
    'The lowest average error we have measured belongs to the Plain.',
    'order grey.de2000 average {veltrane} lower best',
  ],
  ['The brightest of the five is the Plain.', 'order peak max {veltrane} higher best'],
  ["Its lag is within 2 ms of the Umbra's.", 'difference lag : lag {nocthale} = 0 [-2, 2]'],
  ['It is a slim set, as slim as the Plain.', 'order fact.depth lower matches of veltrane-plain-50'],
  ['Lag is within 2 ms of what Orrinvale promises.', 'difference lag : fact.lag = 0 [-2, 2]'],
  [
    "Contrast is within 100:1 of the Plain's.",
    'difference contrast.native : contrast.native {veltrane} = 0 [-100, 100]',
  ],
  [
    "The peak is within 20 nits of the Plain's and the Umbra's.",
    'difference peak max : peak max {veltrane} = 0 [-20, 20]',
  ],
  ["Its price is within £50 of the Plain's.", 'difference fact.price : fact.price {veltrane} = 0 [-50, 50]'],
  [
    'If you want contrast, get the Umbra, which has three times as much.',
    'ratio contrast.native {nocthale} : contrast.native = 3 [2.5, 3.5]',
  ],
  [
    'It uses 20 more watts than the Plain.',
    'difference power.calm : power.calm {veltrane} = 20 [19.5, 20.5]',
  ],
  [
    'It draws 20 watts more than the Plain.',
    'difference power.calm : power.calm {veltrane} = 20 [19.5, 20.5]',
  ],
  [
    'It reaches 300 more nits than the Plain.',
    'difference peak max : peak max {veltrane} = 300 [292.5, 307.5]',
  ],
  [
    'It takes 300 more nits than the Plain for half the time.',
    'difference peak max : peak max {veltrane} = 300 [292.5, 307.5]',
    'unproven',
  ],
  [
    'The bottom left is the dimmest spot of a white field.',
    'difference uniformity.white.cell at bottom left {level white} : uniformity.white.cell min {level white} = 0 [0, 0]',
  ],
  [
    'And the Plain, with a stand of 3 feet, is the heaviest of the three.',
    'unproven',
    'order fact.weight {veltrane} higher best',
  ],
  [
    "White is within 100 K of the Plain's and 200 K of 6,500.",
    'difference white.cct : white.cct {veltrane} = 0 [-100, 100]',
    'unproven',
    'value white.cct = 6500 [6450, 6550]',
  ],
  [
    'The Plain makes less noise; the Umbra is the quietest of all.',
    'order noise {veltrane} lower ahead of orrinvale-hearth-55',
    'order noise {nocthale} lower best',
  ],
  [
    'The Plain may be brighter, which makes it 30 % dearer.',
    'unproven',
    'ratio fact.price {veltrane} : fact.price = 1.3 [1.295, 1.305]',
  ],
  ['And the Umbra, an OLED, is the brightest of the three.', 'order peak max {nocthale} higher best'],
  [
    'The Hearth beats the Plain, 742 nits against 571, and weighs less.',
    'order peak max higher ahead of veltrane-plain-50',
    'value peak max = 742 [741.5, 742.5]',
    'value peak max {veltrane} = 571 [570.5, 571.5]',
    'order fact.weight lower ahead of veltrane-plain-50',
  ],
  [
    'The Plain makes less noise than the Hearth.',
    'order noise {veltrane} lower ahead of orrinvale-hearth-55',
  ],
  [
    "Two thirds of the Plain's brightness is what it reaches.",
    'ratio peak max : peak max {veltrane} = 0.666667 [0.6, 0.733333]',
  ],
  [
    "It reaches two thirds of the Plain's brightness.",
    'ratio peak max : peak max {veltrane} = 0.666667 [0.6, 0.733333]',
  ],
  ["Three times the Plain's contrast.", 'ratio contrast.native : contrast.native {veltrane} = 3 [2.5, 3.5]'],
  ['Between them lie 171 nits.', 'unproven'],
  ['The lead over the Plain is 171 nits.', 'unproven'],
  ['£100 more buys 330 nits.', 'unproven', 'unproven'],
  ['Compared with the Plain it gains 330 nits and loses 5 mm of depth.', 'unproven', 'unproven'],
  [
    'The Hearth, at £1,039, is £200 cheaper than the Umbra, at £1,239.',
    'fact price = 1039',
    'difference fact.price {nocthale} : fact.price = 200 [200, 200]',
    'unproven',
  ],
  ['The Hearth wins three of five rounds.', 'unproven'],
];
