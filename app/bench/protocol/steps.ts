import type { SeriesName } from '../../../shared/contract/reading.ts';
import type { Stage } from '../../../shared/contract/run.ts';
import type { Unit } from '../../../shared/contract/unit.ts';
import type { CautionName } from './cautions.ts';

/** One thing that a fair verdict needs. Counts and minutes are common practice, no source. */
export interface ProtocolStep {
  id: string;
  group:
    | 'Before the first reading'
    | 'As delivered'
    | 'High dynamic range'
    | 'After adjustment'
    | 'With the eye';
  title: string;
  /** What the step asks for in one clause, shown while it is missing. */
  asks: string;
  needs:
    | { kind: 'warm-up'; minutes: number }
    | { kind: 'facts'; keys: readonly string[] }
    | {
        kind: 'readings';
        signal: 'SDR' | 'HDR';
        stage?: Stage;
        series: SeriesName;
        least: number;
        from?: number;
      }
    | { kind: 'single'; quantity: string }
    | { kind: 'observation'; topic: string };
  caution?: CautionName;
  /** Absent: for every set */
  concerns?: (unit: Unit) => boolean;
}

const dims = (unit: Unit) => (unit.zones ?? 0) > 0;
const lcd = (unit: Unit) => /lcd/i.test(unit.panel ?? '');

export const protocolSteps: readonly ProtocolStep[] = [
  {
    id: 'facts',
    group: 'Before the first reading',
    title: 'Box, menus and ports',
    asks: 'inputs and HDR formats, and who says so',
    needs: { kind: 'facts', keys: ['hdmi.count', 'hdr.formats'] },
    caution: 'lift',
  },
  {
    id: 'warm-up',
    group: 'Before the first reading',
    title: 'Warm-up',
    asks: '30 minutes with moving pictures before each run',
    needs: { kind: 'warm-up', minutes: 30 },
    caution: 'mains',
  },
  {
    id: 'sdr-grey',
    group: 'As delivered',
    title: 'Greyscale',
    asks: '11 levels, 0 to 100 %',
    needs: { kind: 'readings', signal: 'SDR', stage: 'as-delivered', series: 'greyscale', least: 11 },
  },
  {
    id: 'sdr-primaries',
    group: 'As delivered',
    title: 'Primaries',
    asks: 'three primaries and white at full amplitude',
    needs: { kind: 'readings', signal: 'SDR', stage: 'as-delivered', series: 'primaries', least: 4 },
  },
  {
    id: 'sdr-sweep',
    group: 'As delivered',
    title: 'Saturation sweep',
    asks: 'six hues in steps of 25 %',
    needs: { kind: 'readings', signal: 'SDR', stage: 'as-delivered', series: 'saturation', least: 18 },
  },
  {
    id: 'sdr-contrast',
    group: 'As delivered',
    title: 'Contrast',
    asks: 'full white, full black, chequerboard, dimming off',
    needs: { kind: 'readings', signal: 'SDR', stage: 'as-delivered', series: 'contrast', least: 2 },
  },
  {
    id: 'sdr-uniformity',
    group: 'As delivered',
    title: 'Uniformity',
    asks: 'white, at least 3 × 3 places',
    needs: { kind: 'readings', signal: 'SDR', series: 'uniformity', least: 9 },
    caution: 'static',
  },
  {
    id: 'sdr-angle',
    group: 'As delivered',
    title: 'Off axis',
    asks: '0°, 15°, 30° and 45°, both sides',
    needs: { kind: 'readings', signal: 'SDR', series: 'angle', least: 4 },
  },
  {
    id: 'hdr-grey',
    group: 'High dynamic range',
    title: 'Greyscale against PQ',
    asks: '11 levels in a 10 % window',
    needs: { kind: 'readings', signal: 'HDR', series: 'greyscale', least: 11 },
  },
  {
    id: 'hdr-primaries',
    group: 'High dynamic range',
    title: 'Primaries of the wide gamut',
    asks: 'three primaries and white',
    needs: { kind: 'readings', signal: 'HDR', series: 'primaries', least: 4 },
  },
  {
    id: 'hdr-window',
    group: 'High dynamic range',
    title: 'Peak by window',
    asks: '2, 10, 25, 50 and 100 % of the screen',
    needs: { kind: 'readings', signal: 'HDR', series: 'window', least: 5 },
  },
  {
    id: 'hdr-hold',
    group: 'High dynamic range',
    title: 'Does the peak last',
    asks: 'a reading after 120 s',
    needs: { kind: 'readings', signal: 'HDR', series: 'window', least: 1, from: 120 },
    caution: 'static',
  },
  {
    id: 'adjusted-grey',
    group: 'After adjustment',
    title: 'Greyscale',
    asks: 'the same levels once more',
    needs: { kind: 'readings', signal: 'SDR', stage: 'adjusted', series: 'greyscale', least: 11 },
  },
  {
    id: 'lag',
    group: 'As delivered',
    title: 'Input lag',
    asks: 'one value, mode named',
    needs: { kind: 'single', quantity: 'lag' },
  },
  {
    id: 'banding',
    group: 'With the eye',
    title: 'Banding',
    asks: 'a slow ramp',
    needs: { kind: 'observation', topic: 'banding' },
  },
  {
    id: 'blooming',
    group: 'With the eye',
    title: 'Blooming',
    asks: 'a bright field on black, dark room, on and off axis',
    needs: { kind: 'observation', topic: 'blooming' },
    concerns: dims,
  },
  {
    id: 'clouding',
    group: 'With the eye',
    title: 'Clouding',
    asks: 'black, dark room',
    needs: { kind: 'observation', topic: 'clouding' },
    concerns: lcd,
  },
  {
    id: 'dirty-screen',
    group: 'With the eye',
    title: 'Dirty screen',
    asks: 'even grey, and a pan',
    needs: { kind: 'observation', topic: 'dirty screen' },
  },
  {
    id: 'judder',
    group: 'With the eye',
    title: 'Judder',
    asks: 'a slow pan at 24 pictures a second',
    needs: { kind: 'observation', topic: 'judder' },
  },
  {
    id: 'flicker',
    group: 'With the eye',
    title: 'Flicker',
    asks: 'a flashing pattern, started by hand',
    needs: { kind: 'observation', topic: 'flicker' },
    caution: 'flashing',
  },
];
