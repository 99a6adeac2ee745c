import type { Display } from '../display.ts';
import {
  type AngleCurve,
  angles,
  chart,
  contrast,
  greyscale,
  primaries,
  saturation,
  saturationHdr,
  singles,
  uniformity,
  windows,
} from '../patterns.ts';
import { bt709, bt2020, generator, hdrLevels, levels, spectroradiometer, type UnitStory } from '../story.ts';

const bluish = 262;

const studio: Display = {
  signal: 'SDR',
  Lw: 124,
  Lb: 0.144,
  gamut: 'BT.709',
  primaries: { red: [0.645, 0.331], green: [0.298, 0.608], blue: [0.149, 0.056] },
  tint: {
    angle: bluish,
    errors: [
      [5, 0.5],
      [10, 0.9],
      [20, 1.3],
      [30, 1.6],
      [40, 1.9],
      [50, 3.5],
      [60, 3.6],
      [80, 3.9],
      [90, 4.2],
      [100, 4.9],
    ],
  },
  lift: [
    [0, 0],
    [10, -8],
    [30, -5],
    [60, -2],
    [100, 0],
  ],
};

const studioAdjusted: Display = {
  ...studio,
  Lw: 119.5,
  Lb: 0.139,
  primaries: { red: [0.641, 0.3305], green: [0.3, 0.602], blue: [0.15, 0.06] },
  tint: {
    angle: bluish,
    errors: [
      [5, 0.4],
      [40, 0.7],
      [100, 1],
    ],
  },
  lift: [
    [0, 0],
    [10, -2],
    [50, 1],
    [100, 0],
  ],
};

const hdrStudio: Display = {
  signal: 'HDR10',
  Lw: 731.2,
  Lb: 0.31,
  knee: 420,
  gamut: 'BT.2020',
  primaries: { red: [0.664, 0.3255], green: [0.2795, 0.6605], blue: [0.1505, 0.0585] },
  tint: {
    angle: bluish,
    errors: [
      [5, 0.3],
      [20, 0.8],
      [40, 1.6],
      [65, 3.1],
      [100, 3.6],
    ],
  },
  lift: [
    [0, 0],
    [10, -4],
    [30, -3],
    [60, 1],
    [100, 0],
  ],
};

const whiteMap = [
  90, 95, 97, 94, 88, 92, 98, 99, 97, 91, 93, 99, 100, 98, 92, 91, 97, 98, 96, 90, 87, 93, 94, 92, 85,
];
const greyMap = whiteMap.map((part) => 100 - (100 - part) * 0.85);
const blackMap = [
  168, 112, 104, 110, 151, 120, 101, 98, 102, 118, 108, 98, 100, 99, 109, 117, 100, 98, 101, 115, 176, 118,
  106, 114, 159,
];

const whiteAngles: AngleCurve = [
  [-60, 31, -0.004, -0.0052],
  [-45, 47, -0.0029, -0.0038],
  [-30, 70, -0.0014, -0.002],
  [-15, 91, -0.0005, -0.0007],
  [0, 100, 0, 0],
  [15, 92, -0.0004, -0.0006],
  [30, 72, -0.0013, -0.0018],
  [45, 50, -0.0027, -0.0035],
  [60, 34, -0.0038, -0.0049],
];

const bench = { room_lux: 0.1, warm_up_min: 45, source: generator, instrument: spectroradiometer } as const;
const sdr = { signal: 'SDR', target: bt709, dimming: 'off', sample: 'A', ...bench } as const;

export const vane50: UnitStory = {
  id: 'kasulind-vane-50',
  runs: [
    {
      id: 'sdr-studio-delivered',
      conditions: {
        taken: '2026-08-11T10:15:00+01:00',
        firmware: '1.0.9',
        mode: 'Studio',
        stage: 'as-delivered',
        settings: { brightness: 45, contrast: 90 },
        ...sdr,
      },
      readings: (noise) => [
        ...greyscale(studio, levels, noise),
        ...primaries(studio, noise),
        ...saturation(studio, noise),
        ...chart(studio, noise),
        ...windows(
          studio,
          [
            [10, 124.2],
            [25, 124.2],
            [50, 124.1],
            [100, 124],
          ],
          noise,
        ),
        ...contrast(studio, { chequerBlack: 0.199 }, noise),
        ...uniformity(studio, 'white', 100, whiteMap, noise),
        ...uniformity(studio, 'grey50', 50, greyMap, noise),
        ...uniformity(studio, 'black', 0, blackMap, noise),
        ...angles(studio, 'white', 100, whiteAngles, noise),
        ...singles([
          ['lag', '21.7', 'ms'],
          ['power.sdr', '54.8', 'W'],
          ['standby', '0.38', 'W'],
        ]),
      ],
    },
    {
      id: 'sdr-studio-adjusted',
      conditions: {
        taken: '2026-08-13T15:20:00+01:00',
        firmware: '1.0.9',
        mode: 'Studio',
        stage: 'adjusted',
        settings: { brightness: 45, contrast: 88 },
        ...sdr,
      },
      readings: (noise) => [
        ...greyscale(studioAdjusted, levels, noise),
        ...primaries(studioAdjusted, noise),
        ...saturation(studioAdjusted, noise),
        ...chart(studioAdjusted, noise),
        ...contrast(studioAdjusted, { chequerBlack: 0.19 }, noise),
      ],
    },
    {
      id: 'hdr-studio-delivered',
      conditions: {
        taken: '2026-08-12T11:00:00+01:00',
        firmware: '1.0.9',
        sample: 'A',
        mode: 'HDR Studio',
        stage: 'as-delivered',
        signal: 'HDR10',
        settings: { brightness: 100, contrast: 100 },
        target: bt2020,
        dimming: 'as-set',
        ...bench,
      },
      readings: (noise) => [
        ...greyscale(hdrStudio, hdrLevels, noise),
        ...primaries(hdrStudio, noise),
        ...saturationHdr(hdrStudio, noise),
        ...windows(
          hdrStudio,
          [
            [1, 702],
            [2, 711],
            [5, 726],
            [10, 731],
            [18, 729],
            [25, 716],
            [50, 604],
            [75, 512],
            [100, 468],
          ],
          noise,
          {
            10: [
              [2, 100],
              [60, 96],
              [120, 92.5],
              [180, 91],
              [300, 90.2],
              [600, 89.6],
            ],
          },
        ),
        ...contrast(hdrStudio, { white: 468, black: 0.31, chequerBlack: 0.66 }, noise),
        ...singles([['power.hdr', '104.2', 'W']]),
      ],
    },
  ],
};
