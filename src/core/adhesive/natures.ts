/** What an adhesive is and how hot it gets, from what is in it: as much of what can hurt as decides which one suits. */
import type { Adhesive, Catalogue, Ingredient } from '../records/records';
import { BURNS_FROM } from '../safety/burns-from';
import type { Nature } from '../safety/hazards';

const ingredientsOf = new WeakMap<Catalogue, WeakMap<Adhesive, readonly Ingredient[]>>();

/** Everything that goes into an adhesive, down to its ingredients; none for one that comes ready. Kept by catalogue. */
export function everyIngredient(adhesive: Adhesive, catalogue: Catalogue): readonly Ingredient[] {
  let known = ingredientsOf.get(catalogue);
  if (!known) ingredientsOf.set(catalogue, (known = new WeakMap()));
  let found = known.get(adhesive);
  if (!found) known.set(adhesive, (found = gathered(adhesive, catalogue)));
  return found;
}

function gathered(adhesive: Adhesive, catalogue: Catalogue): readonly Ingredient[] {
  if (adhesive.form === 'dry') return [];
  const found = adhesive.parts.flatMap(({ of }) => {
    const ingredient = catalogue.ingredients.get(of);
    if (ingredient) return [ingredient];
    const mixed = catalogue.adhesives.get(of);
    return mixed ? everyIngredient(mixed, catalogue) : [];
  });
  return [...new Set(found)];
}

/** °C that some of it has to reach while it is made up or used; undefined where it is cold from beginning to end. */
export function hottest(adhesive: Adhesive, catalogue: Catalogue): number | undefined {
  const heats = [
    ...everyIngredient(adhesive, catalogue).flatMap(({ madeAt = [] }) => madeAt),
    ...(adhesive.form === 'wet' && adhesive.usedAt !== undefined ? [adhesive.usedAt] : []),
  ];
  return heats.length === 0 ? undefined : Math.max(...heats);
}

/** Whether somebody has to handle a liquid hot enough to burn, even if it is used cold. */
export const scalds = (adhesive: Adhesive, catalogue: Catalogue): boolean =>
  (hottest(adhesive, catalogue) ?? 0) >= BURNS_FROM;

/** What an adhesive is: of its own where it comes ready, else of all that is in it. */
export const naturesOf = (adhesive: Adhesive, catalogue: Catalogue): readonly Nature[] =>
  adhesive.form === 'dry' ? adhesive.hazards : everyIngredient(adhesive, catalogue).flatMap(({ hazards }) => hazards);

/** Whether it gives off vapour or mist that harms. */
export const hasFumes = (adhesive: Adhesive, catalogue: Catalogue): boolean =>
  naturesOf(adhesive, catalogue).some((nature) => nature === 'solvent' || nature === 'contact' || nature === 'mist');

/** Heat while gluing, as against heat to cook a paste that is then used cold. */
export function heatAtBench(adhesive: Adhesive): boolean {
  return adhesive.needsHeat && (adhesive.form === 'dry' || adhesive.usedAt !== undefined);
}
