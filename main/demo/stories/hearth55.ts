import type { Display } from '../display.ts';
import type { Noise } from '../noise.ts';
import {
  angles,
  chart,
  contrast,
  greyscale,
  primaries,
  type Row,
  saturation,
  saturationHdr,
  singles,
  uniformity,
  windows,
} from '../patterns.ts';
import {
  bt709,
  bt2020,
  colorimeter,
  generator,
  hdrLevels,
  levels,
  spectroradiometer,
  type UnitStory,
} from '../story.ts';

import {
  calm,
  calmAdjusted,
  calmAfterUpdate,
  day,
  hdrCalm,
  natural,
  naturalAdjusted,
} from './hearth55Modes.ts';
import { blackAngles, blackMap, greyMap, verticalAngles, whiteAngles, whiteMap } from './hearth55Panel.ts';

function everythingInCalm(display: Display, noise: Noise): Row[] {
  return [
    ...greyscale(display, levels, noise),
    ...primaries(display, noise),
    ...saturation(display, noise),
    ...chart(display, noise),
    ...windows(
      display,
      [
        [10, 118.6],
        [25, 118.5],
        [50, 118.4],
        [100, 118.2],
      ],
      noise,
    ),
    ...contrast(display, { chequerBlack: 0.118 }, noise),
    ...uniformity(display, 'white', 100, whiteMap, noise),
    ...uniformity(display, 'grey50', 50, greyMap, noise),
    ...uniformity(display, 'black', 0, blackMap, noise),
    ...angles(display, 'white', 100, whiteAngles, noise),
    ...angles(display, 'black', 0, blackAngles, noise),
    ...angles(display, 'white', 100, verticalAngles, noise, 'vertical'),
    ...singles([
      ['lag', '41.6', 'ms'],
      ['response', '11.8', 'ms'],
      ['power.sdr', '62.4', 'W'],
      ['standby', '0.42', 'W'],
      ['noise', '19.8', 'dB(A)'],
    ]),
  ];
}

const bench = { room_lux: 0.1, warm_up_min: 45, source: generator, instrument: spectroradiometer } as const;
const sdr = { signal: 'SDR', target: bt709, sample: 'A', ...bench } as const;

export const hearth55: UnitStory = {
  id: 'orrinvale-hearth-55',
  runs: [
    {
      id: 'sdr-calm-delivered',
      conditions: {
        taken: '2026-09-15T10:20:00+01:00',
        firmware: '3.1.7',
        mode: 'Calm',
        stage: 'as-delivered',
        settings: { brightness: 50, contrast: 80, colour: 50, warmth: 'warm' },
        dimming: 'off',
        ...sdr,
      },
      readings: (noise) => everythingInCalm(calm, noise),
    },
    {
      id: 'sdr-calm-delivered-firmware-3-2',
      conditions: {
        taken: '2026-09-30T14:05:00+01:00',
        firmware: '3.2.0',
        mode: 'Calm',
        stage: 'as-delivered',
        settings: { brightness: 50, contrast: 80, colour: 50, warmth: 'warm' },
        dimming: 'off',
        ...sdr,
        supersedes: 'sdr-calm-delivered',
      },
      readings: (noise) => everythingInCalm(calmAfterUpdate, noise),
    },
    {
      id: 'sdr-calm-adjusted',
      conditions: {
        taken: '2026-09-17T09:40:00+01:00',
        firmware: '3.1.7',
        mode: 'Calm',
        stage: 'adjusted',
        settings: {
          brightness: 50,
          contrast: 80,
          colour: 51,
          warmth: 'warm',
          white_balance: 'eleven points',
        },
        dimming: 'off',
        ...sdr,
      },
      readings: (noise) => [
        ...greyscale(calmAdjusted, levels, noise),
        ...primaries(calmAdjusted, noise),
        ...saturation(calmAdjusted, noise),
        ...chart(calmAdjusted, noise),
        ...contrast(calmAdjusted, { chequerBlack: 0.1145 }, noise),
        ...singles([['power.sdr', '60.9', 'W']]),
      ],
    },
    {
      id: 'sdr-calm-dimming-medium',
      conditions: {
        taken: '2026-09-15T16:10:00+01:00',
        firmware: '3.1.7',
        mode: 'Calm',
        stage: 'as-delivered',
        dimming: 'medium',
        ...sdr,
      },
      readings: (noise) => contrast(calm, { black: 0.0108, chequerBlack: 0.0562 }, noise),
    },
    {
      id: 'sdr-day-delivered',
      conditions: {
        taken: '2026-09-16T11:00:00+01:00',
        firmware: '3.1.7',
        mode: 'Day',
        stage: 'as-delivered',
        dimming: 'off',
        ...sdr,
        instrument: colorimeter,
      },
      readings: (noise) => greyscale(day, levels, noise),
    },
    {
      id: 'sdr-natural-delivered',
      conditions: {
        taken: '2026-09-16T11:40:00+01:00',
        firmware: '3.1.7',
        mode: 'Natural',
        stage: 'as-delivered',
        dimming: 'off',
        ...sdr,
      },
      readings: (noise) => greyscale(natural, levels, noise),
    },
    {
      id: 'sdr-natural-adjusted',
      conditions: {
        taken: '2026-09-17T14:30:00+01:00',
        firmware: '3.1.7',
        mode: 'Natural',
        stage: 'adjusted',
        dimming: 'off',
        ...sdr,
      },
      readings: (noise) => greyscale(naturalAdjusted, levels, noise),
    },
    {
      id: 'sdr-play-delivered',
      conditions: {
        taken: '2026-09-18T10:00:00+01:00',
        firmware: '3.1.7',
        mode: 'Play',
        stage: 'as-delivered',
        dimming: 'off',
        ...sdr,
      },
      readings: () =>
        singles([
          ['lag', '14.2', 'ms'],
          ['response', '9.1', 'ms'],
        ]),
    },
    {
      id: 'hdr-calm-delivered',
      conditions: {
        taken: '2026-09-15T13:30:00+01:00',
        firmware: '3.1.7',
        sample: 'A',
        mode: 'HDR Calm',
        stage: 'as-delivered',
        signal: 'HDR10',
        settings: { brightness: 100, contrast: 100 },
        target: bt2020,
        dimming: 'as-set',
        ...bench,
      },
      readings: (noise) => [
        ...greyscale(hdrCalm, hdrLevels, noise),
        ...primaries(hdrCalm, noise),
        ...saturationHdr(hdrCalm, noise),
        ...windows(
          hdrCalm,
          [
            [1, 611],
            [2, 668],
            [5, 727],
            [10, 742.1],
            [18, 731],
            [25, 702],
            [50, 548],
            [75, 441],
            [100, 372],
          ],
          noise,
          {
            10: [
              [2, 100],
              [30, 99.8],
              [60, 99.5],
              [120, 99.2],
              [180, 99.0],
              [300, 98.9],
              [600, 98.8],
            ],
            100: [
              [2, 100],
              [60, 98.5],
              [120, 97.3],
              [300, 96.6],
            ],
          },
        ),
        ...contrast(hdrCalm, { white: 372, black: 0.021, chequerBlack: 0.214 }, noise),
        ...singles([['power.hdr', '118.6', 'W']]),
      ],
    },
  ],
};
