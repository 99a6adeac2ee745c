/** A point of the plane. */
export type Point = readonly [number, number];

/** Three corners in either order of turning. */
export type Triangle = readonly [Point, Point, Point];

/** Twice the signed area of triangle abc: positive where a, b, c turn anticlockwise. */
function turn(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

/** Area of a triangle; corners on one line give 0. Precondition: finite coordinates. */
export function triangleArea([a, b, c]: Triangle): number {
  return Math.abs(turn(a, b, c)) / 2;
}

/** Corners of a polygon in room that is used again: this runs in every draw of a coverage. */
type Corners = { x: Float64Array; y: Float64Array; count: number };
const room = (): Corners => ({ x: new Float64Array(16), y: new Float64Array(16), count: 0 });
const rooms = [room(), room()] as const;

/** The part of a convex polygon on the left of the line from `a` to `b` (Sutherland and Hodgman 1974). */
function clipToLeft(polygon: Corners, a: Point, b: Point, kept: Corners): Corners {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const { x, y, count } = polygon;
  const side = (i: number) => dx * (y[i]! - a[1]) - dy * (x[i]! - a[0]);
  let n = 0;
  let there = count > 0 ? side(0) : 0;
  for (let i = 0; i < count; i += 1) {
    const next = i + 1 === count ? 0 : i + 1;
    const here = there;
    there = side(next);
    if (here >= 0) {
      kept.x[n] = x[i]!;
      kept.y[n] = y[i]!;
      n += 1;
    }
    // A corner on the line itself may come twice, which changes no area.
    if (here > 0 !== there > 0) {
      const along = here / (here - there);
      kept.x[n] = x[i]! + along * (x[next]! - x[i]!);
      kept.y[n] = y[i]! + along * (y[next]! - y[i]!);
      n += 1;
    }
  }
  kept.count = n;
  return kept;
}

/** Area of a simple polygon by the shoelace formula, taken about its first corner so that digits are not lost. */
function polygonArea({ x, y, count }: Corners): number {
  let doubled = 0;
  for (let i = 2; i < count; i += 1)
    doubled += (x[i - 1]! - x[0]!) * (y[i]! - y[0]!) - (y[i - 1]! - y[0]!) * (x[i]! - x[0]!);
  return Math.abs(doubled) / 2;
}

/**
 * Area common to two triangles, exact up to rounding. Either may turn either way; a triangle without area shares
 * none. Symmetric, never above the smaller of the two areas.
 * Precondition: finite coordinates.
 */
export function intersectionArea(one: Triangle, other: Triangle): number {
  const [a, b, c] = turn(...other) > 0 ? other : ([other[0], other[2], other[1]] as const);
  const [here, there] = rooms;
  for (let i = 0; i < 3; i += 1) {
    here.x[i] = one[i]![0];
    here.y[i] = one[i]![1];
  }
  here.count = 3;
  const clipped = clipToLeft(clipToLeft(clipToLeft(here, a, b, there), b, c, here), c, a, there);
  // Nothing cuts on the lines of a triangle without area, and rounding of the cut points can pass the smaller triangle
  // by a few last digits; the smaller area is right in both cases.
  return Math.min(polygonArea(clipped), triangleArea(one), triangleArea(other));
}
