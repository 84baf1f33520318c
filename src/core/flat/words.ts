/** A bow in words: how far, and towards which face. */
import { figure, formatAmount } from '../base/format';
import { BOW_ALLOWED } from '../joint/flatness';
import type { Direction } from '../joint/curl';
import { farEnd, rollsUp, worseOf, type Bow, type StageId } from './stages';

const NO_BREAK = '\u00a0';

/** Millimetres to a tenth below ten, whole above. */
export const tenths = (mm: number): string =>
  Math.abs(mm) < 9.95 ? figure(Number(Math.abs(mm).toFixed(1))) : formatAmount(Math.round(Math.abs(mm)), 9);

/** mm that a rule no longer shows. */
const FLAT = 0.05;
const flat = (mm: number): boolean => Math.abs(mm) < FLAT;

const eitherWay = ({ low, high }: Bow): boolean => low <= -FLAT && high >= FLAT;

/** "1.2 to 3 mm towards the paper"; of a range that lies on both sides, both. */
export function bowWords(bow: Bow): string {
  const { low, high } = bow;
  if (rollsUp(bow)) {
    const way = bow.middle > 0 ? 'towards the paper' : 'away from the paper';
    return `more than ${tenths(bow.middle)}${NO_BREAK}mm ${way}: it rolls up`;
  }
  if (flat(low) && flat(high)) return `flat within ${figure(FLAT, 1)}${NO_BREAK}mm`;
  if (eitherWay(bow)) return `${tenths(low)}${NO_BREAK}mm away to ${tenths(high)}${NO_BREAK}mm towards the paper`;
  const towards = low + high >= 0;
  const [from, to] = towards ? [tenths(Math.max(0, low)), tenths(high)] : [tenths(Math.min(0, high)), tenths(low)];
  const span = from === to ? to : `${from} to ${to}`;
  return `${span}${NO_BREAK}mm ${towards ? 'towards' : 'away from'} the paper`;
}

/** The same, short enough for a strip: "about 2.1 mm", "up to 3 mm, either way". */
export const bowBrief = (bow: Bow): string =>
  rollsUp(bow)
    ? `over ${tenths(bow.middle)}${NO_BREAK}mm`
    : eitherWay(bow)
      ? `up to ${tenths(farEnd(bow))}${NO_BREAK}mm, either way`
      : flat(bow.middle)
        ? 'flat'
        : `about ${tenths(bow.middle)}${NO_BREAK}mm`;

export const ACROSS: Readonly<Record<Direction, string>> = { width: 'over its width', height: 'over its height' };

export type Lies = 'flat' | 'nearly' | 'may-warp' | 'warps';

/** How the range stands to what the chooser lets pass, which is a share of the span. */
export function liesHow(bows: Readonly<Record<Direction, Bow>>): Lies {
  const bow = bows[worseOf(bows)];
  const far = farEnd(bow) / bow.span;
  if (far <= BOW_ALLOWED.flat) return 'flat';
  if (far <= BOW_ALLOWED.usual) return 'nearly';
  // the end that bows the less; 0 where the range lies on both sides
  const near = Math.max(0, bow.low, -bow.high) / bow.span;
  return near > BOW_ALLOWED.usual ? 'warps' : 'may-warp';
}

export const LIES_WORDS: Readonly<Record<Lies, string>> = {
  flat: 'It will lie flat',
  nearly: 'It will bow a little',
  'may-warp': 'It may warp',
  warps: 'It will warp',
};

/** The stages as the drawing and the table call them. */
export const STAGE_NAMES: Readonly<Record<StageId, string>> = {
  wet: 'wet, just laid',
  dry: 'dry, from the press',
  later: 'later, where it lives',
};
