import type { EditorState, Transaction } from 'prosemirror-state';
import { plainTextOfMarkdown } from '../../../shared/article/plainText.ts';
import {
  type ArticleChecker,
  createChecker,
  describeAnchor,
  digestsOf,
  type JudgingBench,
  judge,
} from '../../../shared/claims/index.ts';
import type { Claim, JudgedClaim } from '../../../shared/contract/claim.ts';
import type { RunEvidence } from '../../../shared/contract/evidence.ts';
import type { StoredClaim } from '../../../shared/contract/storedClaim.ts';
import { articleSchema, type ClaimMarkAttributes } from '../document/schema.ts';
import { textMapOf } from '../document/textMap.ts';
import { phraseAtCursor } from '../editor/insertions.ts';
import { tiedToRun } from '../proofs/tieToRun.ts';
import { conditionsText, type FilledText, type TemplateConditions } from './placeholders.ts';

/** A phrase with its numbers, and the conditions that it speaks of. */
export interface FilledPhrase extends FilledText {
  conditions: TemplateConditions;
}

/** Who puts a phrase in, and when (RFC 3339). */
interface Signature {
  by: string;
  at: string;
}

/** A phrase as it is read by itself: under a heading that names its own signal and stage. */
export function readAlone(
  markdown: string,
  conditions: TemplateConditions,
  checker: ArticleChecker,
): { text: string; claims: JudgedClaim[] } {
  const heading = `## ${conditionsText(conditions)}\n\n`;
  const { text } = plainTextOfMarkdown(markdown);
  const whole = plainTextOfMarkdown(heading + markdown);
  const begin = whole.text.length - text.length;
  const claims = checker.check(whole, []).claims.filter(({ start }) => start >= begin);
  return {
    text,
    claims: claims.map((claim) => ({ ...claim, start: claim.start - begin, end: claim.end - begin })),
  };
}

/**
 * Puts a filled phrase at the cursor and stores what it claims with it, as one step of the history: the check is the
 * phrase's own and tied to the run that the number is of, whatever the section around it speaks of. Where it holds its
 * proof is kept as accepted, so that nobody has to read it again until the text or the readings change. A phrase with
 * a blank claims nothing yet.
 */
export function insertProvenPhrase(
  state: EditorState,
  { markdown, missing, runs, conditions }: FilledPhrase,
  bench: JudgingBench,
  signature: Signature,
): Transaction {
  const { transaction, from, to } = phraseAtCursor(state, markdown);
  if (missing.length > 0) return transaction;
  const checker = createChecker(bench);
  const map = textMapOf(transaction.doc);
  const begin = map.spanOf(from, to)?.start;
  if (begin === undefined) return transaction;
  const { sentences } = checker.check(map.text, []);
  const [run, ...others] = runs;
  for (const claim of readAlone(markdown, conditions, checker).claims) {
    const span = { start: begin + claim.start, end: begin + claim.end };
    const range = map.rangeOf(span);
    if (!range || !claim.check) continue;
    const sentence = sentences.findLast(({ start }) => start <= span.start);
    const own = run && others.length === 0 ? run : null;
    const { id, check, proof } = provenClaim(
      claim,
      span,
      sentence?.text ?? claim.text,
      own,
      bench,
      signature,
    );
    const attributes: ClaimMarkAttributes = { id, origin: 'manual', check, opinion: false, proof };
    transaction.addMark(range.from, range.to, articleSchema.mark('claim', attributes));
  }
  return transaction;
}

/** A phrase's claim in its place, on the run of its number, with its proof as accepted where it holds. */
function provenClaim(
  claim: Claim,
  span: { start: number; end: number },
  sentenceText: string,
  run: RunEvidence | null,
  bench: JudgingBench,
  signature: Signature,
) {
  const check = run && claim.check ? tiedToRun(claim.check, run.conditions) : claim.check;
  const kept: Claim = { ...claim, ...span, id: crypto.randomUUID(), sentenceText, check, origin: 'manual' };
  const { verdict, reason, found } = judge(kept, bench);
  const proof =
    verdict === 'holds' ? { verdict, reason, found, digests: digestsOf(kept, bench), ...signature } : null;
  return { id: kept.id, check, proof };
}

/** The claims that a text made of filled phrases begins with, in the order in which the phrases stand in it. */
export function provenClaimsOf(
  markdown: string,
  phrases: readonly FilledPhrase[],
  bench: JudgingBench,
  signature: Signature,
): StoredClaim[] {
  const whole = plainTextOfMarkdown(markdown);
  const checker = createChecker(bench);
  const { sentences } = checker.check(whole, []);
  const claims: StoredClaim[] = [];
  let from = 0;
  for (const phrase of phrases) {
    const [run, ...others] = phrase.runs;
    const own = run && others.length === 0 ? run : null;
    const alone = readAlone(phrase.markdown, phrase.conditions, checker);
    const begin = whole.text.indexOf(alone.text, from);
    if (begin < 0 || phrase.missing.length > 0) continue;
    from = begin + alone.text.length;
    for (const claim of alone.claims) {
      if (!claim.check) continue;
      const span = { start: begin + claim.start, end: begin + claim.end };
      const sentence = sentences.findLast(({ start }) => start <= span.start);
      const { id, check, proof } = provenClaim(
        claim,
        span,
        sentence?.text ?? claim.text,
        own,
        bench,
        signature,
      );
      claims.push({
        id,
        anchor: describeAnchor(whole.text, span),
        origin: 'manual',
        check,
        ...(proof ? { proof: proof as StoredClaim['proof'] } : {}),
      });
    }
  }
  return claims;
}

/** What a phrase left blank, for people: "Left blank: … (HDR10, as delivered). Measure it on the Bench." */
export function blankText(missing: readonly string[], where: string): string {
  return `Left blank, not measured yet: ${missing.join('; ')} (${where}).`;
}
