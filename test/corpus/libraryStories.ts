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
import {
  bt709,
  bt2020,
  generator,
  hdrLevels,
  levels,
  spectroradiometer,
  type UnitStory,
} from '../../main/demo/story.ts';

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

const bench = { room_lux: 0.1, warm_up_min: 60, source: generator, instrument: spectroradiometer } as const;
const sdr = { signal: 'SDR', target: bt709, sample: 'A', ...bench } as const;
const hdr = { signal: 'HDR10', target: bt2020, dimming: 'as-set', sample: 'A', ...bench } as const;

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

/** A rival with one short SDR and one short HDR run. */
interface Rival {
  id: string;
  mode: string;
  on: string;
  none?: boolean;
  plain: Display;
  wide: Display;
  windows: readonly (readonly [number, number])[];
  chequerBlack: number;
  lag: string;
}

function rival({ id, mode, on, none, plain, wide, windows: sizes, chequerBlack, lag }: Rival): UnitStory {
  return {
    id,
    runs: [
      {
        id: 'sdr-delivered',
        conditions: {
          taken: `${on}T10:00:00+00:00`,
          mode,
          stage: 'as-delivered',
          dimming: none ? 'none' : 'off',
          ...sdr,
        },
        readings: (noise) => [
          ...greyscale(plain, levels, noise),
          ...primaries(plain, noise),
          ...contrast(plain, { chequerBlack }, noise),
          ...singles([['lag', lag, 'ms']]),
        ],
      },
      {
        id: 'hdr-delivered',
        conditions: { taken: `${on}T14:00:00+00:00`, mode: `HDR ${mode}`, stage: 'as-delivered', ...hdr },
        readings: (noise) => [
          ...greyscale(wide, levels, noise),
          ...primaries(wide, noise),
          ...windows(wide, sizes, noise),
        ],
      },
    ],
  };
}

const flat = [
  [0, 0],
  [100, 0],
] as const;
const plainOf = (Lw: number, Lb: number, angle: number, errors: Display['tint']['errors']): Display => ({
  ...evening,
  Lw,
  Lb,
  primaries: { red: [0.638, 0.331], green: [0.301, 0.598], blue: [0.151, 0.061] },
  tint: { angle, errors },
  lift: flat,
});
const wideOf = (Lw: number, Lb: number, knee: number, primariesOf: Display['primaries']): Display => ({
  ...hdrEvening,
  Lw,
  Lb,
  knee,
  primaries: primariesOf,
  tint: {
    angle: 150,
    errors: [
      [5, 0.3],
      [50, 1],
      [100, 1.6],
    ],
  },
});

const rivals = [
  rival({
    id: 'kasulind-fjord-55',
    mode: 'Studio',
    on: '2026-05-11',
    plain: plainOf(126.5, 0.11, 133, [
      [5, 0.7],
      [30, 1.4],
      [60, 2],
      [100, 2.6],
    ]),
    wide: wideOf(512, 0.28, 300, { red: [0.658, 0.327], green: [0.284, 0.655], blue: [0.151, 0.06] }),
    windows: [
      [1, 470],
      [2, 488],
      [5, 505],
      [10, 512],
      [25, 508],
      [50, 467],
      [100, 402],
    ],
    chequerBlack: 0.158,
    lag: '24.8',
  }),
  rival({
    id: 'nocthale-umbra-55',
    mode: 'Still',
    on: '2026-09-01',
    none: true,
    plain: plainOf(111, 0.0004, 190, [
      [5, 0.3],
      [50, 0.7],
      [100, 1],
    ]),
    wide: wideOf(914, 0.0004, 520, { red: [0.682, 0.317], green: [0.262, 0.695], blue: [0.146, 0.053] }),
    windows: [
      [1, 902],
      [2, 909],
      [5, 912],
      [10, 914],
      [18, 702],
      [25, 534],
      [50, 322],
      [100, 171],
    ],
    chequerBlack: 0.0006,
    lag: '8.9',
  }),
  rival({
    id: 'orrinvale-beacon-50',
    mode: 'Calm',
    on: '2026-03-09',
    plain: plainOf(150, 0.05, 25, [
      [5, 1.2],
      [30, 3.4],
      [60, 5.4],
      [100, 7],
    ]),
    wide: wideOf(340, 0.06, 190, { red: [0.641, 0.333], green: [0.305, 0.616], blue: [0.152, 0.062] }),
    windows: [
      [1, 331],
      [2, 335],
      [5, 338],
      [10, 340],
      [25, 340],
      [50, 339],
      [100, 338],
    ],
    chequerBlack: 0.083,
    lag: '41.0',
  }),
  rival({
    id: 'veltrane-sill-50',
    mode: 'Film',
    on: '2025-10-06',
    plain: plainOf(133, 0.0306, 25, [
      [5, 0.8],
      [30, 2.3],
      [60, 4],
      [100, 5.2],
    ]),
    wide: wideOf(1204, 0.04, 600, { red: [0.65, 0.33], green: [0.295, 0.632], blue: [0.151, 0.06] }),
    windows: [
      [1, 940],
      [2, 1044],
      [5, 1170],
      [10, 1204],
      [25, 1120],
      [50, 860],
      [100, 640],
    ],
    chequerBlack: 0.05,
    lag: '31.6',
  }),
];

export const corpusStories: readonly UnitStory[] = [alder, ...rivals];
