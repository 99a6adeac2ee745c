import type { SentenceRow } from './row.ts';

/** How people talk: numbers in words, fragments, answers, what is left to the listener. */
export const asSpoken: readonly SentenceRow[] = [
  ['Average error, point four.', 'value grey.de2000 average = 0.4 [0.35, 0.45]'],
  ['Standby is point four watts.', 'value standby = 0.4 [0.35, 0.45]'],
  ['At this point one notices the price.'],
  ['What is the average error? Point three!', 'value grey.de2000 average = 0.3 [0.25, 0.35]'],
  [
    'Average error? Two point one. Maximum? Three point eight.',
    'value grey.de2000 average = 2.1 [2.05, 2.15]',
    'value grey.de2000 max = 3.8 [3.75, 3.85]',
  ],
  [
    "The worst step's under one, and nothing's visible any more.",
    'bound grey.de2000 max < 1',
    'bound grey.de2000 max <= 3',
  ],
  ['Four HDMI sockets, and two of them are two point one.', 'fact hdmi.count = 4', 'fact hdmi.count.2.1 = 2'],
  ['Two USB.', 'fact usb.count = 2'],
  ["It's seventeen ninety-nine.", 'fact price = 1799'],
  ['The sixty-five inch is nine hundred and ninety-nine.', 'fact price = 999 {variantInches 65}'],
  [
    "It costs £1,249. That's four hundred and twenty more than the Plain.",
    'fact price = 1249',
    'difference fact.price : fact.price {veltrane} = 420 [420, 420]',
  ],
  [
    'Contrast comes to 3,700:1. The Plain does twelve hundred, so the Hearth has three times as much.',
    'value contrast.native = 3700 [3650, 3750]',
    'value contrast.native {veltrane} = 1200 [1170, 1230]',
    'ratio contrast.native : contrast.native {veltrane} = 3 [2.5, 3.5]',
  ],
  [
    'In SDR at 30 degrees it keeps 78 percent of its light. At forty-five, under half.',
    'value angle.luminance at 30 {angle 30, signal SDR} = 78 [77.5, 78.5]',
    'bound angle.luminance at 45 {angle 45, signal SDR} < 50',
  ],
  ['The colour shift stays under three all the way out to sixty.', 'bound angle.de2000 max ≤60 < 3'],
  [
    'Peak brightness. I got twelve hundred and sixty in a ten percent window.',
    'value peak at 10 {window 10} = 1260 [1255, 1265]',
  ],
  ['She said it looked warm, and then she asked if there was cake.'],
  [
    'The Plain has a higher average error.',
    'order grey.de2000 average {veltrane} higher ahead of orrinvale-hearth-55',
  ],
  [
    'The average error is 2.6. And the Umbra beats it, at two point four.',
    'value grey.de2000 average = 2.6 [2.55, 2.65]',
    'order grey.de2000 average {nocthale} lower ahead of orrinvale-hearth-55',
    'value grey.de2000 average {nocthale} = 2.4 [2.35, 2.45]',
  ],
  [
    'It gets eight out of ten, and our Recommended badge on the box.',
    'score total = 8 of 10',
    'score award = Recommended',
  ],
  ['Smear in dark scenes is there only for a trained eye.', 'observed smear 0–1'],
  ['The Plain loses to the Hearth at every window size in peak luminance.', 'unproven'],
  [
    'The Plain leans to red and shows no visible error until 60 %.',
    'direction grey.tint average <60 {veltrane} red',
    'bound grey.de2000 max <60 {veltrane} <= 3',
  ],
  [
    'In HDR10 PQ is followed to within 5 % up to 70 %, and from 80 % upwards the picture clips.',
    'bound eotf.error max ≤70 {signal HDR10} <= 5 and eotf.error min ≤70 {signal HDR10} >= -5',
    'direction eotf.rolloff {signal HDR10} clips from 80',
  ],
  [
    'From 70 % upwards every step lies past 3, whereas below that level no error exceeds 2.',
    'onset grey.de2000 over 3 from 70 included',
    'bound grey.de2000 max <70 <= 2',
  ],
  [
    'The error in blue averages 3.3 and reaches 6.2.',
    'value sweep.blue.de2000 average = 3.3 [3.25, 3.35]',
    'value sweep.blue.de2000 max = 6.2 [6.15, 6.25]',
  ],
  [
    'In the same 10 % window the Plain is 31 % dimmer, though in a 1 % window it overtakes the Hearth.',
    'ratio peak at 10 {veltrane, window 10} : peak at 10 {window 10} = 0.69 [0.685, 0.695]',
    'order peak at 1 {veltrane, window 1} higher ahead of orrinvale-hearth-55',
  ],
  [
    'Of the tint nothing remains after adjustment.',
    'direction grey.tint average ≥50 ≤100 {stage adjusted} none',
  ],
  [
    'Have somebody calibrate it, and the average error drops to 0.8.',
    'value grey.de2000 average {stage adjusted} = 0.8 [0.75, 0.85]',
  ],
  [
    "The Vane's blues are oversaturated, with an error that averages 4.8.",
    'direction sweep.blue.saturation average {kasulind} over',
    'value sweep.blue.de2000 average {kasulind} = 4.8 [4.75, 4.85]',
  ],
  ['It measures 1,293mm across.', 'fact width = 1293'],
  ['White is uneven by 12 percent.', 'value uniformity.white = 12 [11.5, 12.5]'],
  ['Blue is my problem child, peaking at an error of 3.2.', 'value sweep.blue.de2000 max = 3.2 [3.15, 3.25]'],
  ['A 65in version sells for £719.', 'fact price = 719 {variantInches 65}'],
  ['It is a sensible-looking television built around an IPS panel.', 'fact panel includes IPS'],
  ['A full white screen is uneven by 12 percent.', 'value uniformity.white = 12 [11.5, 12.5]'],
  [
    'Gamma averages 2.05, which is below target.',
    'value gamma.average = 2.05 [2.045, 2.055]',
    'direction gamma.average under',
  ],
  [
    'In the Calm mode, straight from the carton, the greyscale error averages 3.1, and by full white it has climbed to 5.2.',
    'value grey.de2000 average {mode Calm} = 3.1 [3.05, 3.15]',
    'value grey.de2000 at 100 {mode Calm} = 5.2 [5.15, 5.25]',
  ],
];
