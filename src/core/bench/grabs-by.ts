/** What the card of the strip is about: its size, and which ingredient of an adhesive it speaks of. */
import type { Catalogue, Ingredient, WetAdhesive } from '../records/records';

/** The strip that the card asks for, mm. */
export const STRIP = { widthMm: 30, heightMm: 150 } as const;
/** The one ingredient by which an adhesive grabs; undefined for a mix of several, which follows from its ingredients. */
export function grabsBy({ parts }: WetAdhesive, catalogue: Catalogue): Ingredient | undefined {
  const opened = parts.map(({ of }) => catalogue.ingredients.get(of));
  const grabbing = opened.filter((one) => one?.grabSolids !== undefined);
  return opened.every(Boolean) && grabbing.length === 1 ? grabbing[0] : undefined;
}
