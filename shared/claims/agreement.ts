import type { Agreement, JudgedClaim } from '../contract/claim.ts';
import { plain } from './checking/terms.ts';
import { type Statement, statementsOf } from './statements.ts';

type Placed = { statement: Statement; claim: JudgedClaim; place: readonly [sentence: number, claim: number] };

const statements = new WeakMap<object, readonly Statement[]>();

/**
 * Pairs of claims on one quantity under the same conditions whose stated ranges do not overlap: whatever was
 * measured, one of them is wrong. Breaking pairs only, in the order of the text.
 * @param claims in order, `index` their place within the sentence
 */
export function agreementOf(claims: readonly JudgedClaim[]): Agreement[] {
  const bySubject = new Map<string, Placed[]>();
  const counts = new Map<number, number>();
  for (const claim of claims) {
    const index = counts.get(claim.sentence) ?? 0;
    counts.set(claim.sentence, index + 1);
    if (claim.judgement.verdict === 'opinion' || claim.judgement.verdict === 'stale') continue;
    for (const statement of remembered(claim)) {
      const list = bySubject.get(statement.subject);
      const placed: Placed = { statement, claim, place: [claim.sentence, index] };
      if (list) list.push(placed);
      else bySubject.set(statement.subject, [placed]);
    }
  }
  const found = new Map<string, Agreement>();
  for (const group of bySubject.values())
    for (let i = 0; i < group.length; i++)
      for (let j = i + 1; j < group.length; j++) {
        const [one, other] = [group[i]!, group[j]!];
        if (one.claim === other.claim || !contradict(one.statement, other.statement)) continue;
        const key = `${one.place.join()}-${other.place.join()}`;
        if (!found.has(key))
          found.set(key, {
            claims: [one.place, other.place],
            verdict: 'breaks',
            reason: reasonOf(one, other),
          });
      }
  return [...found.values()].sort((one, other) => compareKeys(one, other));
}

/** {@link agreementOf}, found again only when a judgement, its words or its place among the sentences changed. */
export function createAgreement(): { of(claims: readonly JudgedClaim[]): readonly Agreement[] } {
  let before: readonly JudgedClaim[] = [];
  let found: readonly Agreement[] = [];
  const isSame = (one: JudgedClaim, other: JudgedClaim) =>
    one === other ||
    (one.judgement === other.judgement && one.sentence === other.sentence && one.text === other.text);
  return {
    of(claims) {
      let same = claims.length === before.length;
      for (let i = 0; same && i < claims.length; i++) same = isSame(claims[i]!, before[i]!);
      if (!same) found = agreementOf(claims);
      before = claims;
      return found;
    },
  };
}

function compareKeys(one: Agreement, other: Agreement): number {
  const [a, b] = [one.claims.flat(), other.claims.flat()];
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return a[i]! - b[i]!;
  return 0;
}

function remembered(claim: JudgedClaim): readonly Statement[] {
  const { judgement } = claim;
  let known = statements.get(judgement);
  if (!known) {
    known = statementsOf(claim);
    // A judgement belongs to one check, and statements depend on nothing else.
    statements.set(judgement, known);
  }
  return known;
}

function contradict(one: Statement, other: Statement): boolean {
  if (one.unit && other.unit && one.unit !== other.unit) return false;
  const isSame = one.stat === other.stat && one.part === other.part;
  if (isSame) return isBelow(one, other) || isBelow(other, one);
  return exceeds(one, other) || exceeds(other, one);
}

/** No level exceeds the maximum of the whole series, nor stays under its minimum. */
function exceeds(whole: Statement, level: Statement): boolean {
  if (whole.part !== '') return false;
  if (whole.stat === 'max') return isBelow(whole, level);
  if (whole.stat === 'min') return isBelow(level, whole);
  return false;
}

function isBelow(one: Statement, other: Statement): boolean {
  if (one.high < other.low - 1e-9) return true;
  return Math.abs(one.high - other.low) <= 1e-9 && (one.highOpen || other.lowOpen);
}

function reasonOf(one: Placed, other: Placed): string {
  return `“${one.claim.text}” and “${other.claim.text}” cannot both be true: ${words(one.statement)} against ${words(other.statement)}.`;
}

function words({ low, high, unit }: Statement): string {
  const shown = unit === 'axis' || unit === 'severity' || unit === 'points' ? '' : unit;
  const number = (value: number) => plain(Number(value.toPrecision(6)), shown);
  if (low === high) return number(low);
  if (!Number.isFinite(low)) return `at most ${number(high)}`;
  if (!Number.isFinite(high)) return `at least ${number(low)}`;
  return `${plain(Number(low.toPrecision(6)))} to ${number(high)}`;
}
