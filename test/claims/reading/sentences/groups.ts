import type { SentenceRow } from './row.ts';

/** Several sets at once: by name it is said of each, without names of none. */
export const groups: readonly SentenceRow[] = [
  [
    'The Kasulind and the Umbra have four HDMI ports.',
    'fact hdmi.count = 4 {kasulind}',
    'fact hdmi.count = 4 {nocthale}',
  ],
  [
    'The Hearth and the Kasulind reach 700 nits.',
    'value peak max = 700 [682.5, 717.5]',
    'value peak max {kasulind} = 700 [682.5, 717.5]',
  ],
  ['The Kasulind and the Hearth show no banding.', 'observed banding 0–0 {kasulind}', 'observed banding 0–0'],
  ['The Kasulind and the Umbra reach 700 and 742 nits.', 'unproven', 'unproven'],
  [
    'The Kasulind costs £949 and the Umbra £999.',
    'fact price = 949 {kasulind}',
    'fact price = 999 {nocthale}',
  ],
  ['Both keep two thirds at 30 degrees, and neither keeps half at 45.', 'unproven', 'unproven'],
  ['Neither of them is under 500 nits.', 'unproven'],
  ['Both have four HDMI ports.', 'unproven'],
  ['All sets have four HDMI ports.', 'unproven'],
  // No sets, but things of one set.
  ['Both HDR10 and HLG are supported.', 'fact hdr.formats includes HDR10+HLG'],
  ['Both greys and colours are accurate.', 'bound grey.de2000 average < 3'],
  ['All four accept HLG.', 'unproven', 'unproven'],
  ['Its black level lies between the other two.', 'unproven'],
  ['On price it falls between the other pair.', 'unproven'],
  [
    "Its input lag sits between the Vane's and the Plain's.",
    'order lag higher position 2 of kasulind-vane-50 veltrane-plain-50',
  ],
  ['We alternated between the two for a week.'],
];
