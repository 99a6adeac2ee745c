import type { SentenceRow } from './row.ts';

/** Modes and settings that no run is kept by, and how long they last. */
export const settings: readonly SentenceRow[] = [
  ['With the sharpness turned up, the error is 4.1.', 'value grey.de2000 {unmatched} = 4.1 [4.05, 4.15]'],
  ['With motion smoothing on, the lag is 84 ms.', 'value lag {unmatched} = 84 [83.5, 84.5]'],
  ['With local dimming off it shows 3,260:1.', 'value contrast.native {dimming off} = 3260 [3255, 3265]'],
  ['At its brightest setting it reaches 612 nits.', 'value peak max {unmatched} = 612 [611.5, 612.5]'],
  ['At the lowest backlight setting it draws 31 W.', 'value power.calm {unmatched} = 31 [30.5, 31.5]'],
  ['With eco mode on it draws 51 W.', 'value power.calm {unmatched} = 51 [50.5, 51.5]'],
  ['With the room lights on, blooming is invisible.', 'observed blooming 0–0 {room lit}'],
  ['In the shop mode it reaches 900 nits.', 'value peak max {unmatched} = 900 [877.5, 922.5]'],
  [
    'In Vivid mode it reaches 812 nits. The average error is 6.1.',
    'value peak max {unmatched} = 812 [811.5, 812.5]',
    'value grey.de2000 average = 6.1 [6.05, 6.15]',
  ],
  [
    'In Vivid mode it reaches 812 nits and the average error is 6.1.',
    'value peak max {unmatched} = 812 [811.5, 812.5]',
    'value grey.de2000 average {unmatched} = 6.1 [6.05, 6.15]',
  ],
  [
    'In Vivid mode, where it reaches 812 nits, the average error is 6.1.',
    'value peak max {unmatched} = 812 [811.5, 812.5]',
    'value grey.de2000 average {unmatched} = 6.1 [6.05, 6.15]',
  ],
  ['Vivid mode is for shops. The average error is 6.1.', 'value grey.de2000 average = 6.1 [6.05, 6.15]'],
  [
    'In Vivid it reaches 812 nits, and in Calm the average error is 2.4. The maximum is 6.8.',
    'value peak max {unmatched} = 812 [811.5, 812.5]',
    'value grey.de2000 average {mode Calm} = 2.4 [2.35, 2.45]',
    'value grey.de2000 max {mode Calm} = 6.8 [6.75, 6.85]',
  ],
  [
    'HDR10 tells another story. The average error there is 2.8.',
    'value grey.de2000 average {signal HDR10} = 2.8 [2.75, 2.85]',
  ],
  [
    'HDR10 is supported. The average error is 2.7.',
    'fact hdr.formats includes HDR10',
    'value grey.de2000 average = 2.7 [2.65, 2.75]',
  ],
  [
    'A black screen in SDR measures 0.034 nits on the Hearth.',
    'value black {signal SDR} = 0.034 [0.0335, 0.0345]',
  ],
  ["There's a sixty-five for twelve hundred nineteen pounds.", 'fact price = 1219 {variantInches 65}'],
];
