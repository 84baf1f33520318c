/**
 * How swatches were made, as far as a trial says: with which tool, on which side, how thick. How long a pasted sheet waits
 * is not asked: the model knows no difference that it would make to what a swatch shows.
 */
import { parseNumber } from '../base/number-text';
import { idIn, isObject, numberIn, own } from './read-value';
import { TRIAL_LIMITS, type Swatch, type SwatchFace, type SwatchMethod, type Trial } from './record';

/** What is said of a tool, or of a side, that the shelf does not hold: the model cannot be asked about such a swatch. */
export const OTHER = 'other';

/** Which side got the glue. */
export const SWATCH_FACES = ['sheet', 'sheet-on-support', 'ground'] as const satisfies readonly SwatchFace[];

/** In a sentence: "the glue on the board". */
export const FACE_WORDS: Readonly<Record<SwatchFace, string>> = {
  sheet: 'the glue on the paper',
  'sheet-on-support': 'the glue on the paper, laid out on glass or film',
  ground: 'the glue on the board',
};

/** What nobody said is as usual: a full brush, on the paper. */
export const USUAL_METHOD = { tool: 'brush-full', face: 'sheet' } as const;

/** How this swatch was made: as it says itself, or else as its trial does. */
export const methodOf = (swatch: Pick<Swatch, 'method'>, trial: Pick<Trial, 'method'>): SwatchMethod =>
  swatch.method ?? trial.method ?? {};

/** The same for everything that was done alike, whether it was said or is usual. */
export const methodKey = ({ tool, face, coat }: SwatchMethod): string =>
  [tool ?? USUAL_METHOD.tool, face ?? USUAL_METHOD.face, coat ?? ''].join(' ');

/** The swatch said to be made so, in a trial whose other swatches are made as `trial` says. */
export function madeBy<S extends Swatch>(swatch: S, method: SwatchMethod, trial: Pick<Trial, 'method'>): S {
  const { method: _before, ...rest } = swatch;
  return (methodKey(method) === methodKey(trial.method ?? {}) ? rest : { ...rest, method }) as S;
}

/** A tool of the shelf by its id, turned into words: "full brush", "roller". */
export const toolInWords = (id: string): string => (id === OTHER ? 'another tool' : id.split('-').reverse().join(' '));

/** "full brush", "roller; the glue on the board; 60 g/m² wet": what is as usual is left out but for the tool. */
export function madeInWords({ tool = USUAL_METHOD.tool, face = 'sheet', coat }: SwatchMethod): string {
  return [
    toolInWords(tool),
    face === 'sheet' ? '' : FACE_WORDS[face],
    coat === undefined ? '' : `${coat}\u00a0g/m² wet`,
  ]
    .filter(Boolean)
    .join('; ');
}

export interface MethodRead {
  readonly method?: SwatchMethod;
  /** what could not be read: it counts as done in some other way, never as usual */
  readonly unread: readonly (keyof SwatchMethod)[];
}

/** The method in a value from a file. Never throws. */
export function readMethod(value: unknown): MethodRead {
  if (value === undefined) return { unread: [] };
  if (!isObject(value)) return { method: { tool: OTHER }, unread: ['tool'] };
  const said = (key: keyof SwatchMethod) => own(value, key);
  const [tool, face] = [idIn(said('tool')), SWATCH_FACES.find((one) => one === said('face'))];
  const coat = numberIn(said('coat'), TRIAL_LIMITS.coat);
  const unread = (['tool', 'face', 'coat'] as const).filter(
    (key) => said(key) !== undefined && { tool, face, coat }[key] === undefined,
  );
  const method: SwatchMethod = {
    ...(unread.length > 0 ? { tool: OTHER } : tool !== undefined && { tool }),
    ...(face !== undefined && { face }),
    ...(coat !== undefined && { coat }),
  };
  return { ...(Object.keys(method).length > 0 && { method }), unread };
}

/** Words that people write for a side, beside our own. */
const FACES: Readonly<Record<string, SwatchFace>> = {
  ...{ sheet: 'sheet', paper: 'sheet', 'sheet-on-support': 'sheet-on-support', support: 'sheet-on-support' },
  ...{ ground: 'ground', board: 'ground' },
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
