import type { Check } from '../contract/check.ts';
import type { Claim } from '../contract/claim.ts';
import type { RunEvidence, UnitEvidence } from '../contract/evidence.ts';
import type { RunMeasurements } from '../contract/measurement.ts';
import { canonicalJson } from './canonical.ts';
import {
  type Dependency,
  dependencyState,
  type JudgingBench,
  judgeReasoned,
  type Reasoned,
} from './checking/index.ts';

type Entry = {
  reasoned: Reasoned;
  /** How that stood which the judgement looked at, in the order of its dependencies */
  states: string[];
  /** The state of the evidence for which this was last found to hold; −1: thrown out */
  generation: number;
};

/** Judges each check once for a state of what it looked at. */
export interface JudgingMemo {
  judge(claim: Pick<Claim, 'check' | 'why' | 'opinion'>): Reasoned;
  /** Other evidence: a check whose dependencies read the same is not judged again. */
  rebase(bench: JudgingBench): void;
  /** How many judgements were computed so far; for tests and benchmarks. */
  computed(): number;
}

/** Judgements kept at once; far more than any article has claims. */
const kept = 4000;

export function createJudgingMemo(first: JudgingBench): JudgingMemo {
  let bench = first;
  let generation = 0;
  let count = 0;
  const entries = new Map<string, Entry>();
  /** The same by the check itself: while typing, nearly all checks are the very objects of before. */
  let byCheck = new WeakMap<Check, Entry>();
  const withoutCheck = new Map<string, Reasoned>();
  let states = new Map<string, string>();
  let isPending = false;
  let watched = watch(bench);

  /** The same evidence, noting when draws are awaited; each run's measurements are asked for once. */
  function watch(over: JudgingBench): JudgingBench {
    const measured = new Map<UnitEvidence, Map<RunEvidence, RunMeasurements>>();
    return {
      ...over,
      measure(unit, run) {
        const runs = measured.get(unit) ?? new Map<RunEvidence, RunMeasurements>();
        const measurements = runs.get(run) ?? over.measure(unit, run);
        runs.set(run, measurements);
        measured.set(unit, runs);
        return measurements;
      },
      draws(unit, run, id) {
        const draws = over.draws(unit, run, id);
        if (draws === 'pending') isPending = true;
        return draws;
      },
    };
  }

  /** The state of a dependency, found once for all that rest on it. */
  function stateOf(key: string, dependency: Dependency): string {
    let state = states.get(key);
    if (state === undefined) {
      state = dependencyState(watched, dependency);
      states.set(key, state);
    }
    return state;
  }

  function isFresh(entry: Entry): boolean {
    if (entry.generation === generation) return true;
    if (entry.generation < 0) return false;
    let at = 0;
    for (const [key, dependency] of entry.reasoned.dependencies)
      if (stateOf(key, dependency) !== entry.states[at++]) return false;
    entry.generation = generation;
    return true;
  }

  function judgeCheck(claim: Pick<Claim, 'check' | 'why' | 'opinion'>, check: Check): Reasoned {
    // Two checks that say the same in another order are only judged twice.
    const key = JSON.stringify(check);
    const known = entries.get(key);
    if (known && isFresh(known)) {
      byCheck.set(check, known);
      return known.reasoned;
    }
    count++;
    isPending = false;
    const reasoned = judgeReasoned(claim, watched);
    if (known) known.generation = -1;
    entries.delete(key);
    // What waits for draws is judged again at the next check.
    if (!isPending) {
      const entry: Entry = { reasoned, states: [], generation };
      for (const [name, dependency] of reasoned.dependencies) entry.states.push(stateOf(name, dependency));
      entries.set(key, entry);
      byCheck.set(check, entry);
      if (entries.size > kept) entries.delete(entries.keys().next().value!);
    }
    return reasoned;
  }

  return {
    judge(claim) {
      const { check } = claim;
      if (check === null) {
        const key = `${claim.opinion ?? false} ${claim.why ?? ''}`;
        let reasoned = withoutCheck.get(key);
        if (!reasoned) {
          reasoned = judgeReasoned(claim, bench);
          withoutCheck.set(key, reasoned);
          if (withoutCheck.size > kept) withoutCheck.delete(withoutCheck.keys().next().value!);
        }
        return reasoned;
      }
      const known = byCheck.get(check);
      return known && isFresh(known) ? known.reasoned : judgeCheck(claim, check);
    },
    rebase(next) {
      if (next.house !== bench.house && canonicalJson(next.house) !== canonicalJson(bench.house)) {
        entries.clear();
        byCheck = new WeakMap();
      }
      bench = next;
      watched = watch(next);
      states = new Map();
      generation++;
    },
    computed: () => count,
  };
}
