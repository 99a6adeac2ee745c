import type { EditorState, Transaction } from 'prosemirror-state';
import { plainTextOfMarkdown } from '../../../shared/article/plainText.ts';
import {
  type ArticleChecker,
  createChecker,
  digestsOf,
  type JudgingBench,
  judge,
} from '../../../shared/claims/index.ts';
import type { Claim, JudgedClaim } from '../../../shared/contract/claim.ts';
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
    const check = run && others.length === 0 ? tiedToRun(claim.check, run.conditions) : claim.check;
    const sentence = sentences.findLast(({ start }) => start <= span.start);
    const kept: Claim = {
      ...claim,
      ...span,
      id: crypto.randomUUID(),
      sentenceText: sentence?.text ?? claim.text,
      check,
      origin: 'manual',
    };
    const { verdict, reason, found } = judge(kept, bench);
    const proof =
      verdict === 'holds' ? { verdict, reason, found, digests: digestsOf(kept, bench), ...signature } : null;
    const attributes: ClaimMarkAttributes = { id: kept.id, origin: 'manual', check, opinion: false, proof };
    transaction.addMark(range.from, range.to, articleSchema.mark('claim', attributes));
  }
  return transaction;
}

/** What a phrase left blank, for people: "Left blank: … (HDR10, as delivered). Measure it on the Bench." */
export function blankText(missing: readonly string[], where: string): string {
  return `Left blank, not measured yet: ${missing.join('; ')} (${where}).`;
}
