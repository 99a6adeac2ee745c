import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gamut, gamutNames, isGamutName } from '../../shared/colour/gamuts.ts';
import { apply3, invert3, type Matrix3, multiply3, rgbToXyzMatrix } from '../../shared/colour/rgb.ts';
import { whiteXy } from '../../shared/colour/whites.ts';
import type { Xy } from '../../shared/colour/xyz.ts';
import { referenceJson } from '../reference/read.ts';
import { expectClose } from './closeness.ts';

type Named = { name: string };
const reference = referenceJson<{
  gamuts: (Named & { R: Xy; G: Xy; B: Xy; white: Xy })[];
  rgb_to_xyz: (Named & { matrix: number[][]; inverse: number[][] })[];
  published_matrix_srgb: { matrix: number[][] };
  published_inverse_bt2020: { matrix: number[][] };
}>('gamuts.json');

describe('gamuts', () => {
  test('primaries and whites as published', () => {
    expect([...gamutNames].sort()).toEqual(
      reference.gamuts
        .map(({ name }) => name)
        .filter((name) => name !== 'P3-DCI')
        .sort(),
    );
    for (const name of gamutNames) {
      const { R: red, G: green, B: blue, white } = reference.gamuts.find((row) => row.name === name)!;
      expect(gamut(name).primaries).toEqual({ red, green, blue });
      expect(whiteXy(gamut(name).white)).toEqual(white);
    }
  });

  test('other names are no gamuts', () => {
    expect(['BT.709', 'bt.709', 'constructor'].map(isGamutName)).toEqual([true, false, false]);
  });
});

describe('matrices from primaries', () => {
  test('of all published gamuts and their inverses', () => {
    expect(reference.rgb_to_xyz).toHaveLength(6);
    for (const { name, matrix, inverse } of reference.rgb_to_xyz) {
      const { R: red, G: green, B: blue, white } = reference.gamuts.find((row) => row.name === name)!;
      const found = rgbToXyzMatrix({ red, green, blue }, white);
      expectClose(found.flat(), matrix.flat(), 6e-10);
      expectClose(invert3(found).flat(), inverse.flat(), 6e-10);
    }
  });

  test('as printed in the standards', () => {
    const matrix = (name: 'BT.709' | 'BT.2020') => rgbToXyzMatrix(gamut(name).primaries, whiteXy('D65'));
    expectClose(matrix('BT.709').flat(), reference.published_matrix_srgb.matrix.flat(), 6e-5);
    expectClose(invert3(matrix('BT.2020')).flat(), reference.published_inverse_bt2020.matrix.flat(), 1e-10);
  });

  test('primaries on one line or without y throw', () => {
    const line = { red: [0.6, 0.3], green: [0.4, 0.3], blue: [0.2, 0.3] } as const;
    expect(() => rgbToXyzMatrix(line, whiteXy('D65'))).toThrow('the matrix has no inverse');
    const { primaries } = gamut('BT.709');
    expect(() => rgbToXyzMatrix({ ...primaries, red: [Number.NaN, 0.3] }, whiteXy('D65'))).toThrow(
      'x of a primary',
    );
    expect(() => rgbToXyzMatrix({ ...primaries, red: [0.6, Number.NaN] }, whiteXy('D65'))).toThrow(
      'y of a primary',
    );
    expect(() => rgbToXyzMatrix(primaries, [0.3, 0])).toThrow(RangeError);
  });
});

describe('3 × 3 arithmetic', () => {
  const entry = fc.double({ min: -10, max: 10, noNaN: true });
  const matrix = fc.array(entry, { minLength: 9, maxLength: 9 }).map(
    ([a, b, c, d, e, f, g, h, i]) =>
      [
        [a, b, c],
        [d, e, f],
        [g, h, i],
      ] as unknown as Matrix3,
  );

  test('worked by hand', () => {
    const one: Matrix3 = [
      [1, 2, 3],
      [0, 1, 4],
      [5, 6, 0],
    ];
    const inverse = [-24, 18, 5, 20, -15, -4, -5, 4, 1];
    expectClose(invert3(one).flat(), inverse, 1e-12);
    expect(apply3(one, [1, 10, 100])).toEqual([321, 410, 65]);
    expect(
      multiply3(one, [
        [0, 1, 0],
        [0, 0, 1],
        [1, 0, 0],
      ]),
    ).toEqual([
      [3, 1, 2],
      [4, 0, 1],
      [0, 5, 6],
    ]);
  });

  test('a product acts as its factors one after the other; an inverse undoes', () => {
    fc.assert(
      fc.property(matrix, matrix, fc.tuple(entry, entry, entry), (left, right, vector) => {
        expectClose(apply3(multiply3(left, right), vector), apply3(left, apply3(right, vector)), 1e-9);
      }),
    );
    fc.assert(
      fc.property(matrix, fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (rows, scale) => {
        // Diagonally dominant, so that it surely has an inverse; scaled, since units must not matter.
        const strong = rows.map((row, i) =>
          row.map((v, k) => (v + (i === k ? 40 : 0)) * scale),
        ) as unknown as Matrix3;
        expectClose(multiply3(invert3(strong), strong).flat(), [1, 0, 0, 0, 1, 0, 0, 0, 1], 1e-9);
      }),
    );
  });

  test('singular matrices throw whatever their scale', () => {
    for (const scale of [1e-9, 1, 1e9])
      expect(() =>
        invert3([
          [scale, 2 * scale, 3 * scale],
          [4 * scale, 5 * scale, 6 * scale],
          [7 * scale, 8 * scale, 9 * scale],
        ]),
      ).toThrow('the matrix has no inverse');
    expect(() =>
      invert3([
        [Number.NaN, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ]),
    ).toThrow(RangeError);
  });
});
