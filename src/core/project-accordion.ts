/** Pieces of an accordion with hard covers: the folded strip, and two boards covered one by one. */
import type { ProjectPlan } from './project-fields';
import type { Measured } from './project-measures';
import { allRound, piece, type ProjectPiece } from './project-piece';
import { panelBoard } from './project-sizes';

export interface Strips {
  /** panels of each strip, first to last */
  readonly panels: readonly number[];
  /** mm of all strips end to end, tabs included */
  readonly total: number;
}

/** Strips no longer than `sheet`, where one is given; every strip but the last has a tab that the next is glued on. */
export function stripsOf({ panels, width, sheet }: ProjectPlan, tab: number): Strips {
  if (sheet === undefined || sheet >= panels * width) return { panels: [panels], total: panels * width };
  const most = Math.max(1, Math.floor((sheet - tab) / width));
  // The last strip has no tab, and may hold one panel more for it.
  const last = Math.max(1, Math.floor(sheet / width));
  const counts: number[] = [];
  let left = panels;
  while (left > last) {
    counts.push(Math.min(most, left - 1));
    left -= counts.at(-1)!;
  }
  counts.push(left);
  return { panels: counts, total: panels * width + (counts.length - 1) * tab };
}

export function accordionPieces(plan: ProjectPlan, m: Measured): ProjectPiece[] {
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
  function strip(name: string, count: number, tab: number, glued: number): ProjectPiece {
    const what = `${name}, ${count} ${count === 1 ? 'panel' : 'panels'}${tab > 0 ? ' and a tab' : ''}`;
    return piece(what, 'paper', count * width + tab, height, { gluedPart: { widthMm: glued, heightMm: height } });
  }
  return [
    piece('board', 'board', board.width, board.height, { count: 2 }),
    piece('cover', stock, board.width, board.height, { count: 2, turnIn: allRound(m.turnIn) }),
    ...alike(strips),
  ];
}

/** Middle strips are cut alike: one row for all of them. */
function alike(strips: readonly ProjectPiece[]): ProjectPiece[] {
  if (strips.length < 4) return [...strips];
  const middle = strips[1]!;
  const same = strips.slice(1, -1).filter(({ widthMm }) => widthMm === middle.widthMm);
  const odd = strips.slice(1, -1).filter(({ widthMm }) => widthMm !== middle.widthMm);
  const name = middle.name.replace(/^strip \d+/, `strips 2 to ${same.length + 1}, each`);
  return [strips[0]!, { ...middle, name, count: same.length }, ...odd, strips.at(-1)!];
}
