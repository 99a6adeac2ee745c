import type { SentenceRow } from './row.ts';

/** How many ports there are, of which version, and whose. */
export const ports: readonly SentenceRow[] = [
  ['On the Plain, three of the sockets are 2.1.', 'fact hdmi.count.2.1 = 3 {veltrane}'],
  ['All four of its HDMI sockets are 2.1.', 'fact hdmi.count.2.1 = 4'],
  [
    'If you own a couple of consoles, keep in mind that the Plain gives you four HDMI 2.1 ports.',
    'fact hdmi.count.2.1 = 4 {veltrane}',
  ],
  [
    'It has four HDMI ports, and every single one of them is 2.1.',
    'fact hdmi.count = 4',
    'fact hdmi.count.2.1 = 4',
  ],
  ['Only one of its ports is a 2.1.', 'fact hdmi.count.2.1 = 1'],
  ["Three of the Hearth's HDMI sockets are of the 2.1 sort.", 'fact hdmi.count.2.1 = 3'],
  [
    'Round the back the Hearth has four HDMI sockets, three of them of the quick 2.1 kind.',
    'fact hdmi.count = 4',
    'fact hdmi.count.2.1 = 3',
  ],
  [
    "The Hearth has four HDMI sockets; three of the Plain's HDMI sockets are 2.1.",
    'fact hdmi.count = 4',
    'fact hdmi.count.2.1 = 3 {veltrane}',
  ],
  ["Three of the Plain's HDMI sockets are 2.1.", 'fact hdmi.count.2.1 = 3 {veltrane}'],
  [
    "Of the Plain's four HDMI sockets, two are 2.1.",
    'fact hdmi.count = 4 {veltrane}',
    'fact hdmi.count.2.1 = 2 {veltrane}',
  ],
  [
    "Two of the Plain's four HDMI sockets support 4K at 120 Hz.",
    'fact hdmi.count = 4 {veltrane}',
    'fact refresh = 120 {veltrane}',
  ],
  ['It has not just four HDMI sockets but three USB ports.', 'fact hdmi.count = 4', 'fact usb.count = 3'],
  ['There is no HDMI 2.1 socket.', 'fact hdmi.count.2.1 = 0'],
  ['There is not one USB port.', 'fact usb.count = 0'],
  ['We counted no fewer than four HDMI sockets.', 'fact hdmi.count >= 4'],
  ['It has four HDMI ports.', 'fact hdmi.count = 4'],
  ['Three of the four HDMI ports support HDMI 2.1.', 'fact hdmi.count.2.1 = 3', 'fact hdmi.count = 4'],
  ['There are two USB sockets.', 'fact usb.count = 2'],
  ['It has no USB port.', 'fact usb.count = 0'],
  ['It has three HDMI 2.1 inputs.', 'fact hdmi.count.2.1 = 3'],
  ['All four HDMI inputs are version 2.1.', 'fact hdmi.count = 4', 'fact hdmi.count.2.1 = 4'],
  ['It has at least three HDMI ports.', 'fact hdmi.count >= 3'],
  ['HDMI ports: 4', 'fact hdmi.count = 4'],
  ['Unlike the Kasulind, it has four HDMI ports.', 'fact hdmi.count = 4'],
  ['Like the Kasulind, it has four HDMI ports.', 'fact hdmi.count = 4'],
  ['The Kasulind has only three HDMI ports.', 'fact hdmi.count = 3 {kasulind}'],
  [
    'There are four HDMI ports, three of which are HDMI 2.1.',
    'fact hdmi.count = 4',
    'fact hdmi.count.2.1 = 3',
  ],
  ['Of its four HDMI ports, two accept HDMI 2.1.', 'fact hdmi.count = 4', 'fact hdmi.count.2.1 = 2'],
  ['It has HDMI 2.1.', 'fact hdmi.version = 2.1'],
  ['There is one USB port.', 'fact usb.count = 1'],
  ['Only one of the four HDMI inputs is 2.1.', 'fact hdmi.count.2.1 = 1', 'fact hdmi.count = 4'],
  ['Inputs: four HDMI, three of them to version 2.1.', 'fact hdmi.count = 4', 'fact hdmi.count.2.1 = 3'],
  [
    'The box holds a remote that feels as if someone had cared, and the set has four HDMI ports.',
    'fact hdmi.count = 4',
  ],
  ['A pair of USB ports keeps them company.', 'fact usb.count = 2'],
  [
    'There are four HDMI sockets, of which just one is up to the 2.1 standard.',
    'fact hdmi.count = 4',
    'fact hdmi.count.2.1 = 1',
  ],
  [
    'The Hearth has three HDMI inputs; only one of them conforms to version 2.1.',
    'fact hdmi.count = 3',
    'fact hdmi.count.2.1 = 1',
  ],
  [
    'There are four HDMI sockets back here, and two of them are proper 2.1 ones.',
    'fact hdmi.count = 4',
    'fact hdmi.count.2.1 = 2',
  ],
];
