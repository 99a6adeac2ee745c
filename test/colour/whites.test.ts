import { expect, test } from 'vitest';
import { isWhiteName, whiteNames, whiteXy } from '../../shared/colour/whites.ts';
import { referenceJson } from '../reference/read.ts';
import { expectClose } from './closeness.ts';

const { white_points: published } = referenceJson<{ white_points: { name: string; xy: number[] }[] }>(
  'whitepoints.json',
);
const names = {
  A: 'illuminant A',
  C: 'illuminant C',
  D50: 'D50 (4 digits)',
  D55: 'D55',
  D65: 'D65 (BT.709/2020 rounding)',
  D75: 'D75',
  D93: 'D93 (rounded)',
  E: 'illuminant E',
  DCI: 'DCI theatre white',
} as const;

test('named whites have their published chromaticities', () => {
  expect([...whiteNames].sort()).toEqual(Object.keys(names).sort());
  for (const name of whiteNames)
    expectClose(whiteXy(name), published.find((white) => white.name === names[name])!.xy, 4e-7);
  expect(whiteXy('E')).toEqual([1 / 3, 1 / 3]);
});

test('other names are no whites', () => {
  expect(['D65', 'd65', 'toString', ''].map(isWhiteName)).toEqual([true, false, false, false]);
});
