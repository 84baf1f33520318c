/** Pieces of slip cases and of boxes with a lid. */
import type { MakePlan } from './fields';
import type { Measured } from './measures';
import { allRound, piece, type MakePiece } from './piece';
import { thicknessOf } from './plan';
import { lidInside, slipCaseOutside, trayRound, withSlack, type Space, type Tray } from '../base/board-sizes';

/** The room inside a slip case or a tray. */
export const insideOf = (plan: MakePlan, m: Measured): Space =>
  withSlack(
    { width: plan.width, height: plan.height, thickness: thicknessOf(plan) },
    { width: m.slackWidth, height: m.slackHeight, thickness: m.slackThickness },
  );

/** Sides reach over the edges of back, top and bottom; the mouth is open. */
export function slipCasePieces(plan: MakePlan, m: Measured): MakePiece[] {
  const inside = insideOf(plan, m);
  const outside = slipCaseOutside(inside, plan.board);
  const lining = (name: string, width: number, height: number, count: number) =>
    piece(name, 'lining', width - 2 * m.margin, height - 2 * m.margin, { count });
  return [
    piece('side', 'board', outside.width, outside.height, { count: 2 }),
    piece('back', 'board', inside.thickness, outside.height),
    piece('top and bottom', 'board', inside.width, inside.thickness, { count: 2, grain: 'either' }),
    piece('cover of sides and back', plan.stock, 2 * outside.width + outside.thickness, outside.height, {
      turnIn: allRound(m.turnIn),
    }),
    piece('cover of top and bottom', plan.stock, outside.width, outside.thickness, { count: 2, grain: 'either' }),
    ...(plan.lined === 'yes'
      ? [
          lining('lining of a side', inside.width, inside.height, 2),
          lining('lining of the back', inside.thickness, inside.height, 1),
          { ...lining('lining of top and bottom', inside.width, inside.thickness, 2), grain: 'either' as const },
        ]
      : []),
  ];
}

/** The tray of this box, mm. */
export const trayOf = (plan: MakePlan, m: Measured): Tray => trayRound(insideOf(plan, m), plan.board);

/** The lid of this box, mm: it goes over the covered tray. */
export const lidOf = (plan: MakePlan, m: Measured): Tray =>
  trayRound(lidInside(trayOf(plan, m), m.lidDepth, m.lidRoom, m.covering), plan.board);

/** Walls stand round the base; the long ones reach over the ends of the short ones. */
export const liddedBoxPieces = (plan: MakePlan, m: Measured): MakePiece[] => [
  ...trayPieces(trayOf(plan, m), plan, m, 'tray', 'base'),
  ...trayPieces(lidOf(plan, m), plan, m, 'lid', 'top'),
];

function trayPieces({ inside, outside }: Tray, plan: MakePlan, m: Measured, of: string, flat: string) {
  const lining = (name: string, width: number, height: number) =>
    piece(`${of}: lining of the ${name}`, 'lining', width - 2 * m.margin, height - 2 * m.margin);
  return [
    piece(`${of}: ${flat}`, 'board', inside.width, inside.height),
    piece(`${of}: long wall`, 'board', outside.height, outside.thickness, { count: 2, grain: 'width' }),
    piece(`${of}: short wall`, 'board', inside.width, outside.thickness, { count: 2, grain: 'width' }),
    piece(`${of}: cover of the walls`, plan.stock, 2 * (outside.width + outside.height), outside.thickness, {
      turnIn: allRound(m.turnIn),
      grain: 'either',
    }),
    piece(`${of}: cover of the ${flat}`, plan.stock, outside.width, outside.height),
    ...(plan.lined === 'yes'
      ? [
          lining(flat, inside.width, inside.height),
          {
            ...lining('walls', 2 * (inside.width + inside.height), inside.thickness),
            grain: 'either' as const,
          },
        ]
      : []),
  ];
}
