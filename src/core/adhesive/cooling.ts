/** Glues that grab by cooling. */

/** A glue-pot coat in a cool room cools by half in about this many seconds ÷ ln 2. Common practice, no source. */
export const COOLING_SECONDS = 20;

/** Seconds until a hot coat gels, by Newton's law of cooling; Infinity where it does not gel in this room. */
export function coolingSeconds(usedAt: number | undefined, gelsAt: number | undefined, celsius: number): number {
  if (usedAt === undefined || gelsAt === undefined || celsius >= gelsAt || usedAt <= gelsAt) return Infinity;
  return COOLING_SECONDS * Math.log((usedAt - celsius) / (gelsAt - celsius));
}
