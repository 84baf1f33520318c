/** Glues that grab by cooling. */

/** A glue-pot coat in a cool room cools by half in about this many seconds ÷ ln 2. Common practice, no source. */
export const COOLING_SECONDS = 20;

/** Seconds until a hot coat gels, by Newton's law of cooling; Infinity where it does not gel in this room. */
export function coolingSeconds(usedAt: number | undefined, gelsAt: number | undefined, celsius: number): number {
  if (usedAt === undefined || gelsAt === undefined || celsius >= gelsAt || usedAt <= gelsAt) return Infinity;
  return COOLING_SECONDS * Math.log((usedAt - celsius) / (gelsAt - celsius));
}

/** A coat that goes on to gel is this many times thicker, on the way, than it was in the pot. Estimate. */
export const COOLING_THICKENS = 8;
/**
 * Most of that comes within this many °C of the temperature at which it gels, so that a room a little too warm for it to
 * gel still finds it thickened. From memory.
 */
export const THICKENS_WITHIN = 1.5;

/**
 * How many times thicker than in its pot a hot coat is on its way to the temperature of the room: half of
 * `COOLING_THICKENS` and a half more in a room just at its gel, 1 well above. All in °C; 1 for what is not used hot.
 */
export function thickenedBy(usedAt: number | undefined, gelsAt: number | undefined, celsius: number): number {
  if (usedAt === undefined || gelsAt === undefined || usedAt <= gelsAt) return 1;
  return 1 + (COOLING_THICKENS - 1) / (1 + Math.exp((celsius - gelsAt) / THICKENS_WITHIN));
}
