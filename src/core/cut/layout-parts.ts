/** A pattern's tree as parts of a sheet in mm: cuts that follow each other the same way become one step. */
import type { SheetPart, PlacedPiece, SheetPiece, SheetPlan, StockSheet } from './layout-types';
import type { SheetsTaken } from './layout-best';
import type { Tree } from './layout-tree';
import { PER_MM, roomOf, SLACK } from './layout-units';

/** A run of the parent's length, from `from` to `to`. */
interface Run {
  readonly tree: Tree;
  readonly from: number;
  to: number;
}

/** One sheet as places and cuts in millimetres, from its tree of cuts. */
export function sheetPlan({ tree, times }: SheetsTaken, pieces: readonly SheetPiece[], stock: StockSheet): SheetPlan {
  const room = roomOf(stock);
  const placements: PlacedPiece[] = [];
  const offcuts: SheetPlan['offcuts'][number][] = [];
  const mm = (value: number): number => value / PER_MM;

  const partOf = (tree: Tree, x: number, y: number, w: number, h: number): SheetPart => {
    const box = { x: mm(x), y: mm(y), width: mm(w), height: mm(h) };
    if (tree.kind === 'offcut') {
      offcuts.push(box);
      return { ...box, becomes: { kind: 'offcut' } };
    }
    if (tree.kind === 'piece') {
      const { widthMm, heightMm } = pieces[tree.piece]!;
      const [width, height] = tree.way.turned ? [heightMm, widthMm] : [widthMm, heightMm];
      const placement = { piece: tree.piece, x: box.x, y: box.y, width, height, turned: tree.way.turned };
      placements.push(placement);
      return { ...box, becomes: { kind: 'piece', placement } };
    }
    const along = tree.axis === 'x';
    const [start, end] = along ? [x, x + w] : [y, y + h];
    const runs = joined(runsOf(tree, tree.axis, start, end, room.kerf));
    const at = runs.slice(0, -1).map(({ to }) => mm(to - start));
    const parts = runs
      .filter(({ from, to }) => to - from > SLACK)
      .map(({ tree: one, from, to }) =>
        along ? partOf(one, from, y, to - from, h) : partOf(one, x, from, w, to - from),
      );
    return { ...box, becomes: { kind: 'cut', axis: tree.axis, at, parts } };
  };

  const trim = Math.round((stock.trimMm ?? 0) * PER_MM);
  const part = partOf(tree, trim, trim, room.w - room.kerf - SLACK, room.h - room.kerf - SLACK);
  offcuts.sort((a, b) => b.width * b.height - a.width * a.height);
  return { times, part, placements, offcuts };
}

/** The runs that cuts along `axis` part a rectangle into, however deep they follow each other. */
function runsOf(tree: Tree, axis: 'x' | 'y', from: number, to: number, kerf: number): Run[] {
  if (tree.kind !== 'cut' || tree.axis !== axis) return [{ tree, from, to }];
  return [
    ...runsOf(tree.first, axis, from, from + tree.at - kerf, kerf),
    ...runsOf(tree.second, axis, from + tree.at, to, kerf),
  ];
}

/** Offcuts that lie side by side are one: nobody cuts between them. */
function joined(runs: readonly Run[]): readonly Run[] {
  const all: Run[] = [];
  for (const run of runs) {
    const last = all.at(-1);
    if (last?.tree.kind === 'offcut' && run.tree.kind === 'offcut') last.to = run.to;
    else all.push({ ...run });
  }
  return all;
}
