/** What a person can use, from what they have ticked: adhesives as they are, and what can be mixed from ingredients. */
import type { Adhesive, Catalogue } from '../records/records';

/** Water is always there. */
const ALWAYS = new Set(['water']);

/**
 * Whether this adhesive is at hand. Ticked adhesives are meant as they stand. Once an ingredient is ticked that is no
 * adhesive by itself (methylcellulose powder, wheat starch), everything that can be mixed from what is ticked is at
 * hand too. When nothing but tools is ticked, everything is.
 */
export function isAtHand(adhesive: Adhesive, ticked: readonly string[], catalogue: Catalogue): boolean {
  const things = ticked.filter((id) => !catalogue.techniques.has(id));
  if (things.length === 0 || things.includes(adhesive.id)) return true;
  const mixing = things.some((id) => catalogue.ingredients.has(id) && !catalogue.adhesives.has(id));
  return mixing && canBeMixed(adhesive, new Set(things), catalogue);
}

function canBeMixed(adhesive: Adhesive, things: ReadonlySet<string>, catalogue: Catalogue): boolean {
  if (things.has(adhesive.id)) return true;
  if (adhesive.form === 'dry') return false;
  return adhesive.parts.every(({ of }) => {
    if (things.has(of) || ALWAYS.has(of)) return true;
    if (catalogue.ingredients.has(of)) return false;
    const inner = catalogue.adhesives.get(of);
    return inner !== undefined && canBeMixed(inner, things, catalogue);
  });
}
