/** From a coverage to the mix that it needs: the recipe on the shelf decides which kind of mixing it is. */
import type { CoverPlan } from '../cover/plan';
import { BASES, EXTENDERS, POWDERS, STARCHES } from '../mix/jars';
import { DEFAULT_MIX, type MixPlan } from '../mix/plan';
import type { Catalogue } from '../records/records';

const oneOf = <T extends string>(list: readonly T[], id: string | undefined): T | undefined =>
  list.find((one) => one === id);

/**
 * The mixing plan that makes `millilitres`, what to have in hand, with what stays in the pot already in it; undefined
 * where the adhesive is used as it comes.
 */
export function mixPlanFor(cover: CoverPlan, millilitres: number, catalogue: Catalogue): MixPlan | undefined {
  const adhesive = catalogue.adhesives.get(cover.adhesive);
  if (adhesive?.form !== 'wet' || adhesive.parts.length !== 2) return undefined;
  const [first, second] = [adhesive.parts[0]!, adhesive.parts[1]!];
  const need = Math.min(50000, Math.max(1, Number(millilitres.toPrecision(6))));
  const shared = { ...DEFAULT_MIX, need, loss: 0, paper: cover.paper, tool: cover.tool };
  const powder = oneOf(POWDERS, first.of);
  const starch = oneOf(STARCHES, first.of);
  const base = oneOf(BASES, first.of);
  const extender = oneOf(EXTENDERS, second.of);
  const [a, b] = [first.parts, second.parts];
  const inWater = second.of === 'water';
  if (powder && inWater) return { ...shared, kind: 'powder', powder, percent: (100 * a) / (a + b), basis: 'w/w' };
  if (starch && inWater && b / a >= 3 && b / a <= 10) {
    return { ...shared, kind: 'paste', starch, waterParts: b / a, by: adhesive.by, use: 'as-cooked' };
  }
  if (base && extender && adhesive.by === 'volume') {
    return { ...shared, kind: 'stretch', base, extender, aim: 'parts', baseParts: a, extenderParts: b, from: 'need' };
  }
  return undefined;
}
