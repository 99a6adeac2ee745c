import { redo, undo } from 'prosemirror-history';
import type { Command } from '../commands/command.ts';
import { briefNotice } from '../shell/briefNotices.ts';
import { openSheet } from '../shell/sheets.ts';
import { useArticle } from '../stores/article.ts';
import { currentSession } from './currentSession.ts';
import { openFind } from './find/findStore.ts';
import type { ProofAction } from './margin/proofActions.ts';
import { backToText, goToProblem, goToProof } from './margin/proofPlaces.ts';
import { isProblem } from './proofs/proofItem.ts';
import { useProofs } from './proofs/proofStore.ts';

const open = () => currentSession() !== null;
const writing = () => open() && !useArticle.getState().following;
const focused = () => useProofs.getState().items.find((item) => item.key === useProofs.getState().focus);
/** What is done with a proof comes with the proofs, after the text. */
const actions = () => import('./margin/proofActions.ts');
const onFocused = (action: ProofAction) => async () => {
  const item = focused();
  if (item) (await actions()).performOn(item.key, action);
};

/** What one can do in the Draft. */
export const draftCommands: readonly Command[] = [
  {
    id: 'draft.next-problem',
    name: 'Next problem',
    keywords: 'breaks stale close unproven jump',
    key: 'F8',
    group: 'Proofs',
    when: open,
    perform: () => goToProblem(1),
  },
  {
    id: 'draft.previous-problem',
    name: 'Previous problem',
    keywords: 'breaks stale close unproven jump back',
    key: 'Shift+F8',
    group: 'Proofs',
    when: open,
    perform: () => goToProblem(-1),
  },
  {
    id: 'draft.to-proof',
    name: 'From the sentence to its proof',
    keywords: 'margin sidenote focus',
    key: 'F7',
    group: 'Proofs',
    when: open,
    perform: goToProof,
  },
  {
    id: 'draft.to-sentence',
    name: 'From the proof to its sentence',
    keywords: 'text back focus',
    key: 'Shift+F7',
    group: 'Proofs',
    when: open,
    perform: backToText,
  },
  {
    id: 'draft.accept',
    name: 'Accept this proof',
    keywords: 'approve keep verdict',
    key: 'Mod+Enter',
    group: 'Proofs',
    when: () => writing() && !!focused()?.claim.check && focused()?.claim.judgement.verdict !== 'working',
    perform: onFocused('accept'),
  },
  {
    id: 'draft.suggest',
    name: 'Write the suggestion',
    keywords: 'fix replace wording',
    key: 'Alt+Enter',
    group: 'Proofs',
    when: () => writing() && !!focused()?.claim.judgement.suggestion,
    perform: onFocused('suggest'),
  },
  {
    id: 'draft.opinion',
    name: 'Mark as opinion',
    keywords: 'not checkable',
    key: 'Alt+O',
    group: 'Proofs',
    when: () => writing() && !!focused(),
    perform: onFocused('opinion'),
  },
  {
    id: 'draft.read-again',
    name: 'Read again',
    keywords: 'stale refresh',
    key: 'Alt+R',
    group: 'Proofs',
    when: () => writing() && focused()?.claim.judgement.verdict === 'stale',
    perform: onFocused('again'),
  },
  {
    id: 'draft.accept-all',
    name: 'Accept every proof that holds',
    keywords: 'approve all',
    group: 'Proofs',
    when: () => writing() && useProofs.getState().items.some((item) => !isProblem(item)),
    perform: async () => {
      const { performOn } = await actions();
      const holding = useProofs
        .getState()
        .items.filter(({ claim }) => claim.origin === 'proposed' && claim.judgement.verdict === 'holds');
      for (const item of holding) performOn(item.key, 'accept');
      briefNotice(holding.length === 1 ? 'One proof accepted.' : `${holding.length} proofs accepted.`);
    },
  },
  {
    id: 'draft.insert-value',
    name: 'Insert a measured value',
    keywords: 'number live follows quantity',
    key: 'Alt+V',
    group: 'Draft',
    when: writing,
    perform: () => openSheet('insert-value'),
  },
  {
    id: 'draft.insert-photo',
    name: 'Insert a photo',
    keywords: 'image picture caption alt',
    key: 'Alt+P',
    group: 'Draft',
    when: writing,
    perform: () => openSheet('insert-photo'),
  },
  {
    id: 'draft.link',
    name: 'Link these words',
    keywords: 'url address href hyperlink',
    key: 'Alt+L',
    group: 'Draft',
    when: writing,
    perform: () => openSheet('link'),
  },
  {
    id: 'draft.phrase',
    name: 'House phrase',
    keywords: 'snippet template sentence wording',
    key: 'Alt+H',
    group: 'Draft',
    when: writing,
    perform: () => openSheet('phrase'),
  },
  {
    id: 'draft.find',
    name: 'Find and replace',
    keywords: 'search text',
    key: 'Mod+F',
    group: 'Draft',
    when: open,
    perform: openFind,
  },
  {
    id: 'draft.undo',
    name: 'Undo',
    keywords: 'back text proof',
    group: 'Draft',
    when: writing,
    perform: () => {
      const view = currentSession()?.view;
      if (view) undo(view.state, view.dispatch);
    },
  },
  {
    id: 'draft.redo',
    name: 'Redo',
    group: 'Draft',
    when: writing,
    perform: () => {
      const view = currentSession()?.view;
      if (view) redo(view.state, view.dispatch);
    },
  },
  {
    id: 'draft.save',
    name: 'Save now',
    keywords: 'keep write',
    key: 'Mod+S',
    group: 'Draft',
    when: writing,
    perform: () => currentSession()?.flush(),
  },
];
