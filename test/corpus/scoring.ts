import type { Expected } from './rows.ts';

/** A sentence with what a fair editor expects of it. */
export interface Gold {
  text: string;
  expect: readonly Expected[];
}

/** A claim as the program found it in a row's sentence. Offsets count from the start of the row's text. */
export interface Found {
  text: string;
  start: number;
  end: number;
  kind: string | null;
  quantity: string | null;
  verdict: string;
  reason: string;
}

export interface Outcome<Row extends Gold = Gold> {
  row: Row;
  found: readonly Found[];
  /** Pairs of indexes: expected, found */
  matches: readonly (readonly [number, number])[];
  /** Found claims that say *holds* where no expected claim allows it: the worst error. */
  wrongHolds: readonly number[];
}

interface Span {
  start: number;
  end: number;
}

function spanOf(row: Gold, { text }: Expected): Span {
  const start = row.text.indexOf(text);
  return { start, end: start + text.length };
}

/** Share of the shorter span that both cover. */
function overlap(one: Span, other: Span): number {
  const both = Math.min(one.end, other.end) - Math.max(one.start, other.start);
  return Math.max(0, both) / Math.max(1, Math.min(one.end - one.start, other.end - other.start));
}

function kindFits(expected: Expected, found: Found): boolean {
  if (expected.kind === null || expected.kind === found.kind) return true;
  // An unproven claim may have no check at all.
  return found.kind === null && allowed(expected).includes('unproven');
}

const allowed = (expected: Expected): readonly string[] => [expected.verdict, ...(expected.also ?? [])];

/** Ties what was expected to what was found: at least half of the shorter span in common and the same kind. */
export function scoreRow<Row extends Gold>(row: Row, found: readonly Found[]): Outcome<Row> {
  const pairs = row.expect.flatMap((expected, e) =>
    found.flatMap((claim, f) => {
      const common = overlap(spanOf(row, expected), claim);
      if (common < 0.5 || !kindFits(expected, claim)) return [];
      const agrees = allowed(expected).includes(claim.verdict) ? 1 : 0;
      const sameQuantity = expected.quantity === claim.quantity ? 1 : 0;
      return [{ e, f, worth: common + 0.1 * sameQuantity + 0.01 * agrees }];
    }),
  );
  pairs.sort((one, other) => other.worth - one.worth || one.e - other.e || one.f - other.f);
  const matches: [number, number][] = [];
  for (const { e, f } of pairs)
    if (!matches.some(([takenE, takenF]) => takenE === e || takenF === f)) matches.push([e, f]);
  const wrongHolds = found.flatMap((claim, f) => {
    if (claim.verdict !== 'holds') return [];
    const match = matches.find(([, matched]) => matched === f);
    const candidates = match
      ? [row.expect[match[0]]!]
      : row.expect.filter((expected) => overlap(spanOf(row, expected), claim) >= 0.5);
    return candidates.some((expected) => allowed(expected).includes('holds')) ? [] : [f];
  });
  return { row, found, matches: matches.sort((one, other) => one[0] - other[0]), wrongHolds };
}

export interface Score {
  rows: number;
  expected: number;
  found: number;
  matched: number;
  /** Matched with a verdict that is allowed */
  right: number;
  wrongHolds: number;
  kinds: Map<string, { expected: number; found: number; matched: number; right: number }>;
}

/** Sums over sentences. Kind `any` stands for claims whose kind was left open. */
export function sumOf(outcomes: readonly Outcome[]): Score {
  const score: Score = {
    rows: 0,
    expected: 0,
    found: 0,
    matched: 0,
    right: 0,
    wrongHolds: 0,
    kinds: new Map(),
  };
  const kind = (name: string | null) => {
    const key = name ?? 'any';
    const known = score.kinds.get(key) ?? { expected: 0, found: 0, matched: 0, right: 0 };
    score.kinds.set(key, known);
    return known;
  };
  for (const { row, found, matches, wrongHolds } of outcomes) {
    score.rows += 1;
    score.expected += row.expect.length;
    score.found += found.length;
    score.wrongHolds += wrongHolds.length;
    for (const expected of row.expect) kind(expected.kind).expected += 1;
    found.forEach((claim, f) => {
      const match = matches.find(([, matched]) => matched === f);
      kind(match ? row.expect[match[0]]!.kind : claim.kind).found += 1;
    });
    for (const [e, f] of matches) {
      const expected = row.expect[e]!;
      const right = allowed(expected).includes(found[f]!.verdict) ? 1 : 0;
      score.matched += 1;
      score.right += right;
      kind(expected.kind).matched += 1;
      kind(expected.kind).right += right;
    }
  }
  return score;
}

/** A row is clean when every expected claim was found with an allowed verdict and nothing else was found. */
export function isClean({ row, found, matches, wrongHolds }: Outcome): boolean {
  return (
    wrongHolds.length === 0 &&
    matches.length === row.expect.length &&
    matches.length === found.length &&
    matches.every(([e, f]) => allowed(row.expect[e]!).includes(found[f]!.verdict))
  );
}
