import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { articleSchema } from '../../shared/contract/article.ts';
import { createMarkdownReader, evidenceOf, type MarkdownReader } from '../corpus/judgeRows.ts';
import planted from './planted.json' with { type: 'json' };

const dossier = join(import.meta.dirname, '../../main/demo/dossier');
let read: MarkdownReader;
beforeAll(async () => {
  read = createMarkdownReader(await evidenceOf(dossier));
});

function claimsOf(id: string) {
  const meta = articleSchema.parse(JSON.parse(readFileSync(join(dossier, 'articles', `${id}.json`), 'utf8')));
  return read(meta, readFileSync(join(dossier, 'articles', `${id}.md`), 'utf8'), id);
}
const short = ({ verdict, text, reason }: { verdict: string; text: string; reason: string }) =>
  `${verdict}: ${text} (${reason})`;

test('every claim of the clean article holds, and there are 40 or more', () => {
  const claims = claimsOf('hearth-55');
  expect(claims.filter(({ verdict }) => verdict !== 'holds').map(short)).toEqual([]);
  expect(claims.length).toBeGreaterThanOrEqual(40);
});

test('the planted mistakes, the close and the unproven claim are found, and nothing else is', () => {
  const claims = claimsOf(planted.article).filter(({ verdict }) => verdict !== 'holds');
  const seen = claims.map(({ verdict, kind, quantity }) => ({ verdict, kind, quantity }));
  expect(seen, claims.map(short).join('\n')).toEqual(
    planted.planted.map(({ verdict, kind, quantity }) => ({ verdict, kind, quantity })),
  );
});

test('the first look breaks on the red that firmware 3.2 put right, and on nothing else', () => {
  const claims = claimsOf('hearth-55-first-look').filter(({ verdict }) => verdict !== 'holds');
  expect(claims.map(({ verdict, quantity }) => [verdict, quantity])).toEqual([
    ['breaks', 'sweep.red.saturation'],
  ]);
});

test('every claim of the short articles holds', () => {
  const others = readdirSync(join(dossier, 'articles'))
    .filter((name) => name.endsWith('.md'))
    .map((name) => name.slice(0, -3))
    .filter((id) => !['hearth-55', 'hearth-55-first-look', 'vane-50'].includes(id));
  for (const id of others)
    expect(
      claimsOf(id)
        .filter(({ verdict }) => verdict !== 'holds')
        .map(short),
      id,
    ).toEqual([]);
});
