/** How the swatch of a row of a spreadsheet was made, as the words of its cells say. */
import { parseNumber } from '../base/number-text';
import type { ColumnKey } from './columns';
import { OTHER, USUAL_METHOD } from './method';
import { numberIn } from './read-value';
import { TRIAL_LIMITS, type SwatchFace, type SwatchMethod } from './record';

/** How the swatch of a row was made. What cannot be read is said, and counts as another tool, never as the usual one. */
export function methodOfRow(
  cell: (key: ColumnKey) => string,
  tools: ReadonlyMap<string, string>,
  complain: (key: ColumnKey, message: string) => void,
): SwatchMethod {
  const shown = (key: ColumnKey) => `“${cell(key).slice(0, 40)}”`;
  const taken = 'the swatch counts as made with another tool';
  let unread = false;
  const read = <T>(key: ColumnKey, value: T | undefined, message: string): T | undefined => {
    if (cell(key) === '') return undefined;
    if (value === undefined) {
      unread = true;
      complain(key, message);
    }
    return value;
  };
  const tool = read(
    'tool',
    toolIn(cell('tool'), tools),
    `${shown('tool')} is no tool of the shelf (${[...tools.keys()].join(', ')}, ${OTHER}): ${taken}.`,
  );
  const face = read('face', faceIn(cell('face')), `${shown('face')} is not paper, board or support: ${taken}.`);
  const { low, high, unit } = TRIAL_LIMITS.coat;
  const coat = read(
    'coat',
    coatIn(cell('coat')),
    `${shown('coat')} must be a number from ${low} to ${high} ${unit}: ${taken}.`,
  );
  return {
    ...(unread ? { tool: OTHER } : tool !== undefined && { tool }),
    ...(face !== undefined && { face }),
    ...(coat !== undefined && { coat }),
  };
}

/** Words that people write for a side, beside our own. */
const FACES: Readonly<Record<string, SwatchFace>> = {
  sheet: 'sheet',
  paper: 'sheet',
  'sheet-on-support': 'sheet-on-support',
  support: 'sheet-on-support',
  ground: 'ground',
  board: 'ground',
};

/** The side that a cell of a spreadsheet names, or undefined. */
export function faceIn(cell: string): SwatchFace | undefined {
  const word = cell.trim().toLowerCase();
  return Object.hasOwn(FACES, word) ? FACES[word] : undefined;
}

/** The tool that a cell names by its id, its name, or the one word that only it has; undefined where it names none. */
export function toolIn(cell: string, tools: ReadonlyMap<string, string>): string | undefined {
  const word = cell.trim().toLowerCase();
  if (word === OTHER || tools.has(word)) return word;
  if (word === 'brush') return USUAL_METHOD.tool;
  const whole = [...tools].find(([, name]) => name.toLowerCase() === word);
  if (whole) return whole[0];
  const having = [...tools].filter(([, name]) =>
    name
      .toLowerCase()
      .split(/[^\p{L}]+/u)
      .includes(word),
  );
  return having.length === 1 ? having[0]![0] : undefined;
}

/** The coat of a cell, g/m²; undefined where it is no such number. */
export const coatIn = (cell: string): number | undefined =>
  numberIn(parseNumber(cell.replace(/\s*(?:gsm|g\/m[2²])$/i, '')), TRIAL_LIMITS.coat);
