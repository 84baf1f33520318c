/** One sheet's plan set out as a drawing, in the units of its own view box; and where every piece of it stands. */
import { inUnit, type LengthUnit } from '../base/length-text';
import type { CutStep } from './layout-order';
import type { SheetPlan, StockSheet } from './layout-types';

interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
interface Word {
  readonly x: number;
  readonly y: number;
  readonly text: string;
}

export interface SheetDrawing {
  readonly viewBox: string;
  readonly sheet: Rect;
  /** inside the trim; absent when nothing is trimmed */
  readonly trimmed?: Rect;
  readonly pieces: readonly Rect[];
  readonly labels: readonly Word[];
  readonly cuts: readonly { readonly x1: number; readonly y1: number; readonly x2: number; readonly y2: number }[];
  readonly cutNumbers: readonly Word[];
  /** the arrow along which the grain runs, and its word; absent when there is no grain to mind */
  readonly grain?: { readonly path: string; readonly word: Word };
  readonly width: Word;
  readonly height: Word;
}

const LONGEST = 400;
const WIDEST = 380;
const LEFT = 30;
const TOP = 30;
/** A piece narrower than this in the drawing has no room for its number; the table has it. */
const LEAST_FOR_LABEL = 9;

const round = (value: number): number => Number(value.toFixed(2));

/** A cut sheet as shapes and labels, in the units of its drawing. */
export function drawSheet(
  plan: SheetPlan,
  stock: StockSheet,
  steps: readonly CutStep[],
  unit: LengthUnit,
): SheetDrawing {
  const scale = Math.min(WIDEST / stock.widthMm, LONGEST / stock.heightMm);
  const rect = (x: number, y: number, width: number, height: number): Rect => ({
    x: round(LEFT + x * scale),
    y: round(TOP + y * scale),
    width: round(width * scale),
    height: round(height * scale),
  });
  const sheet = rect(0, 0, stock.widthMm, stock.heightMm);
  const trim = stock.trimMm ?? 0;
  const boxes = plan.placements.map(({ x, y, width, height }) => rect(x, y, width, height));
  const labels = boxes.flatMap(({ x, y, width, height }, i): Word[] =>
    Math.min(width, height) < LEAST_FOR_LABEL
      ? []
      : [{ x: round(x + width / 2), y: round(y + height / 2 + 4), text: String(plan.placements[i]!.piece + 1) }],
  );
  const lines = steps.flatMap(({ number, lines: own }) =>
    own.map(({ x1, y1, x2, y2 }) => {
      const [from, to] = [rect(x1, y1, 0, 0), rect(x2, y2, 0, 0)];
      return { number, line: { x1: from.x, y1: from.y, x2: to.x, y2: to.y } };
    }),
  );
  // Of numbers that would run into each other the first stays.
  const clear = (all: readonly Word[]): Word[] =>
    all.filter(
      ({ x, y, text }, i) =>
        !all.slice(0, i).some((one) => one.text === text && Math.abs(one.x - x) < 12 && Math.abs(one.y - y) < 11),
    );
  // A number stands at the near end of its line: outside the sheet where the line begins at the edge.
  const cutNumbers = lines.map(({ number, line: { x1, y1, x2 } }): Word => {
    const down = x1 === x2;
    const atEdge = down ? y1 - TOP < trim * scale + 1 : x1 - LEFT < trim * scale + 1;
    const text = String(number);
    if (down) return { x: x1, y: round(atEdge ? TOP - 5 : y1 + 9), text };
    return { x: round(atEdge ? LEFT - 10 : x1 + 8), y: round(y1 + 3.5), text };
  });
  return {
    viewBox: `0 0 ${round(LEFT + sheet.width + 56)} ${round(TOP + sheet.height + 26)}`,
    sheet,
    ...(trim > 0 && { trimmed: rect(trim, trim, stock.widthMm - 2 * trim, stock.heightMm - 2 * trim) }),
    pieces: boxes,
    labels,
    cuts: lines.map(({ line }) => line),
    cutNumbers: clear(cutNumbers),
    ...(stock.grain !== 'none' && { grain: grainArrow(sheet, stock) }),
    width: {
      x: round(sheet.x + sheet.width / 2),
      y: round(sheet.y + sheet.height + 16),
      text: `${inUnit(stock.widthMm, unit)} ${unit}`,
    },
    height: { x: round(sheet.x + sheet.width + 7), y: round(sheet.y + 14), text: inUnit(stock.heightMm, unit) },
  };
}

/** Whether the grain runs up and down the sheet as it is drawn. */
export const grainStands = ({ widthMm, heightMm, grain }: StockSheet): boolean =>
  (grain === 'long') === heightMm >= widthMm;

function grainArrow({ x, y, width, height }: Rect, stock: StockSheet): { path: string; word: Word } {
  const [right, middle] = [round(x + width), round(y + height / 2)];
  if (grainStands(stock)) {
    const at = right + 18;
    const [from, to] = [middle - 34, middle + 34];
    return {
      path: `M${at} ${from}V${to}M${at - 4} ${from + 7}L${at} ${from}l4 7M${at - 4} ${to - 7}L${at} ${to}l4 -7`,
      word: { x: right + 8, y: middle + 50, text: 'grain' },
    };
  }
  const [from, to] = [right + 8, right + 48];
  return {
    path: `M${from} ${middle}H${to}M${from + 7} ${middle - 4}L${from} ${middle}l7 4M${to - 7} ${middle - 4}L${to} ${middle}l-7 4`,
    word: { x: right + 10, y: middle + 18, text: 'grain' },
  };
}
