import { describe, expect, it } from 'vitest';
import { cautionTitle, mustBeReadFirst, needsFlashing } from '../../../app/bench/protocol/cautions.ts';
import { coldRuns, currentFirmware, protocolState } from '../../../app/bench/protocol/protocolState.ts';
import { openSentence, warmUpSentence } from '../../../app/bench/protocol/protocolText.ts';
import type { RunEvidence, UnitEvidence } from '../../../shared/contract/evidence.ts';

function run(id: string, taken: string, firmware: string, warm: number | null = 45): RunEvidence {
  return {
    id,
    digest: id,
    conditions: {
      taken,
      firmware,
      mode: 'Calm',
      stage: 'as-delivered',
      signal: 'SDR',
      target: { gamut: 'BT.709', white: 'D65', eotf: 'BT.1886' },
      warm_up_min: warm,
    },
    readings: [
      { row: 1, series: 'greyscale', x: 0.31, y: 0.33, Y: 100, stimulus: 100 },
      { row: 2, series: 'single', x: null, y: null, Y: null, quantity: 'lag', value: 14.2, unit: 'ms' },
    ],
  };
}

const unitOf = (runs: readonly RunEvidence[]): UnitEvidence => ({
  id: 'orrinvale-hearth-55',
  unit: { maker: 'Orrinvale', model: 'Hearth 55', firmware: '3.1.7' },
  runs,
  observations: [],
});
const step = (id: string, foundIn: string[], more: object = {}) => ({
  id,
  title: id,
  cautions: [],
  foundIn,
  done: foundIn.length > 0,
  why: 'Because.',
  ...more,
});
const protocol = (...steps: ReturnType<typeof step>[]) => ({ warmUpMinutes: 45, cautions: [], steps });

describe('the protocol’s steps', () => {
  it('are done when a run of the present firmware has the readings', () => {
    const unit = unitOf([run('old', '2026-09-15', '3.1.7'), run('new', '2026-09-30', '3.2.0')]);
    const [grey] = protocolState(
      unit,
      protocol(step('grey', ['run/old', 'run/new'], { series: 'greyscale' })),
    );
    expect(grey).toMatchObject({ state: 'done', run: 'new', sentence: '1 reading' });
  });

  it('are out of date when only older firmware was measured', () => {
    const unit = unitOf([run('old', '2026-09-15', '3.1.7'), run('new', '2026-09-30', '3.2.0')]);
    const [grey] = protocolState(unit, protocol(step('grey', ['run/old'], { series: 'greyscale' })));
    expect(grey).toMatchObject({
      state: 'out of date',
      run: 'old',
      sentence: 'measured on firmware 3.1.7; the set now runs 3.2.0',
    });
  });

  it('are missing, with the reason, when nothing was found', () => {
    const [seen, grey] = protocolState(
      unitOf([]),
      protocol(step('banding', [], { topic: 'banding' }), step('grey', [], { series: 'greyscale' })),
    );
    expect([seen?.state, seen?.sentence, grey?.state]).toEqual(['missing', 'Because.', 'missing']);
  });

  it('follow the newest run’s firmware, and the unit’s while there is no run', () => {
    expect(currentFirmware(unitOf([]))).toBe('3.1.7');
    expect(
      currentFirmware(unitOf([run('new', '2026-09-30', '3.2.0'), run('old', '2026-09-15', '3.1.7')])),
    ).toBe('3.2.0');
  });

  it('count a run without a noted warm-up as cold', () => {
    const runs = [
      run('a', '2026-09-15', '1', 45),
      run('b', '2026-09-15', '1', 10),
      run('c', '2026-09-15', '1', null),
    ];
    expect(coldRuns(unitOf(runs), 45).map(({ id }) => id)).toEqual(['b', 'c']);
  });
});

describe('the protocol in one sentence', () => {
  const standings = (...states: ('done' | 'missing' | 'out of date')[]) =>
    states.map((state) => ({ step: step('x', []), state, sentence: '', run: null }));

  it('counts what is missing and what is out of date', () => {
    expect(openSentence(standings('done', 'done'))).toBe('Everything that a fair verdict needs is here.');
    expect(openSentence(standings('done', 'missing', 'out of date', 'out of date'))).toBe(
      '1 of 4 steps is missing and 2 are out of date; until then a verdict is not fair.',
    );
    expect(openSentence(standings('done', 'out of date'))).toBe(
      '1 of 2 steps is out of date; until then a verdict is not fair.',
    );
    expect(openSentence(standings('missing', 'missing'))).toBe('None of the 2 steps is taken yet.');
  });

  it('says whether the set was warm', () => {
    expect(warmUpSentence(0, 45, 0)).toBe('Let the set run for 45 minutes before the first reading.');
    expect(warmUpSentence(3, 45, 0)).toMatch(/^The set was warm/);
    expect(warmUpSentence(3, 45, 1)).toMatch(/^Before 1 of 3 runs/);
    expect(warmUpSentence(3, 0, 1)).toBe('');
  });
});

describe('the word that opens a caution', () => {
  it('says what it is about', () => {
    expect(
      cautionTitle(['A static pattern can leave an image.', 'A bright full field strains the eyes.']),
    ).toBe('Caution: static pattern, bright field');
    expect(cautionTitle(['The house says: mind the cat.'])).toBe('Caution');
  });
});

describe('cautions on flashing', () => {
  it('must be read before such a step is noted', () => {
    expect(mustBeReadFirst(['Flashing patterns can cause seizures.'])).toBe(true);
    expect(mustBeReadFirst(['A static pattern can leave an image.'])).toBe(false);
  });

  it('stand in the form for topics that need flashing patterns', () => {
    expect(['flicker', 'Black frame insertion', 'banding'].map(needsFlashing)).toEqual([true, true, false]);
  });
});
