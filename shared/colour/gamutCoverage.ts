import { requireFinite } from './domain.ts';
import { intersectionArea, type Point, type Triangle, triangleArea } from './polygon.ts';
import type { Primaries } from './rgb.ts';
import { type Xy, xyToUv } from './xyz.ts';

/** The plane in which areas are taken: CIE 1931 x, y or CIE 1976 u′, v′. Figures of the two differ by points. */
export type Diagram = 'xy' | 'uv';

function triangle({ red, green, blue }: Primaries, diagram: Diagram): Triangle {
  const place = ([x, y]: Xy): Point =>
    diagram === 'uv' ? xyToUv(x, y) : [requireFinite(x, 'x'), requireFinite(y, 'y')];
  return [place(red), place(green), place(blue)];
}

type Reference = { readonly triangle: Triangle; readonly area: number };
const known = { xy: new WeakMap<Primaries, Reference>(), uv: new WeakMap<Primaries, Reference>() };

/** A reference with its area, worked out once for each set of primaries. */
function referenceOf(primaries: Primaries, diagram: Diagram): Reference {
  let reference = known[diagram].get(primaries);
  if (!reference) {
    const corners = triangle(primaries, diagram);
    reference = { triangle: corners, area: triangleArea(corners) };
    if (reference.area === 0) throw new RangeError('the reference primaries lie on one line');
    known[diagram].set(primaries, reference);
  }
  return reference;
}

/**
 * Coverage in percent: 100 · area(measured ∩ reference)/area(reference), 0 to 100. Measured primaries on one line
 * cover 0 %.
 * @throws RangeError for reference primaries on one line or numbers that are not finite
 */
export function coverage(measured: Primaries, reference: Primaries, diagram: Diagram): number {
  const target = referenceOf(reference, diagram);
  return (100 * intersectionArea(triangle(measured, diagram), target.triangle)) / target.area;
}

/**
 * Ratio of areas in percent: 100 · area(measured)/area(reference); may exceed 100 and says nothing about overlap.
 * @throws RangeError for reference primaries on one line or numbers that are not finite
 */
export function areaRatio(measured: Primaries, reference: Primaries, diagram: Diagram): number {
  return (100 * triangleArea(triangle(measured, diagram))) / referenceOf(reference, diagram).area;
}
