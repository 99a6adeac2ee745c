import { afterAll, beforeAll, expect, it } from 'vitest';
import { signsOf } from '../../../shared/claims/reading/clauseSigns.ts';
import type { Findings } from '../../../shared/claims/reading/finding.ts';
import { meets, needBits } from '../../../shared/claims/reading/needs.ts';
import { type Rule, rules } from '../../../shared/claims/reading/rules/index.ts';
import type { Scene } from '../../../shared/claims/reading/scene.ts';
import { read } from './context.ts';
import { sentences } from './sentences.ts';

const declared = rules.map((rule) => ({ ...rule }));
let passedOver = 0;
const misses: string[] = [];

/** What a rule may change in a clause. */
function stateOf({ items, used, said, carry }: Scene, { list }: Findings): string {
  const numbers = items.map(({ number }) => number);
  return JSON.stringify([numbers, used.size, said, carry, list.length]);
}

/** Shows every clause to the rule, and notes where it finds something in one that lacks what it says it needs. */
function watch({ read: readAll, needs }: Rule): Rule {
  return {
    needs: needBits([]),
    read(scene, findings) {
      if (meets(signsOf(scene), needs)) return readAll(scene, findings);
      const before = stateOf(scene, findings);
      readAll(scene, findings);
      passedOver++;
      if (stateOf(scene, findings) !== before)
        misses.push(`${readAll.name}: ${scene.sentence.map(({ text }) => text).join(' ')}`);
    },
  };
}

beforeAll(() => {
  for (const [at, rule] of rules.entries()) Object.assign(rule, watch(declared[at]!));
});
afterAll(() => {
  for (const [at, rule] of rules.entries()) Object.assign(rule, declared[at]!);
});

it('finds nothing in a clause that lacks what a rule needs, sentence after sentence', () => {
  for (let at = 0; at < sentences.length; at += 3)
    read(
      sentences
        .slice(at, at + 3)
        .map(([text]) => text)
        .join(' '),
    );
  for (const [text] of sentences) read(text);
  expect(misses).toEqual([]);
  expect(passedOver).toBeGreaterThan(sentences.length);
});
