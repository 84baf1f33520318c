/**
 * A paper of one's own as one short text, which stands in a link wherever the id of a kind of paper can:
 * "chiyogami~92gsm~140um~25s~up~named Grey with cranes". Reading never throws.
 */
import type { JobPaper } from './asked-paper';
import { withinLimits } from '../base/limits';
import { PAPER_LIMITS } from './limits';
import { densityIsPossible } from './paper';
import { lowerFirst } from '../base/format';
import { PAPER_TEXT } from '../base/record-id';
import type { Catalogue, Sizing, Surface } from '../records/records';

export interface OwnPaper extends JobPaper {
  readonly name?: string;
  /** along which way of the sheet as it was held when it was tested */
  readonly grain?: 'height' | 'width' | 'none';
}

/** Letters of any script, digits, and what a shop's label needs. */
export const PAPER_NAME = /^[\p{L}\p{M}\p{N} .,;:()'’/°%+-]{0,40}$/u;

const UNITS = { gsm: 'grammage', um: 'caliper', s: 'dropSeconds', cobb: 'cobb' } as const;
const WORDS: Readonly<Record<string, Partial<OwnPaper>>> = {
  ...Object.fromEntries(
    (['smooth', 'textured', 'embossed'] satisfies Surface[]).map((surface) => [surface, { surface }]),
  ),
  ...Object.fromEntries(
    (['unsized', 'lightly-sized', 'sized', 'hard-sized', 'coated'] satisfies Sizing[]).map((sizing) => [
      sizing,
      { sizing },
    ]),
  ),
  runs: { coloursRun: true },
  fast: { coloursRun: false },
  up: { grain: 'height' },
  side: { grain: 'width' },
  nograin: { grain: 'none' },
};

/** The id alone when nothing of it was measured. */
export function writePaper(paper: OwnPaper): string {
  const { family, name, ...rest } = paper;
  const measured = Object.entries(UNITS).flatMap(([unit, field]) =>
    paper[field] === undefined ? [] : [`${paper[field]}${unit}`],
  );
  const words = Object.entries(WORDS).flatMap(([word, sets]) =>
    Object.entries(sets).every(([key, value]) => rest[key as keyof typeof rest] === value) ? [word] : [],
  );
  return [family, ...measured, ...words, ...(name ? [`named ${name}`] : [])].join('~');
}

/** The paper of a text, or undefined where the text is none. Its kind may still be unknown to the records. */
export function readPaper(text: string): OwnPaper | undefined {
  if (!PAPER_TEXT.test(text)) return undefined;
  const [family = '', ...parts] = text.split('~');
  let paper: OwnPaper = { family };
  for (const part of parts) {
    const found = partOf(part);
    if (!found) return undefined;
    paper = { ...paper, ...found };
  }
  return paper;
}

function partOf(part: string): Partial<OwnPaper> | undefined {
  if (Object.hasOwn(WORDS, part)) return WORDS[part];
  if (part.startsWith('named ')) {
    const name = part.slice(6);
    return name !== '' && PAPER_NAME.test(name) ? { name } : undefined;
  }
  const measured = /^(\d{1,5}(?:\.\d{1,3})?)(gsm|um|s|cobb)$/.exec(part);
  if (!measured) return undefined;
  const field = UNITS[measured[2] as keyof typeof UNITS];
  const value = Number(measured[1]);
  return withinLimits(field, value, PAPER_LIMITS[field]).ok ? { [field]: value } : undefined;
}

/** Whether a text names a paper that these records can speak of. */
export function isPaper(text: string, catalogue: Catalogue): boolean {
  const paper = readPaper(text);
  if (!paper || !catalogue.papers.has(paper.family)) return false;
  const weight = paper.grammage ?? catalogue.papers.get(paper.family)!.grammage.middle;
  return paper.caliper === undefined || densityIsPossible(weight, paper.caliper);
}

/** For a field that holds a paper of the shelf or of one's own. */
export const A_PAPER = { called: 'a paper', isOne: isPaper } as const;

/** What a paper is called: its own name, or that of its kind. The text must name one (`isPaper`). */
export function paperName(text: string, catalogue: Catalogue): string {
  const paper = readPaper(text)!;
  return paper.name ?? catalogue.papers.get(paper.family)!.name;
}

/** The same inside a sentence: an own name in quotation marks, a kind without its capital. */
export function paperInSentence(text: string, catalogue: Catalogue): string {
  const name = paperName(text, catalogue);
  return readPaper(text)!.name === undefined ? lowerFirst(name) : `“${name}”`;
}
