import type { Agreement, JudgedClaim } from '../contract/claim.ts';
import { plain } from './checking/terms.ts';
import { type Statement, statementsOf } from './statements.ts';

type Placed = { statement: Statement; claim: JudgedClaim; place: readonly [sentence: number, claim: number] };

const statements = new WeakMap<object, readonly Statement[]>();

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
  /** By subject, of those that have any */
  const found = new Map<string, readonly Agreement[]>();
  let list: readonly Agreement[] = [];
  return {
    of(claims) {
      const subjects = subjectsChanged(before, claims);
      before = claims;
      if (subjects.size === 0) return list;
      let changed = false;
      for (const [subject, members] of membersOf(subjects, claims)) {
        const known = found.get(subject) ?? none;
        const now = contradictionsIn(members);
        if (areSame(known, now)) continue;
        changed = true;
        if (now.length > 0) found.set(subject, now);
        else found.delete(subject);
      }
      if (changed) list = inOrder([...found.values()].flat());
      return list;
    },
  };
}

const none: readonly Agreement[] = [];

/** What the claims speak of that are not the same, at the same place, as before. */
function subjectsChanged(before: readonly JudgedClaim[], claims: readonly JudgedClaim[]): Set<string> {
  const shorter = Math.min(before.length, claims.length);
  let head = 0;
  while (head < shorter && isSame(claims[head]!, before[head]!)) head++;
  let tail = 0;
  while (tail < shorter - head && isSame(claims.at(-1 - tail)!, before.at(-1 - tail)!)) tail++;
  // Where a claim came or went, those behind it in its sentence have another number there.
  while (tail > 0 && [claims, before].some((all) => all.at(-tail)!.sentence === all.at(-tail - 1)?.sentence))
    tail--;
  const subjects = new Set<string>();
  for (const all of [before, claims])
    for (const claim of all.slice(head, all.length - tail))
      for (const { subject } of remembered(claim)) subjects.add(subject);
  return subjects;
}

function isSame(one: JudgedClaim, other: JudgedClaim): boolean {
  return (
    one === other ||
    (one.judgement === other.judgement && one.sentence === other.sentence && one.text === other.text)
  );
}

function areSame(some: readonly Agreement[], others: readonly Agreement[]): boolean {
  return (
    some.length === others.length &&
    some.every((one, at) => one.reason === others[at]!.reason && compareKeys(one, others[at]!) === 0)
  );
}

/** For each of these subjects all that is said of it. */
function membersOf(
  subjects: ReadonlySet<string>,
  claims: readonly JudgedClaim[],
): ReadonlyMap<string, readonly Placed[]> {
  const groups = new Map<string, Placed[]>();
  for (const subject of subjects) groups.set(subject, []);
  let sentence = -1;
  let index = 0;
  for (const claim of claims) {
    index = claim.sentence === sentence ? index + 1 : 0;
    sentence = claim.sentence;
    if (claim.judgement.verdict === 'opinion' || claim.judgement.verdict === 'stale') continue;
    for (const statement of remembered(claim))
      groups.get(statement.subject)?.push({ statement, claim, place: [sentence, index] });
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
