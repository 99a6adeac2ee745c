import fc from 'fast-check';
import { intersection } from 'polyclip-ts';
import { describe, expect, test } from 'vitest';
import { intersectionArea, type Triangle, triangleArea } from '../../shared/colour/polygon.ts';
import { expectClose } from './closeness.ts';
import { seeded } from './seeded.ts';

const reversed = ([a, b, c]: Triangle): Triangle => [c, b, a];

/** Area by the shoelace formula of what an open polygon library gives. */
function areaByLibrary(one: Triangle, other: Triangle): number {
  const ring = (triangle: Triangle) => [
    [...triangle, triangle[0]].map(([x, y]) => [x, y] as [number, number]),
  ];
  let area = 0;
  for (const polygon of intersection(ring(one), ring(other)))
    for (const corners of polygon)
      for (let i = 1; i < corners.length; i += 1)
        area += (corners[i - 1]![0] * corners[i]![1] - corners[i]![0] * corners[i - 1]![1]) / 2;
  return Math.abs(area);
}

describe('triangles', () => {
  const right: Triangle = [
    [0, 0],
    [4, 0],
    [0, 3],
  ];

  test('area in either order of corners', () => {
    expect([triangleArea(right), triangleArea(reversed(right))]).toEqual([6, 6]);
    expect(
      triangleArea([
        [1, 1],
        [5, 1],
        [1, 4],
      ]),
    ).toBe(6);
    expect(
      triangleArea([
        [0, 0],
        [1, 1],
        [2, 2],
      ]),
    ).toBe(0);
  });

  test('common area worked by hand', () => {
    const shifted: Triangle = [
      [1, 0],
      [5, 0],
      [1, 3],
    ];
    const cases: [Triangle, number][] = [
      [right, 6],
      // What remains right of x = 1 is similar to the whole by 3/4.
      [shifted, 6 * 0.75 ** 2],
      [
        [
          [0.5, 0.5],
          [1.5, 0.5],
          [0.5, 1.5],
        ],
        0.5,
      ],
      [
        [
          [-10, -10],
          [20, -10],
          [-10, 20],
        ],
        6,
      ],
      [
        [
          [4, 0],
          [8, 0],
          [4, 3],
        ],
        0,
      ],
      [
        [
          [10, 10],
          [11, 10],
          [10, 11],
        ],
        0,
      ],
      [
        [
          [0, 0],
          [2, 2],
          [4, 4],
        ],
        0,
      ],
    ];
    for (const [other, area] of cases)
      for (const [one, two] of [
        [right, other],
        [other, right],
        [reversed(right), other],
        [right, reversed(other)],
      ] as const)
        expectClose([intersectionArea(one, two)], [area], 1e-12);
  });

  test('a hexagram shares two thirds of each triangle', () => {
    const corner = (degrees: number) =>
      [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)] as const;
    const up: Triangle = [corner(90), corner(210), corner(330)];
    const down: Triangle = [corner(270), corner(30), corner(150)];
    expectClose([intersectionArea(up, down)], [(triangleArea(up) * 2) / 3], 1e-12);
  });

  test('equal to an open polygon library for 2000 seeded pairs', () => {
    const random = seeded(1974);
    const triangle = (): Triangle => [
      [random(), random()],
      [random(), random()],
      [random(), random()],
    ];
    let worst = 0;
    for (let i = 0; i < 2000; i += 1) {
      const [one, other] = [triangle(), triangle()];
      worst = Math.max(worst, Math.abs(intersectionArea(one, other) - areaByLibrary(one, other)));
    }
    console.log(`intersection areas: largest difference from polyclip-ts ${worst.toExponential(1)}`);
    expect(worst).toBeLessThan(1e-12);
  });

  test('symmetric, never above either area, the whole for itself, scales with the square', () => {
    const point = fc.tuple(
      fc.double({ min: -2, max: 2, noNaN: true }),
      fc.double({ min: -2, max: 2, noNaN: true }),
    );
    const triangle = fc.tuple(point, point, point);
    fc.assert(
      fc.property(triangle, triangle, (one, other) => {
        const area = intersectionArea(one, other);
        expectClose([intersectionArea(other, one)], [area], 1e-12);
        expect(area).toBeLessThanOrEqual(Math.min(triangleArea(one), triangleArea(other)));
        expect(area).toBeGreaterThanOrEqual(0);
        expectClose([intersectionArea(one, one)], [triangleArea(one)], 1e-12);
        const grow = (t: Triangle) => t.map(([x, y]) => [3 * x + 1, 3 * y - 2]) as unknown as Triangle;
        expectClose([intersectionArea(grow(one), grow(other))], [9 * area], 1e-10);
      }),
      { numRuns: 1000 },
    );
  });

  test('triangles that share corners and edges', () => {
    const touching: Triangle = [
      [0, 0],
      [4, 0],
      [0, -3],
    ];
    const fan: Triangle = [
      [0, 0],
      [4, 0],
      [4, 3],
    ];
    expectClose([intersectionArea(right, touching), intersectionArea(right, fan)], [0, 3], 1e-12);
    expectClose(
      [
        intersectionArea(
          [
            [0, 0],
            [2, 0],
            [0, 1.5],
          ],
          right,
        ),
      ],
      [1.5],
      1e-12,
    );
  });
});
