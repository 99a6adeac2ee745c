import type { Claim } from '../contract/claim.ts';
import { canonicalJson } from './canonical.ts';
import {
  type Dependency,
  dependencyState,
  type JudgingBench,
  judgeReasoned,
  type Reasoned,
} from './checking/index.ts';

type Entry = { reasoned: Reasoned; states: [Dependency, string][]; generation: number };

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
  const keys = new WeakMap<object, string>();

  function keyOf(check: object): string {
    let key = keys.get(check);
    if (key === undefined) {
      key = canonicalJson(check);
      keys.set(check, key);
    }
    return key;
  }

  function isFresh(entry: Entry): boolean {
    if (entry.generation === generation) return true;
    if (entry.states.some(([dependency, state]) => dependencyState(bench, dependency) !== state))
      return false;
    entry.generation = generation;
    return true;
  }

  return {
    judge(claim) {
      if (claim.check === null) return judgeReasoned(claim, bench);
      const key = keyOf(claim.check);
      const known = entries.get(key);
      if (known && isFresh(known)) return known.reasoned;
      count++;
      let isPending = false;
      const watched: JudgingBench = {
        ...bench,
        draws(unit, run, id) {
          const draws = bench.draws(unit, run, id);
          if (draws === 'pending') isPending = true;
          return draws;
        },
      };
      const reasoned = judgeReasoned(claim, watched);
      entries.delete(key);
      // What waits for draws is judged again at the next check.
      if (!isPending) {
        const states = [...reasoned.dependencies.values()].map((dependency): [Dependency, string] => [
          dependency,
          dependencyState(bench, dependency),
        ]);
        entries.set(key, { reasoned, states, generation });
        if (entries.size > kept) entries.delete(entries.keys().next().value!);
      }
      return reasoned;
    },
    rebase(next) {
      if (next.house !== bench.house && canonicalJson(next.house) !== canonicalJson(bench.house))
        entries.clear();
      bench = next;
      generation++;
    },
    computed: () => count,
  };
}
