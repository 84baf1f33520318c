/** The sheets a class needs, and how they are cut. */
import { cutPlanFor, USUAL_STOCKS, type CutPlan } from '../cut/plan';
import type { MakePiece, Stock } from '../make/piece';
import { sheetStockOf, toCut } from '../handover/make-to-cut';
import type { InputError } from '../base/result';
import { kitsOf, SHEET_FIELDS, type ClassPlan } from './plan';

/** The cutting plan for what the whole class covers. */
export function classCutPlan(plan: ClassPlan, pieces: readonly MakePiece[]): CutPlan {
  const sheet = (stock: Stock) => {
    const [wide, high, grain] = SHEET_FIELDS[stock];
    return {
      ...USUAL_STOCKS[stock],
      widthMm: plan[wide] as number,
      heightMm: plan[high] as number,
      grain: plan[grain] as 'long',
    };
  };
  return cutPlanFor(toCut(pieces), {
    kits: kitsOf(plan),
    unit: plan.unit,
    stocks: { board: sheet('board'), paper: sheet('paper'), cloth: sheet('cloth'), lining: sheet('lining') },
  });
}

/** A piece that its sheet does not hold is said beside the sheet's fields. */
export function besideSheet(problems: readonly InputError[], pieces: readonly MakePiece[]): readonly InputError[] {
  const said = problems.map((problem): InputError => {
    const [, row, cell] = /^piece-(\d+)-(\w+)$/.exec(problem.field) ?? [];
    const piece = row === undefined ? undefined : pieces[Number(row)];
    if (!piece)
      return { ...problem, field: problem.field === 'kits' || problem.field === 'pieces' ? 'people' : problem.field };
    const [wide, high, grain] = SHEET_FIELDS[sheetStockOf(piece)];
    return { ...problem, field: cell === 'grain' ? grain : cell === 'high' ? high : wide };
  });
  // One message a field: the first piece that does not fit stands for the others.
  return said.filter(({ field }, i) => said.findIndex((one) => one.field === field) === i);
}
