/** What is said of a jar, whichever way its strength changes. */
import { figure, lowerFirst } from '../base/format';
import type { MixAnswer } from './answer';
import type { Fact } from '../base/fact';
import { likeness } from './words';
import type { Ingredient } from '../records/records';
import type { Step } from '../safety/hazards';
import { celluloseEtherViscosity } from '../adhesive/viscosity';

/** What a jar of this is called: the liquid, not the powder it was made from. */
export const jarName = ({ name }: Ingredient): string => lowerFirst(name.replace(/ (powder|granules)/, ''));

/** How water goes into what is in a jar: cold into all but a protein's jelly, which has to be melted for it. */
export const dilutingSteps = ({ gelsAt, madeAt }: Ingredient, stock: string, water: string): Step[] =>
  gelsAt && madeAt !== undefined
    ? [
        {
          text: `Melt ${stock} in a bath of hot water, at about ${madeAt} °C, and stir in the ${water} of water, warmed with it. Do not boil it.`,
          celsius: madeAt,
        },
        { text: 'Write the new strength and the date on the jar, and keep it covered and cold.', does: ['keep'] },
      ]
    : [
        {
          text: `Put ${stock} in a jar with room to stir. Add the ${water} of cold water in three goes, and stir each one in.`,
        },
        {
          text: 'A jelly takes up water slowly: let it stand for an hour, stir again, and write the new strength and the date on the jar.',
          does: ['keep'],
        },
      ];

/** Viscosity before and after, where the grade's law gives it. */
export function thickness({ thickening }: Ingredient, from: number, to: number): Fact[] {
  if (thickening.law !== 'cellulose-ether' || Math.max(from, to) > 10) return [];
  const at = (percent: number) =>
    celluloseEtherViscosity({ gradeMilliPascalSeconds: thickening.grade.middle, percent });
  return [
    {
      label: 'Viscosity',
      value: `${figure(at(to), 2)} mPa·s, ${likeness(at(to))}`,
      note: `${figure(at(from), 2)} mPa·s before; by the eighth-root law`,
    },
  ];
}

/** Where a strength stands on the curve of its grade; nothing for what has none. */
export const curveOf = ({ thickening }: Ingredient, percent: number): Pick<MixAnswer, 'curve'> =>
  thickening.law === 'cellulose-ether' ? { curve: { grade: thickening.grade.middle, percent } } : {};
