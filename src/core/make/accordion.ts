/** Pieces of an accordion with hard covers: the folded strip, and two boards covered one by one. */
import type { MakePlan } from './fields';
import type { Measured } from './measures';
import { allRound, piece, type MakePiece } from './piece';
import { panelBoard } from '../base/board-sizes';

export interface Strips {
  /** panels of each strip, first to last */
  readonly panels: readonly number[];
  /** mm of all strips end to end, tabs included */
  readonly total: number;
}

/** Strips no longer than `sheet`, where one is given; every strip but the last has a tab that the next is glued on. */
export function stripsOf({ panels, width, sheet }: MakePlan, tab: number): Strips {
  if (sheet === undefined || sheet >= panels * width) return { panels: [panels], total: panels * width };
  const most = Math.max(1, Math.floor((sheet - tab) / width));
  // The last strip has no tab, and may hold one panel more for it.
  const last = Math.max(1, Math.floor(sheet / width));
  const counts: number[] = [];
  let left = panels;
  while (left > last) {
    counts.push(most);
    left -= most;
  }
  counts.push(left);
  return { panels: counts, total: panels * width + (counts.length - 1) * tab };
}

/** The pieces of an accordion book: folded strip, two boards and their covers. */
export function accordionPieces(plan: MakePlan, m: Measured): MakePiece[] {
  const { width, height, stock } = plan;
  const board = panelBoard(width, height, m.square);
  const { panels } = stripsOf(plan, m.tab);
  // The first and the last panel are pasted down on the covers; in between only the tabs take glue.
  const strips =
    panels.length === 1
      ? [strip('strip', panels[0]!, 0, 2 * width)]
      : panels.map((count, i) => {
          const isLast = i === panels.length - 1;
          return strip(
            `strip ${i + 1}`,
            count,
            isLast ? 0 : m.tab,
            (i === 0 || isLast ? width : 0) + (isLast ? 0 : m.tab),
          );
        });
  function strip(name: string, count: number, tab: number, glued: number): MakePiece {
    const what = `${name}, ${count} ${count === 1 ? 'panel' : 'panels'}${tab > 0 ? ' and a tab' : ''}`;
    return piece(what, 'paper', count * width + tab, height, {
      inside: true,
      gluedPart: { widthMm: glued, heightMm: height },
    });
  }
  return [
    piece('board', 'board', board.width, board.height, { count: 2 }),
    piece('cover', stock, board.width, board.height, { count: 2, turnIn: allRound(m.turnIn) }),
    ...alike(strips),
  ];
}

/** All strips between the first and the last are cut alike: one row for them. */
function alike(strips: readonly MakePiece[]): MakePiece[] {
  const [first, ...rest] = strips;
  const [middle, ...others] = rest.slice(0, -1);
  if (others.length === 0) return [...strips];
  const name = middle!.name.replace('strip 2', `strips 2 to ${others.length + 2}, each`);
  return [first!, { ...middle!, name, count: others.length + 1 }, rest.at(-1)!];
}
