/** How the glue is brought and the sheet laid, as the sums need it: the physical side of a method. */
import type { Face } from '../records/task';

export interface Way {
  readonly face: Face;
  /** minutes between pasting and laying */
  readonly minutes: number;
  /** seconds for which the whole is brushed, and carried over */
  readonly workSeconds: number;
}

/** Seconds to bring the sheet to its place. Common practice, no source. */
const CARRYING = 5;
/** Seconds to brush a square metre with a broad brush, and to begin. Common practice, no source: an A4 sheet takes some ten seconds. */
const BRUSHING = { begin: 4, perSquareMetre: 120 };

/** Seconds from the first stroke to laying, for a piece of this size; `pace` 1 is a broad brush, 0.6 a roller. */
export function workingSeconds(widthMm: number, heightMm: number, pace = 1): number {
  return BRUSHING.begin + pace * BRUSHING.perSquareMetre * ((widthMm * heightMm) / 1e6) + CARRYING;
}
