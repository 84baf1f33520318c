/** The sheets a class needs, and how they are cut. */
import { cutPlanFor, USUAL_STOCKS, type CutPlan, type ToCut } from './cut-plan';
import { cutSizeOf, type ProjectPiece, type Stock } from './project-piece';
import type { InputError } from './result';
import { kitsOf, SHEET_FIELDS, type WorkshopPlan } from './workshop-plan';

/** Endpapers and strips are cut from the same sheets as linings, not from the covering. */
const stockOf = ({ stock, inside }: ProjectPiece): Stock => (inside ? 'lining' : stock);

/** All pieces of one kit as they are cut, turn-ins included. */
const toCut = (pieces: readonly ProjectPiece[]): ToCut[] =>
  pieces.map((piece) => ({
    ...cutSizeOf(piece),
    ...{ name: piece.name, stock: stockOf(piece), count: piece.count, grain: piece.grain },
  }));

export function classCutPlan(plan: WorkshopPlan, pieces: readonly ProjectPiece[]): CutPlan {
  const sheet = (stock: Stock) => {
    const [wide, high, grain] = SHEET_FIELDS[stock];
    return {
      ...USUAL_STOCKS[stock],
      ...{ widthMm: plan[wide] as number, heightMm: plan[high] as number, grain: plan[grain] as 'long' },
    };
  };
  return cutPlanFor(toCut(pieces), {
    kits: kitsOf(plan),
    unit: plan.unit,
    stocks: { board: sheet('board'), paper: sheet('paper'), cloth: sheet('cloth'), lining: sheet('lining') },
  });
}

/** A piece that its sheet does not hold is said beside the sheet's fields. */
export function besideSheet(problems: readonly InputError[], pieces: readonly ProjectPiece[]): readonly InputError[] {
  const said = problems.map((problem): InputError => {
    const [, row, cell] = /^piece-(\d+)-(\w+)$/.exec(problem.field) ?? [];
    const piece = row === undefined ? undefined : pieces[Number(row)];
    if (!piece)
      return { ...problem, field: problem.field === 'kits' || problem.field === 'pieces' ? 'people' : problem.field };
    const [wide, high, grain] = SHEET_FIELDS[stockOf(piece)];
    return { ...problem, field: cell === 'grain' ? grain : cell === 'high' ? high : wide };
  });
  // One message a field: the first piece that does not fit stands for the others.
  return said.filter(({ field }, i) => said.findIndex((one) => one.field === field) === i);
}
