import { beforeAll, expect, it, vi } from 'vitest';
import type { ArticleText, ReadingContext } from '../../../shared/contract/articleText.ts';
import type { Proposal } from '../../../shared/contract/claim.ts';
import { context } from './context.ts';
import { sentences } from './sentences.ts';

type Read = (text: ArticleText, context: ReadingContext) => { proposals: Proposal[] };

const modules = {
  needs: '../../../shared/claims/reading/needs.ts',
  reading: '../../../shared/claims/reading/index.ts',
};
let readAsNeeded: Read;
let readByAll: Read;

beforeAll(async () => {
  ({ readArticle: readAsNeeded } = await import(modules.reading));
  vi.resetModules();
  const open = { meets: () => true, shows: () => true };
  vi.doMock(modules.needs, async (original) => ({ ...(await original<object>()), ...open }));
  ({ readArticle: readByAll } = await import(modules.reading));
});

function proposalsOf(read: Read, lines: readonly string[]): string[] {
  const text = lines.join(' ');
  const block = { index: 0, kind: 'paragraph' as const, start: 0, end: text.length };
  return read({ text, blocks: [block] }, context).proposals.map((one) => JSON.stringify(one));
}

it('reads the same when no step and no rule is passed over, sentence after sentence', () => {
  const differing: string[] = [];
  for (let at = 0; at < sentences.length; at += 2) {
    const pair = sentences.slice(at, at + 2).map(([text]) => text);
    const [needed, all] = [proposalsOf(readAsNeeded, pair), proposalsOf(readByAll, pair)];
    if (needed.join() !== all.join()) differing.push(pair.join(' | '));
  }
  expect(readByAll).not.toBe(readAsNeeded);
  expect(differing).toEqual([]);
});
