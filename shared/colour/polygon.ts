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

/** The part of a convex polygon on the left of the line from `a` to `b` (Sutherland and Hodgman 1974). */
function clipToLeft(polygon: readonly Point[], a: Point, b: Point): Point[] {
  const kept: Point[] = [];
  polygon.forEach((point, i) => {
    const next = polygon[(i + 1) % polygon.length]!;
    const here = turn(a, b, point);
    const there = turn(a, b, next);
    if (here >= 0) kept.push(point);
    // A corner on the line itself may come twice, which changes no area.
    if (here > 0 !== there > 0) {
      const along = here / (here - there);
      kept.push([point[0] + along * (next[0] - point[0]), point[1] + along * (next[1] - point[1])]);
    }
  });
  return kept;
}

/** Area of a simple polygon by the shoelace formula, taken about its first corner so that digits are not lost. */
function polygonArea(polygon: readonly Point[]): number {
  let doubled = 0;
  for (let i = 2; i < polygon.length; i += 1) doubled += turn(polygon[0]!, polygon[i - 1]!, polygon[i]!);
  return Math.abs(doubled) / 2;
}

/**
 * Area common to two triangles, exact up to rounding. Either may turn either way; a triangle without area shares
 * none. Symmetric, never above the smaller of the two areas.
 * Precondition: finite coordinates.
 */
export function intersectionArea(one: Triangle, other: Triangle): number {
  const [a, b, c] = turn(...other) > 0 ? other : ([other[0], other[2], other[1]] as const);
  const clipped = clipToLeft(clipToLeft(clipToLeft(one, a, b), b, c), c, a);
  // Nothing cuts on the lines of a triangle without area, and rounding of the cut points can pass the smaller triangle
  // by a few last digits; the smaller area is right in both cases.
  return Math.min(polygonArea(clipped), triangleArea(one), triangleArea(other));
}
