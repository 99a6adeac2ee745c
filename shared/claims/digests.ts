import type { Check } from '../contract/check.ts';
import type { AcceptedProof } from '../contract/claim.ts';
import type { House } from '../contract/house.ts';
import { canonicalJson } from './canonical.ts';
import { normaliseQuote } from './normaliseQuote.ts';
import { sha256 } from './sha256.ts';

/** What a proof rested on, as SHA-256 (hex); any difference makes it stale. */
export type ProofDigests = AcceptedProof['digests'];

/** Digest of a sentence as printed. Runs of white space count as one space: a line break carries no meaning. */
export function sentenceDigest(text: string): string {
  return sha256(normaliseQuote(text));
}

/**
 * Digest of what a check says. Where its conditions came from (named here, carried over) is left out: the same
 * statement found by another route is the same statement.
 */
export function checkDigest(check: Check | null): string {
  if (check === null) return sha256(canonicalJson(null));
  const known = checkDigests.get(check);
  if (known !== undefined) return known;
  const digest = sha256(statementKey(check));
  checkDigests.set(check, digest);
  return digest;
}

const checkDigests = new WeakMap<Check, string>();
const statementKeys = new WeakMap<Check, string>();

/** The text that a check's digest is made of: equal for two checks that say the same. */
export function statementKey(check: Check): string {
  let key = statementKeys.get(check);
  if (key === undefined) {
    key = canonicalJson(withoutOrigins(check));
    statementKeys.set(check, key);
  }
  return key;
}

const houseDigests = new WeakMap<House, string>();

/** Digest of the house words and levels; kept for each house object, which is never changed in place. */
export function houseDigest(house: House): string {
  const known = houseDigests.get(house);
  if (known !== undefined) return known;
  const digest = sha256(canonicalJson(house));
  houseDigests.set(house, digest);
  return digest;
}

/** Digest of the evidence that a verdict used: sorted `path` and content digest (or text) of each piece. */
export function evidenceDigest(used: ReadonlyMap<string, string>): string {
  const known = evidenceDigests.get(used);
  if (known !== undefined) return known;
  const sorted = [...used].sort(([one], [other]) => (one < other ? -1 : one > other ? 1 : 0));
  const digest = sha256(canonicalJson(sorted));
  evidenceDigests.set(used, digest);
  return digest;
}

const evidenceDigests = new WeakMap<ReadonlyMap<string, string>, string>();

/** Which of the four differ, in the order in which a reader cares. Empty: the proof is fresh. */
export function digestDifferences(accepted: ProofDigests, now: ProofDigests): (keyof ProofDigests)[] {
  return (['sentence', 'check', 'house', 'evidence'] as const).filter((part) => accepted[part] !== now[part]);
}

function withoutOrigins(value: unknown): unknown {
  if (value === null || typeof value !== 'object') return value;
  if (Array.isArray(value)) return value.map(withoutOrigins);
  return Object.fromEntries(
    Object.entries(value)
      .filter(([key]) => key !== 'origin')
      .map(([key, member]) => [key, withoutOrigins(member)]),
  );
}
