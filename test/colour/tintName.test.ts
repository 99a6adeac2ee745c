import { describe, expect, test } from 'vitest';
import { tintBorders, tintHues, tintName, tintSize } from '../../shared/colour/tintName.ts';
import { xyToUv } from '../../shared/colour/xyz.ts';
import { expectClose } from './closeness.ts';

const at = (degrees: number, distance = 0.01) =>
  tintName(distance * Math.cos((degrees * Math.PI) / 180), distance * Math.sin((degrees * Math.PI) / 180));

describe('names of tints', () => {
  test('borders lie half way between BT.709 primaries and complements', () => {
    // Whole degrees of the house table: red 340–49, yellow –107, green –160, cyan –229, blue –287, magenta –340.
    expect(tintHues).toEqual(['red', 'yellow', 'green', 'cyan', 'blue', 'magenta']);
    expect(tintBorders.map(Math.round)).toEqual([49, 107, 160, 229, 287, 340]);
    // In full: half way between the directions of the published u′, v′, which for complements follow from the luma row.
    const [u, v] = xyToUv(0.3127, 0.329);
    const angle = (uPrime: number, vPrime: number) => (Math.atan2(vPrime - v, uPrime - u) * 180) / Math.PI;
    const [red, green, blue] = [
      angle(0.450704, 0.522887),
      angle(0.125, 0.5625),
      angle(0.175439, 0.157895) + 360,
    ];
    // A complement lies opposite its primary as seen from white.
    const expected = [red, blue - 180, green, red + 180, blue, green + 180].map((h, i, all) => {
      const next = i === 5 ? all[0]! + 360 : all[i + 1]!;
      return ((h + next) / 2) % 360;
    });
    expectClose(tintBorders, expected, 2e-3);
  });

  test('the middle of each sector has one name', () => {
    expect([14, 78, 133, 195, 258, 313].map((degrees) => at(degrees).hues)).toEqual([
      ['red'],
      ['yellow'],
      ['green'],
      ['cyan'],
      ['blue'],
      ['magenta'],
    ]);
  });

  test('within 8° of a border both names hold, the own one first', () => {
    tintBorders.forEach((border, i) => {
      const [before, after] = [tintHues[i]!, tintHues[(i + 1) % 6]!];
      expect([-8.01, -7.99, -0.01, 0.01, 7.99, 8.01].map((shift) => at(border + shift).hues)).toEqual([
        [before],
        [before, after],
        [before, after],
        [after, before],
        [after, before],
        [after],
      ]);
    });
  });

  test('around the whole circle every direction has a name and its angle', () => {
    for (let degrees = 0; degrees < 360; degrees += 0.5) {
      const tint = at(degrees);
      expect(tint.hues.length).toBeGreaterThan(0);
      expectClose([tint.angle!, tint.distance], [degrees, 0.01], 1e-9);
    }
  });

  test('sizes', () => {
    expect([0, 0.0019, 0.002, 0.0039, 0.004, 0.0079, 0.008, 0.1].map(tintSize)).toEqual([
      'none',
      'none',
      'slight',
      'slight',
      'mild',
      'mild',
      'obvious',
      'obvious',
    ]);
    expect(at(133, 0.003)).toMatchObject({ size: 'slight', hues: ['green'] });
  });

  test('no shift has no direction; numbers that are not finite throw', () => {
    expect(tintName(0, 0)).toEqual({ size: 'none', hues: [], angle: undefined, distance: 0 });
    expect(() => tintName(Number.NaN, 0)).toThrow('Δu′ must be a finite number');
    expect(() => tintName(0, Number.NaN)).toThrow('Δv′ must be a finite number');
  });
});
