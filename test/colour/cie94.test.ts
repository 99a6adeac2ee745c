import { expect, test } from 'vitest';
import { cie94, cie94Parameters } from '../../shared/colour/cie94.ts';
import { expectClose } from './closeness.ts';

test('worked by hand with both sets of factors', () => {
  // Reference (50, 30, 40): C = 50. Sample (53, 24, 32): C = 40, same hue. ΔL = −3, ΔC = 10, ΔH = 0.
  // Graphic arts: SC = 3.25; textiles: kL = 2, SC = 3.4.
  expectClose(
    [cie94([50, 30, 40], [53, 24, 32]), cie94([50, 30, 40], [53, 24, 32], cie94Parameters.textiles)],
    [Math.hypot(3, 10 / 3.25), Math.hypot(1.5, 10 / 3.4)],
    1e-12,
  );
  // Reference (50, 50, 0), sample (50, 30, 40): ΔC = 0, ΔH² = 2000. SH = 1.75 and 1.7.
  expectClose(
    [cie94([50, 50, 0], [50, 30, 40]), cie94([50, 50, 0], [50, 30, 40], cie94Parameters.textiles)],
    [Math.sqrt(2000) / 1.75, Math.sqrt(2000) / 1.7],
    1e-12,
  );
});

test('the weights follow the reference, so it is not symmetric', () => {
  // Reference C = 40: SC = 2.8.
  expectClose([cie94([53, 24, 32], [50, 30, 40])], [Math.hypot(3, 10 / 2.8)], 1e-12);
  expect(cie94([50, 0.3, 0.1], [50, 0.6, 0.2])).not.toBeNaN();
});
