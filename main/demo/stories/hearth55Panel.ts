import type { AngleCurve } from '../patterns.ts';

/** Luminance of each cell of a 5×5 grid in % of the centre, from top left: the light leaves the lower left corner. */
export const whiteMap = [
  84, 91, 93, 92, 86, 88, 97, 98, 96, 89, 89, 98, 100, 98, 90, 86, 96, 98, 95, 88, 69, 88, 91, 89, 81,
];
export const greyMap = whiteMap.map((part) => 100 - (100 - part) * 0.9);
export const blackMap = [
  118, 102, 98, 100, 109, 104, 97, 96, 98, 103, 101, 97, 100, 98, 104, 107, 98, 97, 101, 108, 142, 110, 102,
  108, 127,
];

/** IPS: luminance falls fast to the side, black glows; the left side is the worse one. */
export const whiteAngles: AngleCurve = [
  [-60, 24, 0.0139, 0.0175],
  [-45, 38, 0.0103, 0.0135],
  [-30, 62, 0.0061, 0.0081],
  [-15, 92, 0.0018, 0.0025],
  [0, 100, 0.0, 0.0],
  [15, 93, 0.0016, 0.0023],
  [30, 66, 0.0056, 0.0074],
  [45, 44, 0.0095, 0.0124],
  [60, 29, 0.0128, 0.016],
];
export const blackAngles: AngleCurve = [
  [-60, 210, -0.01, -0.02],
  [-45, 240, -0.008, -0.016],
  [-30, 180, -0.005, -0.01],
  [-15, 120, -0.002, -0.004],
  [0, 100, 0, 0],
  [15, 116, -0.002, -0.004],
  [30, 170, -0.005, -0.01],
  [45, 225, -0.008, -0.016],
  [60, 200, -0.01, -0.02],
];
export const verticalAngles: AngleCurve = [
  [-30, 58, 0.005, 0.0081],
  [-15, 85, 0.0018, 0.0029],
  [0, 100, 0.0, 0.0],
  [15, 86, 0.0018, 0.0027],
  [30, 60, 0.0047, 0.0076],
];
