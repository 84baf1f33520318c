/** Pieces of a case: boards, spine strip and covering. A notebook and a portfolio have one alike. */
import type { MakePlan } from './fields';
import type { Measured } from './measures';
import { allRound, NO_TURN, piece, type MakePiece } from './piece';
import { caseSizes, type CaseSizes } from '../base/board-sizes';
import { thicknessOf } from './plan';

/** The case of this plan round leaves or contents of this size. */
export const caseOf = (plan: MakePlan, m: Measured): CaseSizes =>
  caseSizes({ width: plan.width + m.slackWidth, height: plan.height + m.slackHeight }, m);

/** The pieces of a case: two boards, spine, cover and paste-downs. */
export function casePieces(plan: MakePlan, m: Measured): MakePiece[] {
  const { board, spine, open } = caseOf(plan, m);
  const t = m.turnIn;
  const boards = [
    piece('board', 'board', board.width, board.height, { count: 2 }),
    piece('spine strip', 'board', spine, board.height),
  ];
  if (plan.cover === 'full')
    return [...boards, piece('cover', plan.stock, open, board.height, { turnIn: allRound(t) })];
  return [
    ...boards,
    piece('spine cloth', 'cloth', spine + 2 * (m.joint + m.onBoard), board.height, {
      turnIn: { ...NO_TURN, top: t, bottom: t },
    }),
    piece('side', plan.stock, board.width - m.onBoard + m.lap, board.height, {
      count: 2,
      turnIn: { top: t, right: t, bottom: t, left: 0 },
    }),
  ];
}

/** A case, the endpapers whose outer leaves are pasted down in it, and what goes on the back of the block. */
export function notebookPieces(plan: MakePlan, m: Measured): MakePiece[] {
  const { width, height, back } = plan;
  const thick = thicknessOf(plan);
  const backs = {
    none: [],
    lining: [piece('spine lining', 'paper', thick, height, { inside: true })],
    // A tube of three widths: one lies on the block, two make the hollow and are glued together and to nothing else.
    hollow: [
      piece('hollow', 'paper', 3 * thick, height, {
        inside: true,
        gluedFaces: 2,
        gluedPart: { widthMm: thick, heightMm: height },
      }),
    ],
  } as const;
  return [
    ...casePieces(plan, m),
    piece('endpaper, folded once', 'paper', 2 * width, height, {
      count: 2,
      inside: true,
      gluedPart: { widthMm: width, heightMm: height },
    }),
    ...backs[back],
  ];
}

/** mm of a tie that lie under the lining. Common practice, no source. */
const TIE_HELD = 30;
const TIE_WIDE = 12;
/** mm of each flap that are glued on the board, and of the inner joint on each board. Common practice, no source. */
export const HELD = 25;

/** A case whose back board bears three flaps that fold over the contents. */
export function portfolioPieces(plan: MakePlan, m: Measured): MakePiece[] {
  const { board, spine } = caseOf(plan, m);
  const [wide, high] = [plan.width + m.slackWidth, plan.height + m.slackHeight];
  const deep = HELD + thicknessOf(plan) + m.slackThickness + m.flap;
  const pairs = Number(plan.ties);
  return [
    ...casePieces(plan, m),
    piece('inner joint', 'cloth', spine + 2 * (m.joint + HELD), board.height - 2 * m.margin),
    piece('flap at head and tail', 'paper', wide, deep, {
      count: 2,
      inside: true,
      grain: 'width',
      gluedPart: { widthMm: wide, heightMm: HELD },
    }),
    piece('flap at the fore-edge', 'paper', deep, high, { inside: true, gluedPart: { widthMm: HELD, heightMm: high } }),
    piece('lining', 'lining', board.width - 2 * m.margin, board.height - 2 * m.margin, { count: 2 }),
    ...(pairs > 0
      ? [
          piece('tie, of tape', 'cloth', TIE_WIDE, m.tie, {
            count: 2 * pairs,
            gluedPart: { widthMm: TIE_WIDE, heightMm: TIE_HELD },
          }),
        ]
      : []),
  ];
}
