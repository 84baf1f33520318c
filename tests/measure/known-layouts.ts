/**
 * Cutting jobs whose count of sheets is known: each sheet is parted by straight-through cuts into pieces, and each piece
 * is then cut back, so that a layout with the waste asked for exists. A plan that takes more sheets has missed it.
 */
import { seededUniform } from '../../src/core/base/random';
import type { PieceGrain, SheetPiece, StockSheet } from '../../src/core/cut/layout-types';

export interface KnownJob {
  readonly stock: StockSheet;
  readonly pieces: readonly SheetPiece[];
  /** sheets of the layout that they were cut from */
  readonly sheets: number;
}

export interface KnownKind {
  readonly wastePercent: number;
  readonly pieces: number;
  readonly sheets: number;
}

const STOCK: StockSheet = { widthMm: 700, heightMm: 1000, grain: 'long' };

interface Box {
  readonly w: number;
  readonly h: number;
}

/** One cut through the part, between three and seven tenths of its way along, mostly across its longer side. */
function halves({ w, h }: Box, draw: () => number): readonly [Box, Box] {
  const share = 0.3 + 0.4 * draw();
  const across = draw() < 0.8 ? w >= h : w < h;
  const at = Math.round((across ? w : h) * share);
  return across
    ? [
        { w: at, h },
        { w: w - at, h },
      ]
    : [
        { w, h: at },
        { w, h: h - at },
      ];
}

/** Parts of so many sheets: the part to cut next is drawn by its area. */
function parted(sheets: number, pieces: number, draw: () => number): readonly Box[] {
  const parts: Box[] = Array.from({ length: sheets }, () => ({ w: STOCK.widthMm, h: STOCK.heightMm }));
  while (parts.length < pieces) {
    let at = draw() * parts.reduce((sum, { w, h }) => sum + w * h, 0);
    const i = parts.findIndex(({ w, h }) => (at -= w * h) < 0);
    const [part] = parts.splice(Math.max(0, i), 1);
    parts.push(...halves(part!, draw));
  }
  return parts;
}

/** Each part shorter by a drawn share of its width and of its height, all by as much as makes the waste; whole mm. */
function cutBack(parts: readonly Box[], waste: number, draw: () => number): readonly Box[] {
  const shares = parts.map(() => [draw(), draw()] as const);
  const by = (most: number) =>
    parts.map(({ w, h }, i) => ({
      w: Math.max(1, Math.floor(w * (1 - most * shares[i]![0]))),
      h: Math.max(1, Math.floor(h * (1 - most * shares[i]![1]))),
    }));
  const area = (boxes: readonly Box[]) => boxes.reduce((sum, { w, h }) => sum + w * h, 0);
  const [whole, wanted] = [area(parts), (1 - waste) * area(parts)];
  let [low, high] = [0, 0.9];
  if (whole <= wanted) return by(0);
  for (let step = 0; step < 40; step += 1) {
    const middle = (low + high) / 2;
    if (area(by(middle)) > wanted) low = middle;
    else high = middle;
  }
  return by(high);
}

/** The job of this kind with this number. Half of its pieces may turn, the others keep the sheet's grain. */
export function knownJob({ wastePercent, pieces, sheets }: KnownKind, number: number): KnownJob {
  const draw = seededUniform(wastePercent * 1_000_003 + pieces * 10_007 + sheets * 101 + number * 7_919);
  const boxes = cutBack(parted(sheets, pieces, draw), wastePercent / 100, draw);
  return {
    stock: STOCK,
    sheets,
    pieces: boxes.map(({ w, h }, i): SheetPiece => {
      const named = { name: `piece ${i + 1}`, count: 1 };
      const [free, lying] = [draw() < 0.5, draw() < 0.5];
      // the sheet stands and its grain runs up it: a piece written down lying has its grain along its width
      const grain: PieceGrain = free ? 'either' : lying ? 'width' : 'height';
      return lying ? { ...named, widthMm: h, heightMm: w, grain } : { ...named, widthMm: w, heightMm: h, grain };
    }),
  };
}

export const KINDS: readonly KnownKind[] = [23, 15, 8].flatMap((wastePercent) =>
  [10, 20, 40].flatMap((pieces) => [1, 2, 4].map((sheets) => ({ wastePercent, pieces, sheets }))),
);
