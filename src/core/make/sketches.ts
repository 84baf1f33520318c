/** The drawings of each project; cases and portfolios have a file of their own. */
import { stripsOf } from './accordion';
import { insideOf, lidOf, trayOf } from './box';
import type { ProjectId } from './projects';
import { allRound } from './piece';
import { notebook, portfolio, type Sketcher } from './sketch-case';
import { panelBoard, slipCaseOutside, type Tray } from '../base/board-sizes';
import { chain, cornerSketch, fold, mitred, rectangle, type Sketch } from './sketch';

const accordion: Sketcher = (plan, m) => {
  const { panels } = stripsOf(plan, m.tab);
  const [count, tab] = [panels[0]!, panels.length > 1 ? m.tab : 0];
  const board = panelBoard(plan.width, plan.height, m.square);
  const t = m.turnIn;
  return [
    {
      title:
        panels.length > 1 ? `Strip 1 of ${panels.length}; dashed are its folds` : 'The strip; dashed are its folds',
      shapes: [
        rectangle('sheet', 0, 0, count * plan.width + tab, plan.height),
        ...Array.from({ length: tab > 0 ? count : count - 1 }, (_, i) =>
          fold([(i + 1) * plan.width, 0], [(i + 1) * plan.width, plan.height]),
        ),
      ],
      dimensions: [
        ...chain('top', 0, [plan.width]),
        ...chain('top', count * plan.width, [tab]),
        ...chain('top', 0, [count * plan.width + tab], 1),
        ...chain('left', 0, [plan.height]),
      ],
    },
    {
      title: 'One cover, inside up',
      shapes: [
        mitred(0, 0, board.width, board.height, allRound(t), m.corner),
        rectangle('board', 0, 0, board.width, board.height),
        rectangle('sheet', m.square, m.square, plan.width, plan.height, 'paste-down'),
      ],
      dimensions: [
        ...chain('top', -t, [t, board.width, t]),
        ...chain('top', -t, [board.width + 2 * t], 1),
        ...chain('left', -t, [t, board.height, t]),
        ...chain('left', -t, [board.height + 2 * t], 1),
      ],
    },
    cornerSketch(t, m.corner),
  ];
};

const slipCase: Sketcher = (plan, m) => {
  const inside = insideOf(plan, m);
  const { width, height, thickness } = slipCaseOutside(inside, plan.board);
  const [b, t] = [plan.board, m.turnIn];
  const end = inside.thickness;
  return [
    {
      title: 'The boards, laid out as they meet',
      shapes: [
        rectangle('board', 0, 0, width, height, 'side'),
        rectangle('board', width, 0, inside.thickness, height, 'back'),
        rectangle('board', width + inside.thickness, 0, width, height, 'side'),
        rectangle('board', 0, -end, inside.width, end, 'top'),
        rectangle('board', 0, height, inside.width, end, 'bottom'),
      ],
      dimensions: [
        ...chain('top', 0, [inside.width], 0),
        ...chain('top', 0, [width, inside.thickness, width], 1),
        ...chain('left', -end, [end, height, end]),
      ],
    },
    {
      title: 'The cover of sides and back, inside up',
      shapes: [
        mitred(0, 0, 2 * width + thickness, height, allRound(t), m.corner),
        rectangle('board', 0, 0, width, height, 'side'),
        rectangle('board', width + b, 0, inside.thickness, height, 'back'),
        rectangle('board', width + thickness, 0, width, height, 'side'),
      ],
      dimensions: [
        ...chain('top', -t, [t, width, thickness, width, t]),
        ...chain('top', -t, [2 * (width + t) + thickness], 1),
        ...chain('left', -t, [t, height, t]),
        ...chain('left', -t, [height + 2 * t], 1),
      ],
    },
    cornerSketch(t, m.corner),
  ];
};

function traySketch(title: string, flat: string, { inside, outside }: Tray, board: number): Sketch {
  const { width, height } = inside;
  const wall = outside.thickness;
  return {
    title,
    shapes: [
      rectangle('board', 0, 0, width, height, flat),
      rectangle('board', 0, -wall, width, wall, 'short wall'),
      rectangle('board', 0, height, width, wall, 'short wall'),
      rectangle('board', -wall, -board, wall, outside.height, 'long wall'),
      rectangle('board', width, -board, wall, outside.height, 'long wall'),
    ],
    dimensions: [
      ...chain('top', -wall, [wall, width, wall]),
      ...chain('left', -wall, [wall, height, wall]),
      ...chain('left', -board, [outside.height], 1),
    ],
  };
}

const liddedBox: Sketcher = (plan, m) => [
  traySketch('The boards of the tray, laid out as they meet', 'base', trayOf(plan, m), plan.board),
  traySketch('The boards of the lid', 'top', lidOf(plan, m), plan.board),
  cornerSketch(m.turnIn, m.corner),
];

export const SKETCHES: Readonly<Record<ProjectId, Sketcher>> = {
  notebook,
  accordion,
  'slip-case': slipCase,
  'lidded-box': liddedBox,
  portfolio,
};
