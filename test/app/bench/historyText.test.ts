import { expect, it } from 'vitest';
import { historyLines } from '../../../app/bench/historyText.ts';
import { instrumentSentence, sourceSentence } from '../../../app/bench/instrumentText.ts';

const of = 'units/hearth/runs/sdr';

it('a run’s history says, newest first, what stood there before each change', () => {
  const events = [
    { at: '2026-09-15T10:20:00Z', by: 'bench', what: 'run-saved', of, digest: '1' },
    { at: '2026-09-15T10:30:00Z', by: 'bench', what: 'readings-brought', of, rows: 12 },
    {
      at: '2026-11-25T18:00:00Z',
      by: 'bench',
      what: 'run-saved',
      of,
      before: {
        instrument: { name: 'bench colorimeter', u_luminance_percent: 2, u_x: 0.001, u_y: 0.001 },
        warm_up_min: null,
      },
    },
    { at: '2026-11-25T18:10:00Z', by: 'bench', what: 'run-saved', of, before: {} },
  ];
  expect(historyLines(events).map(({ sentence }) => sentence.replaceAll(/\s/g, ' '))).toEqual([
    '25 November 2026: changed. Before: bench colorimeter, luminance ±2 %, x and y ±0.001, calibration not noted; warm-up, minutes not noted.',
    '15 September 2026: 12 readings brought in.',
    '15 September 2026: begun.',
  ]);
});

it('an instrument says what it is good for, and what nobody noted', () => {
  expect(
    instrumentSentence({
      name: 'bench colorimeter',
      serial: '0001',
      u_luminance_percent: 2.5,
      u_x: 0.001,
      u_y: 0.002,
      coverage_k: 3,
      calibrated: '2026-03-02',
      matched_to: 'bench spectroradiometer',
      drift_check: '0.3 % over the sitting',
    }).replaceAll(/\s/g, ' '),
  ).toBe(
    'Bench colorimeter, no. 0001, luminance ±2.5 %, x ±0.001, y ±0.002, k = 3, calibrated 2 March 2026, matched to the bench spectroradiometer, drift check: 0.3 % over the sitting.',
  );
  expect(instrumentSentence(undefined)).toMatch(/house default/);
  expect(
    sourceSentence({ name: 'pattern generator', bits: 10, range: 'narrow' }).replaceAll(/\s/g, ' '),
  ).toBe('Pattern generator, 10 bits, narrow range.');
});
