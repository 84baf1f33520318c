/** Where a page stands: the pages above it, from the widest, for the line over its title. */
export type Trail = readonly (readonly [path: `/${string}`, name: string])[];

export const CALCULATORS_TRAIL: Trail = [['/calculators/', 'Calculators']];
