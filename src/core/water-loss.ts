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
  return { paper: Math.min(flow.capacity, flow.paper * root), substrate: flow.substrate * root };
}

/** √t at which the coat has given all that suction can draw; nothing moves after it. */
function drainedAt({ paper, substrate, capacity, drainable }: Flow): number {
  if (paper + substrate <= 0) return Infinity;
  const together = drainable / (paper + substrate);
  if (capacity >= drainable || paper * together <= capacity) return together;
  // The sheet is full before that, and the other side goes on alone.
  return substrate > 0 ? (drainable - capacity) / substrate : Infinity;
}

/**
 * Seconds until the coat has lost `grams` g/m²: while both sides drink, after the sheet is full, and
 * after suction has had all it can, the loss is b·√t + e·t + c; the first stretch that reaches it counts.
 */
export function timeToLose(flow: Flow, grams: number): number {
  if (grams <= 0) return 0;
  const both = flow.paper + flow.substrate;
  const full = flow.paper > 0 ? flow.capacity / flow.paper : Infinity;
  const together = Math.min(full, both > 0 ? flow.drainable / both : Infinity);
  let root = rootFor(flow.air, both, grams);
  if (root > together && full <= together) {
    root = rootFor(flow.air, flow.substrate, grams - flow.capacity);
    if (root > drainedAt(flow)) root = rootFor(flow.air, 0, grams - flow.drainable);
  } else if (root > together) {
    root = rootFor(flow.air, 0, grams - flow.drainable);
  }
  return root * root;
}

/** Positive x with e·x² + b·x = c; Infinity when nothing is lost. */
function rootFor(e: number, b: number, c: number): number {
  if (c <= 0) return 0;
  if (e <= 0) return b > 0 ? c / b : Infinity;
  return (2 * c) / (b + Math.sqrt(b * b + 4 * e * c));
}
