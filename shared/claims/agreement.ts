import type { Agreement, JudgedClaim } from '../contract/claim.ts';
import { plain } from './checking/terms.ts';
import { type Statement, statementsOf } from './statements.ts';

type Placed = { statement: Statement; claim: JudgedClaim; place: readonly [sentence: number, claim: number] };

const statements = new WeakMap<object, readonly Statement[]>();

/** What all claims say of one subject, and which of them contradict each other. */
interface Bucket {
  members: readonly Placed[];
  found: readonly Agreement[];
}

/** Finds contradictions in one state of an article's claims after another. */
export interface Agreements {
  /**
   * Pairs of claims on one quantity under the same conditions whose stated ranges do not overlap: whatever was
   * measured, one of them is wrong. Breaking pairs only, in the order of the text; the same list while it says the same.
   * @param claims in order
   */
  of(claims: readonly JudgedClaim[]): readonly Agreement[];
}

/** Only the subjects of which something else is said than before are looked at again. */
export function createAgreement(): Agreements {
  let before: readonly JudgedClaim[] = [];
  let buckets = new Map<string, Bucket>();
  let list: readonly Agreement[] = [];
  return {
    of(claims) {
      const same = claims.length === before.length && claims.every((claim, at) => isSame(claim, before[at]!));
      before = claims;
      if (same) return list;
      const next = new Map<string, Bucket>();
      let changed = false;
      for (const [subject, members] of bySubject(claims)) {
        const known = buckets.get(subject);
        const stands =
          known?.members.length === members.length &&
          members.every((member, at) => isSameMember(member, known.members[at]!));
        const found = stands ? known.found : contradictionsIn(members);
        next.set(subject, { members, found });
        changed ||= found !== (known?.found ?? none);
      }
      for (const [subject, { found }] of buckets) changed ||= found !== none && !next.has(subject);
      buckets = next;
      if (changed) list = inOrder([...next.values()].flatMap(({ found }) => found));
      return list;
    },
  };
}

const none: readonly Agreement[] = [];

function isSame(one: JudgedClaim, other: JudgedClaim): boolean {
  return (
    one === other ||
    (one.judgement === other.judgement && one.sentence === other.sentence && one.text === other.text)
  );
}

function isSameMember(one: Placed, other: Placed): boolean {
  return (
    one.statement === other.statement &&
    one.claim.text === other.claim.text &&
    one.place[0] === other.place[0] &&
    one.place[1] === other.place[1]
  );
}

function bySubject(claims: readonly JudgedClaim[]): Map<string, Placed[]> {
  const groups = new Map<string, Placed[]>();
  let sentence = -1;
  let index = 0;
  for (const claim of claims) {
    index = claim.sentence === sentence ? index + 1 : 0;
    sentence = claim.sentence;
    if (claim.judgement.verdict === 'opinion' || claim.judgement.verdict === 'stale') continue;
    for (const statement of remembered(claim)) {
      const placed: Placed = { statement, claim, place: [sentence, index] };
      const group = groups.get(statement.subject);
      if (group) group.push(placed);
      else groups.set(statement.subject, [placed]);
    }
  }
  return groups;
}

function contradictionsIn(group: readonly Placed[]): readonly Agreement[] {
  const found: Agreement[] = [];
  for (let i = 0; i < group.length; i++)
    for (let j = i + 1; j < group.length; j++) {
      const [one, other] = [group[i]!, group[j]!];
      if (one.claim !== other.claim && contradict(one.statement, other.statement))
        found.push({ claims: [one.place, other.place], verdict: 'breaks', reason: reasonOf(one, other) });
    }
  return found.length > 0 ? found : none;
}

/** Sorted; two claims that contradict each other in several ways are one pair. */
function inOrder(found: Agreement[]): Agreement[] {
  found.sort(compareKeys);
  return found.filter((pair, at) => at === 0 || compareKeys(found[at - 1]!, pair) !== 0);
}

function compareKeys(one: Agreement, other: Agreement): number {
  for (let end = 0; end < 2; end++)
    for (let part = 0; part < 2; part++) {
      const apart = one.claims[end]![part]! - other.claims[end]![part]!;
      if (apart !== 0) return apart;
    }
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

const inWords = new WeakMap<Statement, string>();

function words(statement: Statement): string {
  let said = inWords.get(statement);
  if (said === undefined) {
    said = wordsOf(statement);
    inWords.set(statement, said);
  }
  return said;
}

function wordsOf({ low, high, unit }: Statement): string {
  const shown = unit === 'axis' || unit === 'severity' || unit === 'points' ? '' : unit;
  const number = (value: number) => plain(Number(value.toPrecision(6)), shown);
  if (low === high) return number(low);
  if (!Number.isFinite(low)) return `at most ${number(high)}`;
  if (!Number.isFinite(high)) return `at least ${number(low)}`;
  return `${plain(Number(low.toPrecision(6)))} to ${number(high)}`;
}
