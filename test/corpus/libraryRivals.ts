import type { Display } from '../../main/demo/display.ts';
import { contrast, greyscale, primaries, singles, windows } from '../../main/demo/patterns.ts';
import { levels, type UnitStory } from '../../main/demo/story.ts';
import { hdr, sdr } from './libraryConditions.ts';

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
  signal: 'SDR',
  gamut: 'BT.709',
  Lw,
  Lb,
  primaries: { red: [0.638, 0.331], green: [0.301, 0.598], blue: [0.151, 0.061] },
  tint: { angle, errors },
  lift: flat,
});
const wideOf = (Lw: number, Lb: number, knee: number, primariesOf: Display['primaries']): Display => ({
  signal: 'HDR10',
  gamut: 'BT.2020',
  lift: flat,
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

export const rivals: readonly UnitStory[] = [
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
