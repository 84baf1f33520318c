/**
 * Pieces out of sheets of one kind, with straight-through cuts and the grain kept: how many sheets, and how each is
 * cut. Guillotine cutting with unlimited stages; no library on offer locks the grain piece by piece and says the cuts.
 */
import { atOnce, type InTurns } from '../base/turns';
import { fail, ok, type Result } from '../base/result';
import { fitProblems } from './layout-fit';
import { sheetPlan } from './layout-parts';
import { search } from './layout-search';
import type { SheetLayout, SheetPiece, StockSheet } from './layout-types';
import { kindsOf, roomOf } from './layout-units';

/**
 * The plan. Lengths in mm, kits a whole number from 1. An error's field is 'pieces', 'stock', or the piece's row as
 * "0-wide" or "0-grain". Area and bounds count every piece of every kit. Deterministic.
 */
export function* layOutInTurns(
  stock: StockSheet,
  pieces: readonly SheetPiece[],
  kits = 1,
): InTurns<Result<SheetLayout>> {
  const problems = fitProblems(stock, pieces, kits);
  if (problems.length > 0) return fail(problems);
  const { plan, sheets, areaBound, bound } = yield* search(kindsOf(pieces, stock, kits), roomOf(stock), kits);
  const used = pieces.reduce((sum, { widthMm, heightMm, count }) => sum + widthMm * heightMm * count * kits, 0);
  return ok({
    plans: plan.map((one) => sheetPlan(one, pieces, stock)),
    sheets,
    waste: Math.max(0, 1 - used / (sheets * stock.widthMm * stock.heightMm)),
    areaBound,
    bound,
    proved: sheets === bound,
  });
}

/** The same in one go. */
export const layOut = (stock: StockSheet, pieces: readonly SheetPiece[], kits = 1): Result<SheetLayout> =>
  atOnce(layOutInTurns(stock, pieces, kits));
