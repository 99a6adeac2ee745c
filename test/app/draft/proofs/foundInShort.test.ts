import { expect, test } from 'vitest';
import { foundInShort } from '../../../../app/draft/proofs/foundInShort.ts';
import type { Judgement } from '../../../../shared/contract/claim.ts';

const short = (kind: Judgement['kind'], quantity: string, value: string | boolean | readonly string[]) =>
  foundInShort({ kind, quantity, found: { value } } as Judgement);

test('a fact in words stands in the margin with its name', () => {
  expect(short('fact', 'fact.panel', 'LCD IPS')).toBe('panel LCD IPS');
  expect(short('fact', 'fact.hdr.formats', ['HDR10', 'HLG'])).toBe('list of HDR formats HDR10, HLG');
});

test('where a limit is passed stands in the margin as its picture says it', () => {
  const figure = { form: 'levels', title: 'Past 3 from 60 % upwards', axisUnit: '%', points: [] } as const;
  const judgement = { kind: 'onset', quantity: 'grey.de2000', found: { value: [[60, 3.4]] }, figure };
  expect(foundInShort(judgement as unknown as Judgement)).toBe('grey error past 3 from 60 % upwards');
});

test('what no single value says is left to the sentence', () => {
  expect(short('direction', 'eotf.rolloff', 'rolls off')).toBeNull();
  expect(short('fact', 'fact.curved', false)).toBeNull();
});
