/** Small words and counts of a trial that every page of it shows. */
import { isDone, type Trial, type TrialPaper } from './record';

/** A paper with its weight: "lokta, 55 g/m²". */
export const paperWithWeight = ({ name, grammage }: TrialPaper): string =>
  grammage === undefined ? name : `${name}, ${Number(grammage.toPrecision(4))}\u00a0g/m²`;

/** An adhesive by its own name, and by its name on the shelf where that is another: ["Old pot", "EVA dispersion"]. */
export function glueNames(
  trial: Trial,
  glue: string,
  shelf: ReadonlyMap<string, string>,
): readonly [string, string | undefined] {
  const { name = glue, record = '' } = trial.glues.find(({ id }) => id === glue) ?? {};
  const title = shelf.get(record);
  return [name, title === name ? undefined : title];
}

/** Swatches judged to the end, set aside ones among them. */
export const doneCount = ({ swatches, questions }: Trial): number =>
  swatches.filter((swatch) => isDone(swatch, questions)).length;

/** "1 paper", "2 papers". */
export const count = (n: number, one: string, many = `${one}s`) => `${n} ${n === 1 ? one : many}`;
