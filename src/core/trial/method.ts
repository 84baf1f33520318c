/**
 * How swatches were made, as far as a trial says: with which tool, on which side, how thick. How long a pasted sheet waits
 * is not asked: the model knows no difference that it would make to what a swatch shows.
 */
import type { Swatch, SwatchFace, SwatchMethod, Trial } from './record';

/** What is said of a tool, or of a side, that the shelf does not hold: the model cannot be asked about such a swatch. */
export const OTHER = 'other';

/** Where the glue of a swatch goes: "on the board". */
export const FACE_WORDS: Readonly<Record<SwatchFace, string>> = {
  sheet: 'on the paper',
  'sheet-on-support': 'on the paper, laid out on glass or film',
  ground: 'on the board',
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
    face === 'sheet' ? '' : `the glue ${FACE_WORDS[face]}`,
    coat === undefined ? '' : `${coat}\u00a0g/m² wet`,
  ]
    .filter(Boolean)
    .join('; ');
}
