/**
 * The one way in which every plate looks at the bench: from the front, a little from the right and from above, without
 * perspective, so that what is parallel stays parallel and one length is drawn alike near and far.
 */

/** To the right, away from the reader, up. In the units of the drawing, about a third of a millimetre of a real bench. */
export type P3 = readonly [x: number, y: number, z: number];
export type P2 = readonly [x: number, y: number];

/** Where a point of the bench falls on the page. */
export const flat = ([x, y, z]: P3): P2 => [x * 0.96 + y * 0.46, x * 0.14 - y * 0.4 - z * 0.9];

/** How near the reader a point is; only the order counts. */
export const nearness = ([x, y, z]: P3): number => 0.479 * x - y + 0.519 * z;

export const plus = (a: P3, b: P3): P3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];

/** Twice the area of a polygon, negative where it is seen from above. */
export const turning = (points: readonly P2[]): number =>
  points.reduce((sum, [x, y], i) => {
    const [nx, ny] = points[(i + 1) % points.length]!;
    return sum + x * ny - nx * y;
  }, 0);

/** The smallest convex shape around some points (Andrew's monotone chain). */
export function hull(points: readonly P2[]): P2[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (order: readonly P2[]) => {
    const kept: P2[] = [];
    for (const p of order) {
      while (kept.length > 1 && left(kept.at(-2)!, kept.at(-1)!, p) <= 0) kept.pop();
      kept.push(p);
    }
    return kept.slice(0, -1);
  };
  return [...half(sorted), ...half([...sorted].reverse())];
}
const left = (a: P2, b: P2, c: P2) => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** What two convex shapes have in common (Sutherland and Hodgman). */
export function common(shape: readonly P2[], window: readonly P2[]): P2[] {
  const way = Math.sign(turning(window));
  return window.reduce<P2[]>(
    (kept, a, i) => {
      const b = window[(i + 1) % window.length]!;
      const inside = (p: P2) => way * left(a, b, p) >= 0;
      return kept.flatMap((p, j) => {
        const q = kept[(j + 1) % kept.length]!;
        const cut = (): P2 => {
          const [from, to] = [left(a, b, p), left(a, b, q)];
          const t = from / (from - to);
          return [p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t];
        };
        if (inside(p)) return inside(q) ? [p] : [p, cut()];
        return inside(q) ? [cut()] : [];
      });
    },
    [...shape],
  );
}

/** Whether a point lies in a convex shape. */
export const liesInShape = (p: P2, window: readonly P2[]): boolean => {
  const way = Math.sign(turning(window));
  return window.every((a, i) => way * left(a, window[(i + 1) % window.length]!, p) >= 0);
};

/** The corners of a level face, from its near left one round; w to the right, d away. */
export const levelFace = ([x, y, z]: P3, w: number, d: number): P3[] => [
  [x, y, z],
  [x + w, y, z],
  [x + w, y + d, z],
  [x, y + d, z],
];

/** Points round a circle that lies level, or stands across x or across y. */
export function ring(
  [x, y, z]: P3,
  radius: number,
  lies: 'level' | 'across-x' | 'across-y' = 'level',
  count = 26,
): P3[] {
  return Array.from({ length: count }, (_, i) => {
    const [c, s] = [Math.cos((2 * Math.PI * i) / count) * radius, Math.sin((2 * Math.PI * i) / count) * radius];
    if (lies === 'level') return [x + c, y + s, z];
    return lies === 'across-x' ? [x, y + c, z + s] : [x + c, y, z + s];
  });
}

/** `count` numbers from a to b, both of them among these. */
export const between = (a: number, b: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => a + ((b - a) * i) / (count - 1));
