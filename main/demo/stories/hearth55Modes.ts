import type { Display } from '../display.ts';

const greenish = 133;

export const calm: Display = {
  signal: 'SDR',
  Lw: 118.3,
  Lb: 0.0728,
  gamut: 'BT.709',
  primaries: { red: [0.6272, 0.3307], green: [0.302, 0.59], blue: [0.152, 0.066] },
  tint: {
    angle: greenish,
    errors: [
      [5, 0.5],
      [10, 0.7],
      [20, 1],
      [30, 1.3],
      [40, 1.7],
      [50, 2.1],
      [60, 3.4],
      [70, 3.6],
      [80, 3.8],
      [90, 4],
      [100, 4.3],
    ],
  },
  lift: [
    [0, 0],
    [5, 6],
    [10, 6],
    [30, 4],
    [60, 2],
    [90, 0],
    [100, 0],
  ],
};

/** Firmware 3.2 opens the red that 3.1.7 held back. */
export const calmAfterUpdate: Display = {
  ...calm,
  primaries: { ...calm.primaries, red: [0.6386, 0.3303] },
};

export const calmAdjusted: Display = {
  ...calm,
  Lw: 114.6,
  Lb: 0.0706,
  primaries: { red: [0.638, 0.3302], green: [0.3, 0.599], blue: [0.15, 0.061] },
  tint: {
    angle: greenish,
    errors: [
      [5, 0.4],
      [50, 0.6],
      [100, 0.8],
    ],
  },
  lift: [
    [0, 0],
    [10, 2],
    [50, -1],
    [100, 0],
  ],
};

export const day: Display = {
  ...calm,
  Lw: 312,
  Lb: 0.192,
  tint: {
    angle: 262,
    errors: [
      [5, 0.6],
      [10, 0.8],
      [20, 1.2],
      [30, 1.6],
      [40, 2.2],
      [50, 2.8],
      [60, 3.4],
      [70, 3.8],
      [80, 4.2],
      [90, 4.8],
      [100, 6.8],
    ],
  },
};

export const natural: Display = {
  ...calm,
  Lw: 204,
  Lb: 0.1255,
  tint: {
    angle: 255,
    errors: [
      [5, 1.5],
      [20, 2.7],
      [50, 4.7],
      [70, 5.2],
      [100, 5.9],
    ],
  },
};

export const naturalAdjusted: Display = {
  ...natural,
  Lw: 198,
  Lb: 0.1219,
  tint: {
    angle: 150,
    errors: [
      [5, 0.35],
      [50, 0.6],
      [100, 0.85],
    ],
  },
};

export const hdrCalm: Display = {
  signal: 'HDR10',
  Lw: 742.2,
  Lb: 0.021,
  knee: 300,
  gamut: 'BT.2020',
  primaries: { red: [0.6769, 0.3172], green: [0.2598, 0.6927], blue: [0.1463, 0.0637] },
  tint: {
    angle: 138,
    errors: [
      [5, 0.02],
      [10, 0.06],
      [20, 0.45],
      [40, 1.2],
      [60, 2.3],
      [65, 2.6],
      [100, 3.2],
    ],
  },
  lift: [
    [0, 0],
    [10, 5],
    [30, 3],
    [60, -2],
    [100, 0],
  ],
};
