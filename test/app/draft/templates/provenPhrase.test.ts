import { history, undo } from 'prosemirror-history';
import { EditorState, TextSelection } from 'prosemirror-state';
import { describe, expect, it } from 'vitest';
import { documentOfMarkdown } from '../../../../app/draft/document/readMarkdown.ts';
import { textMapOf } from '../../../../app/draft/document/textMap.ts';
import { markdownOfDocument } from '../../../../app/draft/document/writeMarkdown.ts';
import { storedClaimsOf } from '../../../../app/draft/proofs/storedClaims.ts';
import { outlineMarkdown } from '../../../../app/draft/templates/outlines.ts';
import { fillPlaceholders } from '../../../../app/draft/templates/placeholders.ts';
import {
  blankText,
  type FilledPhrase,
  insertProvenPhrase,
  provenClaimsOf,
} from '../../../../app/draft/templates/provenPhrase.ts';
import { createChecker, type JudgingBench } from '../../../../shared/claims/index.ts';
import { benchOf, hdrRun, hearth, hearthWith, run, windows } from '../../../fixtures/hearth/index.ts';

const hdr = { signal: 'HDR10', stage: 'as-delivered' } as const;
const sdr = { signal: 'SDR', stage: 'as-delivered' } as const;
const signature = { by: 'reviewer', at: '2026-10-02T10:00:00Z' };

/** The state with the cursor at the end of the text. */
function writing(markdown: string): EditorState {
  const doc = documentOfMarkdown(markdown);
  return EditorState.create({ doc, selection: TextSelection.atEnd(doc), plugins: [history()] });
}

function withPhrase(state: EditorState, words: string, bench: JudgingBench, conditions = hdr): EditorState {
  const filled = fillPlaceholders(words, hearth, conditions, bench, 'en-GB');
  return state.apply(insertProvenPhrase(state, { ...filled, conditions }, bench, signature));
}

const storedIn = ({ doc }: EditorState) => storedClaimsOf(doc, textMapOf(doc));
const judgedIn = (state: EditorState, bench: JudgingBench) =>
  createChecker(bench).check(textMapOf(state.doc).text, storedIn(state)).claims;

describe('a house phrase that is put in', () => {
  const bench = benchOf();
  const before = writing('# A trial\n\n## SDR, as delivered\n\nIt stood here.\n');
  const after = withPhrase(before, 'It reaches {peak@10} in a 10% window.', bench);

  it('stands in the text with its number and keeps its check and proof', () => {
    expect(markdownOfDocument(after.doc)).toMatch(
      /It stood here\. It reaches \[742.cd\/m²\]\(measured:orrinvale-hearth-55\/[^)]+\) in a 10% window\.\n$/u,
    );
    expect(storedIn(after)).toEqual([
      expect.objectContaining({
        origin: 'manual',
        check: expect.objectContaining({ kind: 'value' }),
        proof: expect.objectContaining({ verdict: 'holds', ...signature }),
      }),
    ]);
  });

  it('is tied to the run of its number, whatever the section around it speaks of', () => {
    const [claim, ...others] = judgedIn(after, bench);
    expect(others).toEqual([]);
    expect(claim?.judgement).toMatchObject({ verdict: 'holds', conditions: { signal: 'HDR10' } });
  });

  it('turns stale when its run is measured again', () => {
    const later = benchOf([
      hearthWith([run('hdr-window', hdrRun, windows({ 2: 700, 10: 690, 25: 610, 50: 480, 100: 350 }))]),
    ]);
    expect(judgedIn(after, later).map(({ judgement }) => judgement.verdict)).toEqual(['stale']);
  });

  it('goes with its proof in one undo', () => {
    let state = after;
    undo(after, (transaction) => {
      state = after.apply(transaction);
    });
    expect([markdownOfDocument(state.doc), storedIn(state)]).toEqual([markdownOfDocument(before.doc), []]);
  });

  it('claims nothing where a number is missing, and says which', () => {
    const sdrAdjusted = { signal: 'SDR', stage: 'adjusted' } as const;
    const filled = fillPlaceholders('It lags {lag}.', hearth, sdrAdjusted, bench, 'en-GB');
    const state = before.apply(
      insertProvenPhrase(before, { ...filled, conditions: sdrAdjusted }, bench, signature),
    );
    expect(storedIn(state)).toEqual([]);
    expect(state.doc.textBetween(state.selection.from, state.selection.to)).toBe('…');
    expect(blankText(filled.missing, 'SDR, adjusted')).toBe(
      'Left blank, not measured yet: Input lag (SDR, adjusted).',
    );
  });
});

describe('an outline that an article begins with', () => {
  const bench = benchOf();
  const phrases: FilledPhrase[] = [];
  const outline = {
    id: 'trial',
    name: 'Trial',
    sections: [
      { heading: 'As delivered', conditions: sdr, sentences: ['It reaches {peak@10} in a 10% window.'] },
      {
        heading: 'High dynamic range',
        conditions: hdr,
        sentences: ['A 10% window reaches {peak@10}, a full white screen {peak@100}.', 'Input lag is {lag}.'],
      },
    ],
  };
  const markdown = outlineMarkdown('A trial', outline, 'plain', (sentence, conditions) => {
    const filled = fillPlaceholders(sentence, hearth, conditions, bench, 'en-GB');
    if (filled.missing.length === 0) phrases.push({ ...filled, conditions });
    return filled;
  });
  const claims = provenClaimsOf(markdown, phrases, bench, signature);

  it('has a proof for each number it wrote, and none for what it left blank', () => {
    expect(claims.map(({ anchor, proof }) => [anchor.exact.replace(/\s/gu, ' '), proof?.verdict])).toEqual([
      [expect.stringContaining('742 cd/m²'), 'holds'],
      [expect.stringContaining('350 cd/m²'), 'holds'],
    ]);
    expect(claims.map(({ proof }) => proof && { by: proof.by, at: proof.at })).toEqual([
      signature,
      signature,
    ]);
  });

  it('is read with these proofs as the Draft opens it: accepted, holding, on the run of the number', () => {
    const map = textMapOf(documentOfMarkdown(markdown));
    const judged = createChecker(bench)
      .check(map.text, claims)
      .claims.filter(({ origin }) => origin !== 'proposed');
    expect(judged.map(({ accepted, judgement }) => [accepted?.verdict, judgement.verdict])).toEqual([
      ['holds', 'holds'],
      ['holds', 'holds'],
    ]);
  });
});
