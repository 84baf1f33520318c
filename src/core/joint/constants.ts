/**
 * The model's own numbers. Eleven were calibrated together to the common-practice outcomes in
 * content/checks (see the page "How the model works"); `npm run calibrate` finds them again.
 */

export interface BondConstants {
  /** mobility into pores of a liquid of 1 Pa·s, relative to water */
  readonly mobilityAtOnePascalSecond: number;
  /** mobility falls as viscosity to this power */
  readonly mobilityExponent: number;
  /** share of a sheet's dry tensile strength that resists a lifting hand */
  readonly tearShare: number;
  /** pull of a coat that has not begun to set, N/m */
  readonly freshPull: number;
  /** further pull of a set coat per unit of solids share, N/m */
  readonly setPull: number;
  /** how late that pull comes in as the coat sets */
  readonly setExponent: number;
  /** force at which the face of smooth dense binder's board comes away, N/m */
  readonly boardFace: number;
  /** water per gram of fibre at which a sheet has lost all the strength it can lose, g/g */
  readonly soakedWater: number;
  /** depth of paper, from the glued face, that resists together; behind it the sheet splits, µm */
  readonly holdingLayer: number;
  /** share of a coat's water that suction can take */
  readonly drainableShare: number;
  /** grammage that just bears a full bristle brush at 1 Pa·s under the brush, g/m² */
  readonly brushedGrammage: number;
  /** what a sheet bears grows as its grammage to this power */
  readonly bearingExponent: number;
}

/**
 * The likeliest of the sets in ensemble.ts. Calibrated to `bench-outcomes`, all at once; `drainableShare` was held
 * fixed (from memory: 0.6–0.95).
 */
export const BOND_CONSTANTS: BondConstants = {
  mobilityAtOnePascalSecond: 0.434,
  mobilityExponent: 0.235,
  tearShare: 0.396,
  freshPull: 8.27,
  setPull: 269,
  setExponent: 2.79,
  boardFace: 119,
  soakedWater: 0.779,
  holdingLayer: 179,
  drainableShare: 0.85,
  brushedGrammage: 20.1,
  bearingExponent: 2.9,
};

/** Where the chain let each constant lie, from memory; one whose sets crowd an edge is not pinned down. */
export const SEARCHED: Readonly<Record<keyof BondConstants, readonly [low: number, high: number] | 'fixed'>> = {
  mobilityAtOnePascalSecond: [0.1, 0.8],
  mobilityExponent: [0.2, 0.6],
  tearShare: [0.02, 0.4],
  freshPull: [5, 100],
  setPull: [50, 1500],
  setExponent: [1, 3],
  boardFace: [50, 700],
  soakedWater: [0.3, 1],
  holdingLayer: [60, 300],
  drainableShare: 'fixed',
  brushedGrammage: [8, 60],
  bearingExponent: [1, 3],
};

/** Setting progress at which the sheet can no longer be slid. Common practice, no source: a plain white glue grabs well before it is dry. */
export const GRAB_LEVEL = 0.7;

/** Slip times are not followed past an hour: by then the room decides. */
export const LONGEST_SLIP_SECONDS = 3600;

/** Share of open-face evaporation that gets out through a sheet laid on the coat. From memory. */
export const SHEET_BREATHES = 0.5;

/** Alcohol against water: it wets about half as fast (surface tension and viscosity) and hardly swells fibre. From memory. */
export const ALCOHOL = { suction: 0.5, swelling: 0.2 };
