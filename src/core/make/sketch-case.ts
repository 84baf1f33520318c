/** Drawings of what has a case: notebooks and portfolios. */
import type { Sides } from '../base/piece';
import { caseOf, HELD } from './case';
import type { MakePlan } from './fields';
import type { Measured } from './measures';
import { allRound } from './piece';
import { thicknessOf } from './plan';
import { chain, cornerSketch, fold, mitred, rectangle, type SketchShape, type Sketch } from './sketch';

export type Sketcher = (plan: MakePlan, m: Measured) => readonly Sketch[];

function caseSketch(plan: MakePlan, m: Measured): Sketch {
  const { board, spine, open } = caseOf(plan, m);
  const [t, j, high] = [m.turnIn, m.joint, board.height];
  const atSpine = board.width + j;
  const second = atSpine + spine + j;
  const side = (x: number, width: number, turn: Partial<Sides>) =>
    mitred(x, 0, width, high, { top: t, bottom: t, left: 0, right: 0, ...turn }, m.corner);
  const reach = board.width - m.onBoard;
  const covering: SketchShape[] =
    plan.cover === 'full'
      ? [mitred(0, 0, open, high, allRound(t), m.corner)]
      : [
          rectangle('cover', reach, -t, open - 2 * reach, high + 2 * t),
          side(0, reach + m.lap, { left: t }),
          side(open - reach - m.lap, reach + m.lap, { right: t }),
        ];
  return {
    title:
      plan.cover === 'full' ? 'The case laid open, inside up' : 'The case laid open: cloth over the spine, two sides',
    shapes: [
      ...covering,
      rectangle('board', 0, 0, board.width, high, 'board'),
      rectangle('board', atSpine, 0, spine, high, 'spine strip'),
      rectangle('board', second, 0, board.width, high, 'board'),
    ],
    dimensions: [
      ...chain('top', -t, [t, board.width, j, spine, j, board.width, t]),
      ...chain('top', -t, [open + 2 * t], 1),
      ...chain('left', -t, [t, high, t]),
      ...chain('left', -t, [high + 2 * t], 1),
    ],
  };
}

/** A case as a sketch: boards, spine and the cover round them. */
export const notebook: Sketcher = (plan, m) => [caseSketch(plan, m), cornerSketch(m.turnIn, m.corner)];

/** A portfolio as a sketch: two boards, a spine and flaps. */
export const portfolio: Sketcher = (plan, m) => {
  const [wide, high] = [plan.width + m.slackWidth, plan.height + m.slackHeight];
  const wall = thicknessOf(plan) + m.slackThickness;
  const reach = wall + m.flap;
  return [
    caseSketch(plan, m),
    {
      title: 'The flaps, folded out round what goes in; dashed are their folds',
      shapes: [
        rectangle('sheet', 0, 0, wide, high, 'contents'),
        rectangle('cover', 0, -reach, wide, reach + HELD),
        rectangle('cover', 0, high - HELD, wide, reach + HELD),
        rectangle('cover', wide - HELD, 0, reach + HELD, high),
        rectangle('fold', 0, -reach, wide, m.flap, 'head flap'),
        rectangle('fold', 0, high + wall, wide, m.flap, 'tail flap'),
        rectangle('fold', wide + wall, 0, m.flap, high, 'fore-edge flap'),
        ...[0, -wall].map((y) => fold([0, y], [wide, y])),
        ...[high, high + wall].map((y) => fold([0, y], [wide, y])),
        ...[wide, wide + wall].map((x) => fold([x, 0], [x, high])),
      ],
      dimensions: [
        ...chain('top', 0, [wide - HELD, HELD, wall, m.flap]),
        ...chain('left', -reach, [m.flap, wall, HELD, high - 2 * HELD, HELD, wall, m.flap]),
      ],
    },
    cornerSketch(m.turnIn, m.corner),
  ];
};
