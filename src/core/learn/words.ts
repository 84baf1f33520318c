/** What swatches have changed, in sentences. */
import { chanceInTen } from '../base/format';
import type { Pair, Taught } from './taught';
import { LEAST_EFFECTIVE } from './reweigh';
import { POOL } from './versions';

/** "1 swatch", "8 swatches". */
export const swatchesInWords = (count: number): string => `${count} ${count === 1 ? 'swatch' : 'swatches'}`;

/** "your 8 swatches", "24 swatches of others", "your 8 swatches and 24 of others". */
function whose({ swatches, others }: Pick<Taught, 'swatches' | 'others'>): string {
  const own = swatches - others;
  if (own === 0) return `${swatchesInWords(others)} of others`;
  return `your ${swatchesInWords(own)}${others > 0 ? ` and ${others} of others` : ''}`;
}

/** "most of it from lokta with PVA": empty where nothing moved. `nameOf` gives an adhesive's name. */
export function mostlyFrom(pairs: readonly Pair[], nameOf: (adhesiveId: string) => string): string {
  const [first] = pairs;
  const all = pairs.reduce((sum, { share }) => sum + share, 0);
  if (!first || pairs.length < 2 || all < 1e-6) return '';
  const from = `from ${first.paperName} with ${nameOf(first.adhesive)}`;
  return first.share * 2 >= all ? `most of it ${from}` : `first of all ${from}`;
}

export interface Before {
  readonly adhesiveId: string;
  readonly chance: number;
}

/** What the answer was, what it is with the swatches, and from which of them. */
export function changeInWords(
  before: Before,
  now: Before,
  nowBefore: number,
  taught: Pick<Taught, 'swatches' | 'others'>,
  pairs: readonly Pair[],
  nameOf: (adhesiveId: string) => string,
): string {
  const told = whose(taught);
  const from = mostlyFrom(pairs, nameOf);
  const tail = from === '' ? '.' : `, ${from}.`;
  const [was, is] = [chanceInTen(nowBefore), chanceInTen(now.chance)];
  if (before.adhesiveId !== now.adhesiveId)
    return `By the model alone ${nameOf(before.adhesiveId)} stands first. With ${told} it is ${nameOf(now.adhesiveId)}: ${was} for such papers, ${is} with the swatches${tail}`;
  if (was === is)
    return `${nameOf(now.adhesiveId)}: ${was} for such papers, and ${told} ${taught.swatches === 1 ? 'leaves' : 'leave'} it there.`;
  return `${nameOf(now.adhesiveId)}: ${was} for such papers; with ${told} ${is}${tail}`;
}

/** How the weighing went: how much of the ensemble still counts, and whether it was softened. */
export function weighingInWords({ effective, softened }: Taught): string {
  const count = `Of ${POOL} versions of a bench, about ${Math.round(effective)} still have a say.`;
  return softened < 0.995
    ? `${count} Left to themselves the swatches would have struck out more; fewer than ${LEAST_EFFECTIVE} are never left, so they were let count for less.`
    : count;
}
