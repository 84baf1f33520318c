/** From a project to the coverage of its glued pieces. */
import { DEFAULT_COVER, type CoverPlan } from './cover-plan';
import { encodePieces, MOST_PIECES } from './pieces-text';
import type { ProjectPlan } from './project-fields';
import { gluedPieces, type ProjectPiece } from './project-piece';

/** The coverage calculator's plan for these pieces; lengths to a tenth of a millimetre. */
export function coverPlanFor({ unit }: ProjectPlan, pieces: readonly ProjectPiece[]): CoverPlan {
  const tenth = (mm: number) => Number(mm.toFixed(1));
  const rows = gluedPieces(pieces).map(({ widthMm, heightMm, count, turnInMm }) => ({
    widthMm: Math.max(1, tenth(widthMm)),
    heightMm: Math.max(1, tenth(heightMm)),
    count,
    ...(typeof turnInMm === 'object' && {
      turnInMm: {
        top: tenth(turnInMm.top),
        right: tenth(turnInMm.right),
        bottom: tenth(turnInMm.bottom),
        left: tenth(turnInMm.left),
      },
    }),
  }));
  return { ...DEFAULT_COVER, thing: 'own', unit, pieces: encodePieces(rows.slice(0, MOST_PIECES)) };
}
