/** The plates of the shelf, by what they show; each lot has a page of its own. */
import { PLATES, PLATE_SETS, type PlateSet } from './plates';

const HEADS: Readonly<Record<PlateSet, readonly [head: string, about: string]>> = {
  spread: ['Putting the glue on', 'Which face gets it, on what it lies, and with which tool.'],
  lay: ['Laying, rubbing down, pressing', 'What the hands do once the glue is on.'],
  corner: ['Corners and turn-ins', 'A covered board, seen from inside.'],
  pot: ['In the pot', 'The steps of every recipe.'],
  cooking: ['Paste while it cooks', 'The same paste at five moments, and what of it runs off the spoon.'],
  test: ['Finding out about a sheet', 'Four ways to find the grain, and the drop test.'],
  repair: ['Pasting down, lining, mending, hinging', 'What is done to a leaf, a spine or a print.'],
  failure: ['What went wrong', 'Eight things to look for on a swatch, each with its name.'],
  tool: ['Tools', 'What stands on the bench.'],
  project: ['Things to make', 'Each finished, and in its parts.'],
};

export const plateSets = PLATE_SETS.map((set) => ({
  set,
  head: HEADS[set][0],
  about: HEADS[set][1],
  /** the one that stands for them all */
  sample: set === 'lay' ? 'rub-down' : Object.keys(PLATES).find((id) => PLATES[id]!.set === set)!,
  ids: Object.keys(PLATES).filter((id) => PLATES[id]!.set === set),
}));
