import type { Display } from '../../main/demo/display.ts';
import {
  type AngleCurve,
  angles,
  chart,
  contrast,
  greyscale,
  primaries,
  saturation,
  singles,
  uniformity,
  windows,
} from '../../main/demo/patterns.ts';
import { hdrLevels, levels, type UnitStory } from '../../main/demo/story.ts';
import { hdr, sdr } from './libraryConditions.ts';
import { rivals } from './libraryRivals.ts';

/** The corpus has its own sets with other numbers than the demo, so that nothing is tuned to one world. */
const evening: Display = {
  signal: 'SDR',
  Lw: 142,
  Lb: 0.031,
  gamut: 'BT.709',
  primaries: { red: [0.668, 0.3255], green: [0.2995, 0.602], blue: [0.1625, 0.0905] },
  tint: {
    angle: 313,
    errors: [
      [5, 0.6],
      [10, 0.9],
      [20, 1.4],
      [30, 1.9],
      [40, 3.6],
      [50, 3.8],
      [60, 4],
      [70, 4.2],
      [80, 4.5],
      [90, 4.9],
      [100, 5.6],
    ],
  },
  lift: [
    [0, 0],
    [5, -20],
    [20, -19],
    [50, -16],
    [80, -13],
    [90, -8],
    [100, 0],
  ],
};
const eveningAdjusted: Display = {
  ...evening,
  Lw: 120,
  Lb: 0.0262,
  primaries: { red: [0.641, 0.3303], green: [0.3, 0.6], blue: [0.15, 0.0605] },
  tint: {
    angle: 150,
    errors: [
      [5, 0.3],
      [50, 0.5],
      [100, 0.8],
    ],
  },
  lift: [
    [0, 0],
    [100, 0],
  ],
};
const bright: Display = {
  ...evening,
  Lw: 398,
  Lb: 0.0868,
  tint: {
    angle: 262,
    errors: [
      [5, 1.8],
      [20, 4],
      [50, 6.4],
      [100, 9.2],
    ],
  },
};
const hdrEvening: Display = {
  signal: 'HDR10',
  Lw: 905,
  Lb: 0.012,
  gamut: 'BT.2020',
  primaries: { red: [0.672, 0.321], green: [0.274, 0.672], blue: [0.15, 0.058] },
  tint: {
    angle: 313,
    errors: [
      [5, 0.2],
      [30, 0.8],
      [60, 1.6],
      [75, 2.2],
      [100, 2.6],
    ],
  },
  lift: [
    [0, 0],
    [100, 0],
  ],
};

const whiteMap = [
  90, 95, 97, 95, 91, 92, 98, 99, 97, 90, 93, 99, 100, 98, 91, 91, 97, 98, 95, 86, 88, 93, 94, 89, 78,
];
const blackMap = whiteMap.map((part) => 100 + (100 - part) * 0.6);
const whiteAngles: AngleCurve = [
  [-60, 33, 0.0106, 0.0131],
  [-45, 55, 0.0061, 0.0078],
  [-30, 78, 0.003, 0.0042],
  [-15, 93, 0.0009, 0.0013],
  [0, 100, 0, 0],
  [15, 94, 0.0009, 0.0011],
  [30, 80, 0.0029, 0.0038],
  [45, 57, 0.0057, 0.0074],
  [60, 36, 0.0099, 0.0123],
];

const alder: UnitStory = {
  id: 'tamarick-alder-55',
  runs: [
    {
      id: 'evening-delivered',
      conditions: {
        taken: '2026-10-20T10:00:00+01:00',
        firmware: '4.0.3',
        mode: 'Evening',
        stage: 'as-delivered',
        dimming: 'off',
        ...sdr,
      },
      readings: (noise) => [
        ...greyscale(evening, levels, noise),
        ...primaries(evening, noise),
        ...saturation(evening, noise),
        ...chart(evening, noise),
        ...contrast(evening, { chequerBlack: 0.0452 }, noise),
        ...uniformity(evening, 'white', 100, whiteMap, noise),
        ...uniformity(evening, 'black', 0, blackMap, noise),
        ...angles(evening, 'white', 100, whiteAngles, noise),
        ...singles([
          ['lag', '12.4', 'ms'],
          ['response', '7.9', 'ms'],
          ['power.sdr', '71.5', 'W'],
          ['standby', '0.31', 'W'],
          ['noise', '22.5', 'dB(A)'],
        ]),
      ],
    },
    {
      id: 'evening-dimming-medium',
      conditions: {
        taken: '2026-10-20T15:00:00+01:00',
        firmware: '4.0.3',
        mode: 'Evening',
        stage: 'as-delivered',
        dimming: 'medium',
        ...sdr,
      },
      readings: (noise) => contrast(evening, { black: 0.0052, chequerBlack: 0.0248 }, noise),
    },
    {
      id: 'evening-adjusted',
      conditions: {
        taken: '2026-10-22T10:00:00+01:00',
        firmware: '4.0.3',
        mode: 'Evening',
        stage: 'adjusted',
        dimming: 'off',
        ...sdr,
      },
      readings: (noise) => [
        ...greyscale(eveningAdjusted, levels, noise),
        ...primaries(eveningAdjusted, noise),
        ...saturation(eveningAdjusted, noise),
        ...chart(eveningAdjusted, noise),
      ],
    },
    {
      id: 'bright-delivered',
      conditions: {
        taken: '2026-10-20T16:30:00+01:00',
        firmware: '4.0.3',
        mode: 'Bright',
        stage: 'as-delivered',
        dimming: 'off',
        ...sdr,
      },
      readings: (noise) => [...greyscale(bright, levels, noise), ...singles([['lag', '38.2', 'ms']])],
    },
    {
      id: 'hdr-evening-delivered',
      conditions: {
        taken: '2026-10-21T10:00:00+01:00',
        firmware: '4.0.3',
        mode: 'HDR Evening',
        stage: 'as-delivered',
        ...hdr,
      },
      readings: (noise) => [
        ...greyscale(hdrEvening, hdrLevels, noise),
        ...primaries(hdrEvening, noise),
        ...windows(
          hdrEvening,
          [
            [1, 640],
            [2, 760],
            [5, 861],
            [10, 905],
            [18, 890],
            [25, 842],
            [50, 611],
            [75, 502],
            [100, 431],
          ],
          noise,
          {
            10: [
              [2, 100],
              [60, 97],
              [120, 95.6],
              [180, 95.1],
              [300, 94.8],
              [600, 94.5],
            ],
          },
        ),
      ],
    },
  ],
};

export const corpusStories: readonly UnitStory[] = [alder, ...rivals];
