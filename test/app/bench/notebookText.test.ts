import { describe, expect, it } from 'vitest';
import { dateText } from '../../../app/bench/dateText.ts';
import { factLabel, factSourceText, factValueText, parseFactValue } from '../../../app/bench/factText.ts';
import { freeId, idFrom } from '../../../app/bench/idText.ts';
import {
  freeObservationId,
  houseTopic,
  observationConditions,
} from '../../../app/bench/observations/observationText.ts';
import { counterpart, entryOrder, supersededBy } from '../../../app/bench/runOrder.ts';
import { distinctRunTitle, runSentence } from '../../../app/bench/runText.ts';
import type { RunEvidence } from '../../../shared/contract/evidence.ts';
import type { Run } from '../../../shared/contract/run.ts';

function run(id: string, conditions: Partial<Run> = {}): RunEvidence {
  return {
    id,
    digest: id,
    readings: [],
    conditions: {
      mode: 'Calm',
      stage: 'as-delivered',
      signal: 'SDR',
      target: { gamut: 'BT.709', white: 'D65', eotf: 'BT.1886' },
      taken: '2026-09-15T10:20:00+01:00',
      dimming: 'off',
      ...conditions,
    },
  };
}

describe('facts', () => {
  it('are read from what a person types', () => {
    expect(parseFactValue('depth', '71')).toBe(71);
    expect(parseFactValue('width', '1,231.5')).toBe(1231.5);
    expect(parseFactValue('hdr.formats', 'HDR10, HLG')).toEqual(['HDR10', 'HLG']);
    expect(parseFactValue('hdmi.version', '2.0')).toBe('2.0');
    expect(parseFactValue('wall.holes', 'yes')).toBe(true);
    expect(parseFactValue('depth', '  ')).toBeNull();
  });

  it('name their source, and say when nobody noted one', () => {
    expect(factSourceText({ value: 1000, by: 'maker', on: '2026-08-30' })).toBe(
      'says the maker, 30 August 2026',
    );
    expect(factSourceText({ value: 4 })).toBe('source not noted');
    expect(factLabel('hdmi.count.2.1')).toBe('HDMI 2.1 inputs');
    expect(factValueText({ value: 1231, unit: 'mm' }).replaceAll(/\s/g, ' ')).toBe('1,231 mm');
  });
});

describe('runs on the page', () => {
  it('stand as delivered before adjusted, SDR before HDR, superseded last', () => {
    const runs = [
      run('hdr', { signal: 'HDR10', mode: 'HDR Calm' }),
      run('adjusted', { stage: 'adjusted', taken: '2026-09-17' }),
      run('old'),
      run('new', { firmware: '3.2.0', taken: '2026-09-30', supersedes: 'old' }),
    ];
    expect(entryOrder(runs).map(({ id }) => id)).toEqual(['new', 'adjusted', 'hdr', 'old']);
    expect(supersededBy(runs[2]!, runs)?.id).toBe('new');
    expect(counterpart(runs[3]!, runs)?.id).toBe('adjusted');
  });

  it('that share a title are told apart by dimming, then firmware', () => {
    const runs = [run('a'), run('b', { dimming: 'medium' }), run('c', { mode: 'Day' })];
    expect(runs.map((each) => distinctRunTitle(each, runs))).toEqual([
      'Calm, SDR as delivered, dimming off',
      'Calm, SDR as delivered, dimming medium',
      'Day, SDR as delivered',
    ]);
  });

  it('say what was not noted', () => {
    expect(runSentence(run('a', { taken: undefined, dimming: undefined }))).toBe(
      'Taken on a day not noted: firmware not noted, warm-up not noted, dimming as set. Measured against BT.709, D65 and BT.1886.',
    );
  });
});

describe('names and dates', () => {
  it('become ids that a dossier can use as folder names', () => {
    expect(idFrom('Orrinvale', 'Héarth 55″')).toBe('orrinvale-hearth-55');
    expect(freeId('calm', new Set(['calm', 'calm-2']))).toBe('calm-3');
    expect(freeObservationId('Dirty screen', new Set(['dirty-screen']))).toBe('dirty-screen-2');
  });

  it('keep a date as it was written, whatever the zone of the machine', () => {
    expect(dateText('2026-09-15T00:20:00+14:00')).toBe('15 September 2026');
    expect(dateText('some day')).toBe('some day');
  });

  it('file an observation under the house’s topic for its words', () => {
    const topics = { haloes: ['halo', 'haloing'], 'dirty-screen': ['dirty screen effect'] };
    expect(
      ['Halo', 'Dirty screen', 'dirty-screen effect', ' Moiré '].map((words) => houseTopic(words, topics)),
    ).toEqual(['haloes', 'dirty-screen', 'dirty-screen', 'Moiré']);
  });

  it('give an observation its conditions in one clause', () => {
    expect(
      observationConditions({
        id: 'b',
        topic: 'blooming',
        severity: 1,
        mode: 'Calm',
        angle: 0,
        room_lux: 0.1,
      }),
    ).toBe('Calm, on axis, dark room');
  });
});
