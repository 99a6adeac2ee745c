import type { SentenceRow } from './row.ts';

/** The verb leads, and the set that it is said of stands behind. */
export const verbFirst: readonly SentenceRow[] = [
  ['Warmer is the Kasulind.', 'order white.cct {kasulind} lower ahead of orrinvale-hearth-55'],
  [
    'Brighter still is the Kasulind, almost twice as bright, and brightest of all is the Umbra.',
    'order peak max {kasulind} higher ahead of orrinvale-hearth-55',
    'ratio peak max {kasulind} : peak max = 2 [1.8, 2)',
    'order peak max {nocthale} higher best',
  ],
  [
    'Cheaper still is the Plain, at £629.',
    'order fact.price {veltrane} lower ahead of orrinvale-hearth-55',
    'fact price = 629 {veltrane}',
  ],
  ['Dearer by £200 is the Umbra.', 'difference fact.price {nocthale} : fact.price = 200 [200, 200]'],
  ['Far brighter than it is the Umbra.', 'unproven'],
  [
    'Less accurate is the Plain, which averages 4.2.',
    'order grey.de2000 average {veltrane} higher ahead of orrinvale-hearth-55',
    'value grey.de2000 average {veltrane} = 4.2 [4.15, 4.25]',
  ],
  ['Heaviest of all is the Umbra.', 'order fact.weight {nocthale} higher best'],
  ['Most accurate of all is the Hearth.', 'order grey.de2000 average lower best'],
];
