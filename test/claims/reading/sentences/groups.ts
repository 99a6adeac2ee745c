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
  ['Neither rival can match its 742 nits.', 'unproven'],
  [
    'In peak luminance the Hearth leads with 742 nits, followed by the Plain with 571 and the Umbra with 468.',
    'value peak max = 742 [741.5, 742.5]',
    'value peak max {veltrane} = 571 [570.5, 571.5]',
    'value peak max {nocthale} = 468 [467.5, 468.5]',
  ],
  [
    'The Hearth is slightly more accurate than the Plain, 2.4 against 3.1, and a good deal more so than the Umbra.',
    'order grey.de2000 average lower ahead of veltrane-plain-50',
    'value grey.de2000 average = 2.4 [2.35, 2.45]',
    'value grey.de2000 average {veltrane} = 3.1 [3.05, 3.15]',
    'order grey.de2000 average lower ahead of nocthale-umbra-55',
  ],
  ['Between the Plain and the Hearth lie £120 and 171 nits.', 'unproven', 'unproven'],
  [
    'The Umbra beats its dearer rival, the Plain, in peak luminance.',
    'order peak max {nocthale} higher ahead of veltrane-plain-50',
    'unproven',
  ],
  ['Of the two cheaper sets, the Plain is the brighter.', 'unproven', 'unproven'],
  [
    'The Hearth is the heaviest, the Plain (15 kg) the lightest.',
    'order fact.weight higher best',
    'fact weight = 15 {veltrane}',
    'order fact.weight {veltrane} lower best',
  ],
  ['Two of the three show banding.', 'unproven'],
  ['Every one of them has four HDMI ports.', 'unproven'],
  [
    'None of the five exceeds 100 W in SDR.',
    'bound power.calm {signal SDR} <= 100',
    'bound power.calm {signal SDR, veltrane} <= 100',
    'bound power.calm {kasulind, signal SDR} <= 100',
    'bound power.calm {signal SDR, tamarick} <= 100',
    'bound power.calm {nocthale, signal SDR} <= 100',
  ],
  ['Not one of the five keeps its error under 3 at every step.', 'unproven', 'unproven'],
  [
    'All its rivals err in their own ways, for the Plain leans towards blue and the Umbra towards green.',
    'unproven',
  ],
  ['Every set here covers more than 90 % of P3.', 'unproven'],
];
