import type { SentenceRow } from './row.ts';

/** Sentences that state a value of uniformity, or of the view from an angle. */
export const valuesOverScreen: readonly SentenceRow[] = [
  [
    'At 45 degrees it keeps 60 % of its luminance.',
    'value angle.luminance at 45 {angle 45} = 60 [59.5, 60.5]',
  ],
  [
    'At 30 degrees it loses 22 % of its brightness.',
    'value angle.luminance at 30 {angle 30} = 78 [77.5, 78.5]',
  ],
  ['White uniformity deviates by 18 %.', 'value uniformity.white {level white} = 18 [17.5, 18.5]'],
  [
    'The Plain keeps 88 % of its luminance at 45 degrees.',
    'value angle.luminance at 45 {angle 45, veltrane} = 88 [87.5, 88.5]',
  ],
  ['Half the luminance is left at 50 degrees.', 'value angle.luminance at 50 {angle 50} = 50 [45, 55]'],
  [
    'At 60 degrees only a third of the luminance is left.',
    'value angle.luminance at 60 {angle 60} = 33.3333 [30, 36.6667]',
  ],
  ['The contrast falls to 800:1 at 30 degrees.', 'value angle.contrast at 30 {angle 30} = 800 [780, 820]'],
  [
    'The top left corner is 31 % darker than the centre.',
    'value uniformity.white.cell at top left = -31 [-31.5, -30.5]',
  ],
  ['Uniformity on a 50 % grey field is 22 %.', 'value uniformity.grey50 {level grey50} = 22 [21.5, 22.5]'],
  [
    'At 30 degrees to the side white keeps 78 % of its luminance.',
    'value angle.luminance at 30 {angle 30} = 78 [77.5, 78.5]',
  ],
  [
    '30 degrees off axis, it has lost 22 % of its brightness.',
    'value angle.luminance at 30 {angle 30} = 78 [77.5, 78.5]',
  ],
  ['Brightness falls to half at 50 degrees.', 'value angle.luminance at 50 {angle 50} = 50 [45, 55]'],
  [
    'Viewed from 45 degrees, contrast falls to 600:1.',
    'value angle.contrast at 45 {angle 45} = 600 [585, 615]',
  ],
  [
    'Vertically it keeps 50 % at 30 degrees.',
    'value angle.vertical.luminance at 30 {angle 30, plane vertical} = 50 [49.5, 50.5]',
  ],
  [
    'The bottom left corner is 31 % darker.',
    'value uniformity.white.cell at bottom left = -31 [-31.5, -30.5]',
  ],
  ['Edges are 15 % dimmer than the middle.', 'value uniformity.white.cell min = -15 [-15.5, -14.5]'],
  ['The picture is 31 % darker in the corners.', 'value uniformity.white.cell min = -31 [-31.5, -30.5]'],
  [
    'From 45 degrees off centre it keeps 58% of its light.',
    'value angle.luminance at 45 {angle 45} = 58 [57.5, 58.5]',
  ],
  ['From 30 degrees up it keeps 60% of its light.', 'value angle.luminance average ≥30 = 60 [59.5, 60.5]'],
  ['White fades by only 10% towards the corners.', 'value uniformity.white = 10 [9.5, 10.5]'],
  [
    'Uniformity of white: 24%; of black: 33%.',
    'value uniformity.white = 24 [23.5, 24.5]',
    'value uniformity.black = 33 [32.5, 33.5]',
  ],
  [
    'At 30° to the right 83% are left, to the left 77%.',
    'value angle.luminance at 30 {angle 30, side right} = 83 [82.5, 83.5]',
    'value angle.luminance at 30 {angle 30, side left} = 77 [76.5, 77.5]',
  ],
  ['Three fifths of the light survive at 45°.', 'value angle.luminance at 45 {angle 45} = 60 [54, 66]'],
  [
    'Look down on it from 30 degrees above and 58% is what you are left with.',
    'value angle.vertical.luminance at 30 {angle 30, plane vertical} = 58 [57.5, 58.5]',
  ],
  [
    'A white field on the Plain is 13.8 % down in the top right corner, and at mid-grey the loss grows to 23 %.',
    'value uniformity.white.cell at top right {level white, veltrane} = -13.8 [-13.85, -13.75]',
    'value uniformity.grey50 {level grey50, veltrane} = 23 [22.5, 23.5]',
  ],
  [
    'White uniformity on the Hearth is off by 12 %, with the weak spot in the bottom left corner.',
    'value uniformity.white {level white} = 12 [11.5, 12.5]',
    'difference uniformity.white.cell at bottom left {level white} : uniformity.white.cell min {level white} = 0 [0, 0]',
  ],
  [
    'At 45 degrees the Hearth keeps 61 per cent of its light, the Plain 46 per cent and the Umbra 63 per cent, and it is the Umbra that holds on to most at that angle.',
    'value angle.luminance at 45 {angle 45} = 61 [60.5, 61.5]',
    'value angle.luminance at 45 {angle 45, veltrane} = 46 [45.5, 46.5]',
    'value angle.luminance at 45 {angle 45, nocthale} = 63 [62.5, 63.5]',
  ],
  [
    'A white field on the Hearth is down by 12.4% at its worst, in the bottom left corner, and at mid-grey the gap stays under 18.5%.',
    'value uniformity.white {level white} = 12.4 [12.35, 12.45]',
    'difference uniformity.white.cell at bottom left {level white} : uniformity.white.cell min {level white} = 0 [0, 0]',
    'bound uniformity.grey50 {level grey50} < 18.5',
  ],
  ['A white field varies by 6 %.', 'value uniformity.white {level white} = 6 [5.5, 6.5]'],
  ['Across a white field it loses 6 %.', 'value uniformity.white {level white} = 6 [5.5, 6.5]'],
  [
    'White uniformity is 11%, and the remote in the left corner is the worst.',
    'value uniformity.white {level white} = 11 [10.5, 11.5]',
    'difference uniformity.white.cell at left {level white} : uniformity.white.cell min {level white} = 0 [0, 0]',
  ],
  [
    'White uniformity is 12%, with the top right corner the darkest.',
    'value uniformity.white {level white} = 12 [11.5, 12.5]',
    'difference uniformity.white.cell at top right {level white} : uniformity.white.cell min {level white} = 0 [0, 0]',
  ],
  [
    'A white screen on the Hearth dims by 14 % at its worst spot, which sits in the bottom right corner.',
    'value uniformity.white = 14 [13.5, 14.5]',
    'difference uniformity.white.cell at bottom right : uniformity.white.cell min = 0 [0, 0]',
  ],
  [
    'At 45 degrees it keeps 80 % of its brightness.',
    'value angle.luminance at 45 {angle 45} = 80 [79.5, 80.5]',
  ],
  [
    'At 45 degrees it loses a fifth of its brightness.',
    'value angle.luminance at 45 {angle 45} = 80 [78, 82]',
  ],
  [
    'Step 30 degrees aside and you lose a third.',
    'value angle.luminance at 30 {angle 30} = 66.6667 [63.3333, 70]',
  ],
  ['Uniformity is 8 % in the worst corner.', 'value uniformity.white = 8 [7.5, 8.5]'],
  ['The left edge is darker by 8 %.', 'value uniformity.white.cell at left = -8 [-8.5, -7.5]'],
  ['The left edge is 8 % darker than the centre.', 'value uniformity.white.cell at left = -8 [-8.5, -7.5]'],
  [
    'Put up a white field and the Hearth is at its dimmest in the bottom left corner.',
    'difference uniformity.white.cell at bottom left {level white} : uniformity.white.cell min {level white} = 0 [0, 0]',
  ],
  [
    'And bag the middle of the sofa, because 45 degrees off to the side the Hearth keeps just 45 % of its brightness.',
    'value angle.luminance at 45 {angle 45} = 45 [44.5, 45.5]',
  ],
  [
    'A pure white field, meanwhile, is dimmest in the top right corner.',
    'difference uniformity.white.cell at top right {level white} : uniformity.white.cell min {level white} = 0 [0, 0]',
  ],
  [
    'On a 50 % grey field luminance falls off by 21 % at worst, in the lower left corner.',
    'value uniformity.grey50 {level grey50} = 21 [20.5, 21.5]',
  ],
  ['A white screen on the Hearth varies by about 14 per cent.', 'value uniformity.white = 14 [13.3, 14.7]'],
  [
    'The uniformity of the white field remained at 13 %.',
    'value uniformity.white {level white} = 13 [12.5, 13.5]',
  ],
  [
    'Uniformity is good: the worst corner is 9 % off the centre.',
    'opinion',
    'value uniformity.white.cell min = -9 [-9.5, -8.5]',
  ],
  [
    'Uniformity is poor; the bottom left loses 19 %.',
    'opinion',
    'value uniformity.white.cell at bottom left = -19 [-19.5, -18.5]',
  ],
  [
    'On a 50 % grey screen the Hearth varies by 12 %.',
    'value uniformity.grey50 {level grey50} = 12 [11.5, 12.5]',
  ],
  [
    'White varies by 13 percent, and a mid-grey screen by 9 percent.',
    'value uniformity.white = 13 [12.5, 13.5]',
    'value uniformity.grey50 {level grey50} = 9 [8.5, 9.5]',
  ],
  ["The Hearth's tone curve in HDR clips from 70%.", 'direction eotf.rolloff {signal HDR} clips from 70'],
  [
    "On a white field the Hearth's dimmest corner falls 15 per cent short of the brightest spot.",
    'value uniformity.white {level white} = 15 [14.5, 15.5]',
  ],
  ['The dimmest corner is 15 % darker than the brightest spot.', 'value uniformity.white = 15 [14.5, 15.5]'],
  [
    'At mid grey the screen varies by 29 per cent between its brightest and its darkest point.',
    'value uniformity.grey50 {level grey50} = 29 [28.5, 29.5]',
  ],
  ['Full white varies by just eight.', 'value uniformity.white {signal SDR} = 8 [7.5, 8.5]'],
  [
    'In SDR the Hearth’s black measures 0.26 cd/m² and its native contrast 1,080:1, and on the chequerboard that falls to 900:1.',
    'value black {signal SDR} = 0.26 [0.255, 0.265]',
    'value contrast.native {signal SDR} = 1080 [1075, 1085]',
    'value contrast.chequer {signal SDR} = 900 [877.5, 922.5]',
  ],
  [
    'White varies by 11 %, grey by 14 %.',
    'value uniformity.white = 11 [10.5, 11.5]',
    'value uniformity.grey50 = 14 [13.5, 14.5]',
  ],
  [
    'It loses 44 % of its luminance at 45 degrees, more than the Plain.',
    'value angle.luminance at 45 {angle 45} = 56 [55.5, 56.5]',
    'order angle.luminance at 45 {angle 45} lower ahead of veltrane-plain-50',
  ],
  [
    'White fields vary by 8 per cent, which is no worse than the Plain.',
    'value uniformity.white = 8 [7.5, 8.5]',
    'not order uniformity.white higher ahead of veltrane-plain-50',
  ],
  [
    'A white field varies by 19 percent from its brightest patch to its dimmest.',
    'value uniformity.white {level white} = 19 [18.5, 19.5]',
  ],
  ['The dimmest patch is 8 per cent darker than the brightest.', 'value uniformity.white = 8 [7.5, 8.5]'],
  [
    'On white the luminance varies by 15 per cent across the screen, with the darkest part in the lower left corner.',
    'value uniformity.white {level white} = 15 [14.5, 15.5]',
    'difference uniformity.white.cell at bottom left {level white} : uniformity.white.cell min {level white} = 0 [0, 0]',
  ],
  [
    'The white field varies by 4 %, and its weakest cell lies in a corner.',
    'value uniformity.white {level white} = 4 [3.5, 4.5]',
    'difference uniformity.white.cell min corner {level white} : uniformity.white.cell min {level white} = 0 [0, 0]',
  ],
  [
    'The darkest part of the white field is at the edges.',
    'difference uniformity.white.cell min edge {level white} : uniformity.white.cell min {level white} = 0 [0, 0]',
  ],
  [
    'A white field varies by 15 per cent, and the worst of it lies in the top right corner.',
    'value uniformity.white {level white} = 15 [14.5, 15.5]',
    'difference uniformity.white.cell at top right {level white} : uniformity.white.cell min {level white} = 0 [0, 0]',
  ],
  ['It loses half of its luminance at most at 60 degrees.', 'bound angle.luminance at 60 {angle 60} >= 50'],
  [
    'At 45 degrees 73 per cent of the Hearth’s luminance is kept.',
    'value angle.luminance at 45 {angle 45} = 73 [72.5, 73.5]',
  ],
  [
    'On white the worst corner of the Hearth lies 12.4 % below the centre.',
    'value uniformity.white.cell min {level white} = -12.4 [-12.45, -12.35]',
  ],
];
