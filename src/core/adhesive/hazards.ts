/** The cautions of making an adhesive up and of using it, from what is in it and from how hot it gets. */
import type { Adhesive, Catalogue, Ingredient, Substrate } from '../records/records';
import { cautionsFor, gravestFirst, type Caution, type Step, type WorkDone } from '../safety/hazards';
import { everyIngredient, naturesOf } from './natures';

/** What making it up does: powders are tipped, and whatever has to be hot is heated. */
export function makingSteps(ingredients: readonly Ingredient[]): readonly Omit<Step, 'text'>[] {
  return ingredients.map(({ hazards, madeAt }) => ({
    does: hazards.includes('powder') ? (['pour-powder'] as const) : [],
    ...(madeAt !== undefined && { celsius: madeAt }),
  }));
}

/** Making it up and using it, as work: what a page about the adhesive has to warn of. */
export function adhesiveWork(adhesive: Adhesive, catalogue: Catalogue): WorkDone {
  const use =
    adhesive.form === 'dry'
      ? { does: adhesive.does ?? [] }
      : { does: [], ...(adhesive.usedAt && { celsius: adhesive.usedAt }) };
  return {
    steps: [...makingSteps(everyIngredient(adhesive, catalogue)), use],
    natures: naturesOf(adhesive, catalogue),
  };
}

/** What does not come undone with water is a decision for ever. */
const forEver = ({ undoneWithWater }: Adhesive): readonly Caution[] =>
  undoneWithWater === 'yes' ? [] : ['valued-original'];

/** Cautions of making an adhesive up, using it and keeping it. */
export const adhesiveCautions = (adhesive: Adhesive, catalogue: Catalogue): readonly Caution[] => {
  const { steps, natures = [] } = adhesiveWork(adhesive, catalogue);
  return gravestFirst([...forEver(adhesive), ...cautionsFor({ steps: [...steps, { does: ['keep'] }], natures })]);
};

/** Cautions of gluing with it: what is made up, laid on this ground, and pressed. */
export const layingCautions = (adhesive: Adhesive, ground: Substrate, catalogue: Catalogue): readonly Caution[] =>
  gravestFirst([
    ...forEver(adhesive),
    ...cautionsFor(adhesiveWork(adhesive, catalogue), { steps: [{ does: ['press'] }], natures: ground.hazards ?? [] }),
  ]);
