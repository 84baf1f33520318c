/** Lengths as they are marked out with a rule: to half a millimetre, or to 1/32 in. */
import { inUnit, MILLIMETRES, type LengthUnit } from '../base/length-text';
import { cutSizeOf, type MakePiece } from './piece';
import { roundToStep } from '../base/rounding';

const STEPS: Readonly<Record<LengthUnit, number>> = { mm: 0.5, cm: 0.5, in: MILLIMETRES.in / 32 };

/** mm at the nearest mark of the rule; `mm` from 0. */
export const atMark = (mm: number, unit: LengthUnit): number => roundToStep(mm, STEPS[unit]);

/** The figure without its unit: "144", "14.4", "5 21/32". */
export const marked = (mm: number, unit: LengthUnit): string => inUnit(atMark(mm, unit), unit);

/** A length as it is marked on board: rounded to what a rule shows in this unit. */
export const withMark = (mm: number, unit: LengthUnit): string => `${marked(mm, unit)}\u00a0${unit}`;

/** What a piece is cut to: "369 × 252". */
export function cutText(piece: MakePiece, unit: LengthUnit): string {
  const { widthMm, heightMm } = cutSizeOf(piece);
  // "9 29/32" and what it belongs to stay on one line.
  return `${marked(widthMm, unit)} × ${marked(heightMm, unit)}`.replaceAll(' ', '\u00a0');
}

/**
 * A piece as it can be marked out: cut size, turn-ins and what is spread of it at marks of the rule. Rounded here, once,
 * so that a piece is of one size wherever it goes: in the table, on the sheet it is cut from, and where it is covered.
 */
export function atMarks(piece: MakePiece, unit: LengthUnit): MakePiece {
  const at = (mm: number) => atMark(mm, unit);
  const { widthMm, heightMm } = cutSizeOf(piece);
  const { top, right, bottom, left } = piece.turnIn;
  const turnIn = { top: at(top), right: at(right), bottom: at(bottom), left: at(left) };
  const tidy = (mm: number) => Number(mm.toPrecision(12));
  return {
    ...piece,
    turnIn,
    widthMm: tidy(at(widthMm) - turnIn.left - turnIn.right),
    heightMm: tidy(at(heightMm) - turnIn.top - turnIn.bottom),
    ...(piece.gluedPart && {
      gluedPart: { widthMm: at(piece.gluedPart.widthMm), heightMm: at(piece.gluedPart.heightMm) },
    }),
  };
}
