/** How a coat between two faces loses its water: into both sides by suction, and slowly into the room. */

/** Where the water of a coat can go. */
export interface Flow {
  /** g/m² per √s into each side */
  readonly paper: number;
  readonly substrate: number;
  /** g/m² per s through the sheet into the room */
  readonly air: number;
  /** g/m² that the sheet can hold */
  readonly capacity: number;
  /** g/m² that suction can draw from the coat */
  readonly drainable: number;
}

/** Water taken by each side after √t: both drink until the coat has given all that suction can draw. */
export function takenUp(flow: Flow, rootSeconds: number): { paper: number; substrate: number } {
  const root = Math.min(rootSeconds, drainedAt(flow));
  return { paper: intoPaper(flow, root), substrate: flow.substrate * root };
}

/** What the sheet has taken after √t, while the coat still has water for it. */
export const intoPaper = (flow: Flow, root: number): number => Math.min(flow.capacity, flow.paper * root);

/** √t at which the coat has given all that suction can draw; nothing moves after it. */
export function drainedAt({ paper, substrate, capacity, drainable }: Flow): number {
  if (paper + substrate <= 0) return Infinity;
  const together = drainable / (paper + substrate);
  // Where the sheet is full before that, the other side goes on alone, and takes longer.
  const alone = (drainable - capacity) / substrate;
  return alone > together ? alone : together;
}

/**
 * Seconds until the coat has lost `grams` g/m²: while both sides drink, after the sheet is full, and
 * after suction has had all it can, the loss is b·√t + e·t + c; the first stretch that reaches it counts.
 */
export function timeToLose(flow: Flow, grams: number, drained: number = drainedAt(flow)): number {
  let root = rootFor(flow.air, flow.paper + flow.substrate, grams);
  if (root > flow.capacity / flow.paper) root = rootFor(flow.air, flow.substrate, grams - flow.capacity);
  if (root > drained) root = rootFor(flow.air, 0, grams - flow.drainable);
  return root * root;
}

/** Positive x with e·x² + b·x = c; 0 when nothing is to be lost, Infinity when nothing is lost. */
function rootFor(e: number, b: number, c: number): number {
  if (c <= 0) return 0;
  const root = Math.sqrt(b * b + 4 * e * c);
  // Only flows next to nothing are too small to be squared.
  return (2 * c) / (b + (root > SMALLEST_SQUARED ? root : Math.hypot(b, 2 * Math.sqrt(e * c))));
}
const SMALLEST_SQUARED = 1e-150;
