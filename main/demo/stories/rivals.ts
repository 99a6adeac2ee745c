import type { Primaries } from '../../../shared/colour/rgb.ts';
import type { Curve, Display } from '../display.ts';
import { contrast, greyscale, primaries, singles, windows } from '../patterns.ts';
import {
  bt709,
  bt2020,
  generator,
  levels,
  type RunStory,
  spectroradiometer,
  type UnitStory,
} from '../story.ts';

/** A rival measured in one afternoon: a short SDR run and a short HDR run. */
interface Rival {
  id: string;
  mode: string;
  /** Days of the two runs */
  on: readonly [sdr: string, hdr: string];
  firmware: string;
  selfEmissive?: boolean;
  sdr: { Lw: number; Lb: number; chequerBlack: number; tintAngle: number; errors: Curve; lag: string };
  hdr: { primaries: Primaries; windows: Curve; knee: number };
}

function runs({ mode, on, firmware, selfEmissive, sdr, hdr }: Rival): RunStory[] {
  const name = mode.toLowerCase();
  const tint = { angle: sdr.tintAngle, errors: sdr.errors };
  const plain: Display = {
    signal: 'SDR',
    Lw: sdr.Lw,
    Lb: sdr.Lb,
    gamut: 'BT.709',
    primaries: { red: [0.638, 0.331], green: [0.301, 0.598], blue: [0.151, 0.061] },
    tint,
    lift: [
      [0, 0],
      [20, 3],
      [100, 0],
    ],
  };
  const peak = Math.max(...hdr.windows.map(([, Y]) => Y));
  const wide: Display = {
    signal: 'HDR10',
    Lw: peak,
    Lb: sdr.Lb,
    gamut: 'BT.2020',
    primaries: hdr.primaries,
    tint,
    lift: [
      [0, 0],
      [100, 0],
    ],
    knee: hdr.knee,
  };
  const bench = { sample: 'A', room_lux: 0.1, warm_up_min: 45, source: generator } as const;
  return [
    {
      id: `sdr-${name}-delivered`,
      conditions: {
        taken: `${on[0]}T10:30:00+00:00`,
        firmware,
        mode,
        stage: 'as-delivered',
        signal: 'SDR',
        target: bt709,
        dimming: selfEmissive ? 'none' : 'off',
        ...bench,
        instrument: spectroradiometer,
      },
      readings: (noise) => [
        ...greyscale(plain, levels, noise),
        ...primaries(plain, noise),
        ...contrast(plain, { chequerBlack: sdr.chequerBlack }, noise),
        ...singles([['lag', sdr.lag, 'ms']]),
      ],
    },
    {
      id: `hdr-${name}-delivered`,
      conditions: {
        taken: `${on[1]}T13:30:00+00:00`,
        firmware,
        mode: `HDR ${mode}`,
        stage: 'as-delivered',
        signal: 'HDR10',
        target: bt2020,
        dimming: 'as-set',
        ...bench,
        instrument: spectroradiometer,
      },
      readings: (noise) => [
        ...greyscale(wide, levels, noise),
        ...primaries(wide, noise),
        ...windows(wide, hdr.windows, noise),
      ],
    },
  ];
}

const rivals: Rival[] = [
  {
    id: 'veltrane-plain-50',
    mode: 'Film',
    on: ['2026-02-09', '2026-02-09'],
    firmware: '0.9.14',
    sdr: {
      Lw: 131,
      Lb: 0.0312,
      chequerBlack: 0.052,
      tintAngle: 25,
      errors: [
        [5, 0.8],
        [30, 2.4],
        [60, 4.6],
        [100, 6.1],
      ],
      lag: '33.4',
    },
    hdr: {
      primaries: { red: [0.641, 0.333], green: [0.305, 0.616], blue: [0.152, 0.062] },
      windows: [
        [1, 396],
        [2, 401],
        [5, 408],
        [10, 412],
        [25, 411],
        [50, 410],
        [100, 409],
      ],
      knee: 180,
    },
  },
  {
    id: 'tamarick-linden-50',
    mode: 'Theatre',
    on: ['2026-04-07', '2026-04-08'],
    firmware: '2.2.0',
    sdr: {
      Lw: 122,
      Lb: 0.0374,
      chequerBlack: 0.047,
      tintAngle: 300,
      errors: [
        [5, 0.5],
        [30, 1.1],
        [60, 1.8],
        [100, 2.4],
      ],
      lag: '12.9',
    },
    hdr: {
      primaries: { red: [0.672, 0.321], green: [0.274, 0.672], blue: [0.15, 0.058] },
      windows: [
        [1, 420],
        [2, 498],
        [5, 555],
        [10, 571],
        [18, 566],
        [25, 548],
        [50, 452],
        [75, 388],
        [100, 344],
      ],
      knee: 240,
    },
  },
  {
    id: 'nocthale-gloam-48',
    mode: 'Still',
    on: ['2026-05-12', '2026-05-13'],
    firmware: '5.0.2',
    selfEmissive: true,
    sdr: {
      Lw: 109,
      Lb: 0.0004,
      chequerBlack: 0.0006,
      tintAngle: 190,
      errors: [
        [5, 0.6],
        [50, 1],
        [100, 1.4],
      ],
      lag: '9.8',
    },
    hdr: {
      primaries: { red: [0.682, 0.317], green: [0.262, 0.695], blue: [0.146, 0.053] },
      windows: [
        [1, 890],
        [2, 888],
        [5, 871],
        [10, 846],
        [18, 640],
        [25, 489],
        [50, 301],
        [75, 214],
        [100, 162],
      ],
      knee: 500,
    },
  },
  {
    id: 'orrinvale-ember-65',
    mode: 'Calm',
    on: ['2025-10-21', '2025-10-22'],
    firmware: '2.8.3',
    sdr: {
      Lw: 140,
      Lb: 0.0298,
      chequerBlack: 0.049,
      tintAngle: 25,
      errors: [
        [5, 0.7],
        [30, 1.5],
        [50, 2.3],
        [60, 3.5],
        [100, 4.5],
      ],
      lag: '29.7',
    },
    hdr: {
      primaries: { red: [0.655, 0.329], green: [0.288, 0.645], blue: [0.151, 0.06] },
      windows: [
        [1, 455],
        [2, 487],
        [5, 512],
        [10, 524],
        [25, 521],
        [50, 498],
        [100, 471],
      ],
      knee: 220,
    },
  },
  {
    id: 'orrinvale-kiln-55',
    mode: 'Calm',
    on: ['2025-06-03', '2025-06-04'],
    firmware: '2.3.1',
    sdr: {
      Lw: 134,
      Lb: 0.0291,
      chequerBlack: 0.041,
      tintAngle: 190,
      errors: [
        [5, 0.7],
        [50, 1.8],
        [100, 3],
      ],
      lag: '18.4',
    },
    hdr: {
      primaries: { red: [0.676, 0.319], green: [0.27, 0.684], blue: [0.149, 0.056] },
      windows: [
        [1, 602],
        [2, 690],
        [5, 781],
        [10, 815],
        [18, 803],
        [25, 774],
        [50, 655],
        [100, 497],
      ],
      knee: 430,
    },
  },
];

export const rivalStories: UnitStory[] = rivals.map((rival) => ({ id: rival.id, runs: runs(rival) }));
