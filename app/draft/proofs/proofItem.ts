import type { JudgedClaim } from '../../../shared/contract/claim.ts';
import type { Standing } from '../../theme/VerdictGlyph.tsx';
import type { TextMap } from '../document/textMap.ts';

/** A judged claim with its place in the document. */
export interface ProofItem {
  /** Stays the same while its words stay where they are, so that a proof slides instead of blinking. */
  key: string;
  from: number;
  to: number;
  claim: JudgedClaim;
  /** Contradictions with other claims of the same article */
  disagreements: readonly string[];
}

const problems: ReadonlySet<Standing> = new Set(['breaks', 'stale', 'close', 'unproven']);

/** What the reader is shown: two claims that contradict each other break, whatever each is alone. */
export function standingOf(item: Pick<ProofItem, 'claim' | 'disagreements'>): Standing {
  return item.disagreements.length > 0 ? 'breaks' : item.claim.judgement.verdict;
}

export function isProblem(item: ProofItem): boolean {
  return problems.has(standingOf(item));
}

let lastKey = 0;

/** Places judged claims and carries keys over from the items that stood at the same words before. */
export function placeClaims(
  claims: readonly JudgedClaim[],
  disagreements: ReadonlyMap<JudgedClaim, readonly string[]>,
  map: TextMap,
  before: readonly ProofItem[],
): ProofItem[] {
  const stored = new Map<string, ProofItem>();
  const byStart = new Map<number, ProofItem[]>();
  for (const item of before) {
    if (item.claim.origin !== 'proposed') stored.set(item.claim.id, item);
    const list = byStart.get(item.from);
    if (list) list.push(item);
    else byStart.set(item.from, [item]);
  }
  const taken = new Set<string>();
  const items: ProofItem[] = [];
  for (const claim of claims) {
    const range = map.rangeOf(claim);
    if (!range) continue;
    const old =
      (claim.origin !== 'proposed' ? stored.get(claim.id) : undefined) ??
      byStart.get(range.from)?.find((item) => !taken.has(item.key) && item.to === range.to) ??
      byStart.get(range.from)?.find((item) => !taken.has(item.key));
    const key = old && !taken.has(old.key) ? old.key : `p${++lastKey}`;
    taken.add(key);
    items.push({ key, ...range, claim, disagreements: disagreements.get(claim) ?? [] });
  }
  return items.sort((a, b) => a.from - b.from || a.to - b.to);
}

/** Would a reader see the same proof? Places may differ; they live in the editor's state. */
export function looksSame(one: ProofItem, other: ProofItem): boolean {
  if (one === other) return true;
  const { claim: a } = one;
  const { claim: b } = other;
  return (
    a.text === b.text &&
    a.origin === b.origin &&
    a.check === b.check &&
    a.accepted === b.accepted &&
    (a.judgement === b.judgement || sameJudgement(a.judgement, b.judgement)) &&
    one.disagreements.length === other.disagreements.length &&
    one.disagreements.every((reason, index) => reason === other.disagreements[index])
  );
}

function sameJudgement(a: JudgedClaim['judgement'], b: JudgedClaim['judgement']): boolean {
  return (
    a.verdict === b.verdict &&
    a.reason === b.reason &&
    a.now === b.now &&
    a.suggestion === b.suggestion &&
    a.evidence.length === b.evidence.length &&
    JSON.stringify(a.figure) === JSON.stringify(b.figure)
  );
}
