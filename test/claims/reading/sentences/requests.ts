import type { SentenceRow } from './row.ts';

/** What the reader is asked to do first, or is told to have: the place, the window and the set that follow from it. */
export const requests: readonly SentenceRow[] = [
  [
    'The Plain is brighter. Push the signal and the Hearth clips from 80 per cent stimulus.',
    'order peak max {veltrane} higher ahead of orrinvale-hearth-55',
    'direction eotf.rolloff clips from 80',
  ],
  [
    "The Plain is brighter. Fill the Hearth's screen and the peak is under 400 cd/m².",
    'order peak max {veltrane} higher ahead of orrinvale-hearth-55',
    'bound peak at 100 {window 100} < 400',
  ],
  [
    "The Plain is brighter. Just know that with the Hearth you'll live with an average error of 2.6 until somebody tunes it.",
    'order peak max {veltrane} higher ahead of orrinvale-hearth-55',
    'value grey.de2000 average = 2.6 [2.55, 2.65]',
  ],
  [
    'The Plain is brighter. With the Hearth you get an average error of 2.6.',
    'order peak max {veltrane} higher ahead of orrinvale-hearth-55',
    'value grey.de2000 average = 2.6 [2.55, 2.65]',
  ],
  [
    "Walk to 45 degrees and 61 per cent of the Hearth's luminance is left, where the Plain keeps 46 per cent.",
    'value angle.luminance at 45 {angle 45} = 61 [60.5, 61.5]',
    'value angle.luminance at 45 {angle 45, veltrane} = 46 [45.5, 46.5]',
  ],
  [
    'Walk to 45 degrees and 61 per cent of its luminance is left.',
    'value angle.luminance at 45 {angle 45} = 61 [60.5, 61.5]',
  ],
  [
    'Move to 45 degrees and it keeps 61 per cent, where the Plain keeps 46 per cent.',
    'value angle.luminance at 45 {angle 45} = 61 [60.5, 61.5]',
    'value angle.luminance at 45 {angle 45, veltrane} = 46 [45.5, 46.5]',
  ],
  [
    'Walk out to 45 degrees and the Hearth keeps 61 per cent of its light; the Plain keeps 71.',
    'value angle.luminance at 45 {angle 45} = 61 [60.5, 61.5]',
    'value angle.luminance at 45 {angle 45, veltrane} = 71 [70.5, 71.5]',
  ],
];
