/** Judges of cutting plans that share nothing with the code that makes them. */
import fc from 'fast-check';
import type { PlacedPiece, SheetPiece, StockSheet } from '../../../src/core/cut/layout-types';

/** What a fit may be short of, mm: the plan's own allowance for fractions of an inch. */
const SLACK = 0.06;

interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

const boxOf = ({ x, y, width, height }: PlacedPiece): Box => ({ x, y, w: width, h: height });

/** Whether straight cuts from edge to edge, each as wide as the kerf, can part these boxes. Knows places only, no cuts. */
export function isGuillotine(boxes: readonly Box[], kerf: number): boolean {
  if (boxes.length <= 1) return true;
  for (const axis of ['x', 'y'] as const) {
    const start = (box: Box) => (axis === 'x' ? box.x : box.y);
    const end = (box: Box) => (axis === 'x' ? box.x + box.w : box.y + box.h);
    const sorted = [...boxes].sort((a, b) => start(a) - start(b));
    let reach = -Infinity;
    for (let i = 0; i < sorted.length; i += 1) {
      if (i > 0 && start(sorted[i]!) >= reach + kerf - SLACK)
        return isGuillotine(sorted.slice(0, i), kerf) && isGuillotine(sorted.slice(i), kerf);
      reach = Math.max(reach, end(sorted[i]!));
    }
  }
  return false;
}

/** Everything wrong with where the pieces of one sheet lie. */
export function faultsOf(
  placements: readonly PlacedPiece[],
  stock: StockSheet,
  pieces: readonly SheetPiece[],
): readonly string[] {
  const { trimMm = 0, kerfMm = 0 } = stock;
  const faults: string[] = [];
  placements.forEach((one, i) => {
    const { x, y, w, h } = boxOf(one);
    if (x < trimMm - 1e-9 || y < trimMm - 1e-9) faults.push(`${i} lies in the trim`);
    if (x + w > stock.widthMm - trimMm + SLACK || y + h > stock.heightMm - trimMm + SLACK)
      faults.push(`${i} lies outside`);
    const piece = pieces[one.piece]!;
    const size = one.turned ? [piece.heightMm, piece.widthMm] : [piece.widthMm, piece.heightMm];
    if (w !== size[0] || h !== size[1]) faults.push(`${i} is not its own size`);
    if (piece.grain !== 'either' && stock.grain !== 'none') {
      // The sheet's grain runs up and down when it is along the longer side and that side stands, or neither.
      const standing = stock.heightMm >= stock.widthMm;
      const upright = stock.grain === 'long' ? standing : !standing;
      const pieceUpright = (piece.grain === 'height') !== one.turned;
      if (upright !== pieceUpright) faults.push(`${i} has its grain the wrong way`);
    }
    placements.slice(i + 1).forEach((other, j) => {
      const box = boxOf(other);
      const apart =
        box.x >= x + w + kerfMm - SLACK ||
        x >= box.x + box.w + kerfMm - SLACK ||
        box.y >= y + h + kerfMm - SLACK ||
        y >= box.y + box.h + kerfMm - SLACK;
      if (!apart) faults.push(`${i} and ${i + 1 + j} overlap`);
    });
  });
  if (!isGuillotine(placements.map(boxOf), kerfMm)) faults.push('no straight-through cuts part it');
  return faults;
}

/** One piece to be cut, with the ways it may lie. */
export type Loose = readonly (readonly [w: number, h: number])[];

/** Whether one sheet of whole-numbered size holds all of these: tries every cut at every whole distance. No kerf. */
export function oneSheetHolds(pieces: readonly Loose[], width: number, height: number): boolean {
  if (pieces.length === 0) return true;
  if (pieces.length === 1) return pieces[0]!.some(([w, h]) => w <= width && h <= height);
  const halves = 2 ** pieces.length;
  for (let mask = 1; mask < halves - 1; mask += 1) {
    const [a, b] = [0, 1].map((side) => pieces.filter((_, i) => ((mask >> i) & 1) === side)) as [Loose[], Loose[]];
    for (let at = 1; at < width; at += 1)
      if (oneSheetHolds(a, at, height) && oneSheetHolds(b, width - at, height)) return true;
    for (let at = 1; at < height; at += 1)
      if (oneSheetHolds(a, width, at) && oneSheetHolds(b, width, height - at)) return true;
  }
  return false;
}

/** The fewest sheets, by trying every way to share the pieces out. For a handful of small ones. */
export function fewestByTrying(pieces: readonly Loose[], width: number, height: number): number {
  let fewest = pieces.length;
  const share = (i: number, sheets: Loose[][]): void => {
    if (sheets.length >= fewest) return;
    if (i === pieces.length) {
      if (sheets.every((sheet) => oneSheetHolds(sheet, width, height))) fewest = sheets.length;
      return;
    }
    sheets.forEach((_, n) =>
      share(
        i + 1,
        sheets.map((sheet, m) => (m === n ? [...sheet, pieces[i]!] : sheet)),
      ),
    );
    share(i + 1, [...sheets, [pieces[i]!]]);
  };
  share(0, []);
  return fewest;
}

const grain = fc.constantFrom('height', 'width', 'either');

/** A job in which every piece fits its sheet: sizes in whole mm or in sixteenths of an inch. */
export const anyJob = fc
  .record({
    wide: fc.integer({ min: 120, max: 1200 }),
    high: fc.integer({ min: 120, max: 1200 }),
    stockGrain: fc.constantFrom('long', 'short', 'none'),
    trimMm: fc.constantFrom(0, 0, 5, 12.5),
    kerfMm: fc.constantFrom(0, 0, 1, 3),
    kits: fc.integer({ min: 1, max: 6 }),
    inch: fc.boolean(),
    rows: fc.array(
      fc.record({
        across: fc.integer({ min: 5, max: 100 }),
        down: fc.integer({ min: 5, max: 100 }),
        count: fc.integer({ min: 1, max: 6 }),
        grain,
      }),
      { minLength: 1, maxLength: 8 },
    ),
  })
  .map(({ wide, high, stockGrain, trimMm, kerfMm, kits, inch, rows }) => {
    const stock = { widthMm: wide, heightMm: high, grain: stockGrain, trimMm, kerfMm } as StockSheet;
    // Whichever way it lies, a piece no longer than the shorter side fits.
    const most = Math.min(wide, high) - 2 * trimMm;
    const length = (percent: number) =>
      inch
        ? Math.max(1, Math.floor((most * percent) / 100 / (25.4 / 16))) * (25.4 / 16)
        : Math.max(1, Math.floor((most * percent) / 100));
    const pieces = rows.map(({ across, down, count, grain: way }, i) => ({
      name: `piece ${i + 1}`,
      widthMm: length(across),
      heightMm: length(down),
      count,
      grain: way,
    })) as SheetPiece[];
    return { stock, pieces, kits };
  });
