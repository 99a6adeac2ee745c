import type { SentenceRow } from './row.ts';

/** Sentences that leave out what another part of them says: lists behind a label, counts without their noun. */
export const leftOut: readonly SentenceRow[] = [
  [
    'Peak in nits: Vane 731, Hearth 742, Umbra 1,035.',
    'value peak max {kasulind} = 731 [730.5, 731.5]',
    'value peak max = 742 [741.5, 742.5]',
    'value peak max {nocthale} = 1035 [1034.5, 1035.5]',
  ],
  [
    'Lag (ms): Kasulind 24.8 · Veltrane 12.4 · Hearth 9.6.',
    'value lag {kasulind} = 24.8 [24.75, 24.85]',
    'value lag {veltrane} = 12.4 [12.35, 12.45]',
    'value lag = 9.6 [9.55, 9.65]',
  ],
  ['Weight in kg: Hearth 17.4, Plain 15.1.', 'fact weight = 17.4', 'fact weight = 15.1 {veltrane}'],
  [
    'USB: Hearth two, Crest three, Vane none.',
    'fact usb.count = 2',
    'fact usb.count = 3 {tamarick}',
    'fact usb.count = 0 {kasulind}',
  ],
  ['HDMI 2.1 ports: Hearth 3, Umbra 4.', 'fact hdmi.count.2.1 = 3', 'fact hdmi.count.2.1 = 4 {nocthale}'],
  [
    'The Hearth has three HDMI 2.1 ports, the Kasulind has four.',
    'fact hdmi.count.2.1 = 3',
    'fact hdmi.count.2.1 = 4 {kasulind}',
  ],
  [
    'It has two USB sockets, the Plain one and the Vane three.',
    'fact usb.count = 2',
    'fact usb.count = 1 {veltrane}',
    'fact usb.count = 3 {kasulind}',
  ],
  [
    'It has three HDMI inputs and two USB ports, where the Crest offers four of each.',
    'fact hdmi.count = 3',
    'fact usb.count = 2',
    'fact hdmi.count = 4 {tamarick}',
    'fact usb.count = 4 {tamarick}',
  ],
  ['It weighs 17.4 kg, the Plain 15.1.', 'fact weight = 17.4', 'fact weight = 15.1 {veltrane}'],
  [
    'It has three HDMI 2.1 ports. The Vane has only two.',
    'fact hdmi.count.2.1 = 3',
    'fact hdmi.count.2.1 = 2 {kasulind}',
  ],
  ['It has four HDMI ports; all four are 2.1.', 'fact hdmi.count = 4', 'fact hdmi.count.2.1 = 4'],
  ['It has four HDMI ports, all of them HDMI 2.1.', 'fact hdmi.count = 4', 'fact hdmi.count.2.1 = 4'],
  ['It has four HDMI ports, two of which run at 120 Hz.', 'fact hdmi.count = 4', 'unproven'],
  ['It has four HDMI ports. Not all of them are 2.1.', 'fact hdmi.count = 4', 'unproven'],
  [
    'It has three HDMI ports, and the Vane got four out of ten.',
    'fact hdmi.count = 3',
    'score total = 4 of 10',
  ],
  [
    'Its lag is 14 ms. The Plain takes 18.8 ms and the Kasulind 12.6 ms, for those whose wrists depend on it.',
    'value lag = 14 [13.5, 14.5]',
    'value lag {veltrane} = 18.8 [18.75, 18.85]',
    'value lag {kasulind} = 12.6 [12.55, 12.65]',
  ],
  ["Behind the Hearth's panel sit 24 dimming zones.", 'fact zones = 24'],
];
