/** The sheets calculator's answer: how many sheets of each stock, what is left, and how each sheet is cut. */
import type { SheetAnswer, StockAnswer } from './stock-answer';
import { cutPiecesAreSound, stocksAreSound, type StockRow } from './codec';
import type { CutPlan } from './plan';
import { cutFacts } from './facts';
import type { Fact } from '../base/fact';
import { cutSentence, cutWarnings } from './words';
import { fail, ok, type InputError, type Result } from '../base/result';
import { atOnce, type InTurns } from '../base/turns';
import { layOutInTurns } from './layout';
import { fitProblems } from './layout-fit';
import { cutOrder } from './layout-order';
import { drawSheet } from './drawing';
import type { SheetPlan } from './layout-types';
import { formatAmount } from '../base/format';
import { cautionsFor, type Caution } from '../safety/hazards';
import { offcutWords, pieceName, placeRows, sheetLabel, type Own } from './table';
import { inUnit, type LengthUnit } from '../base/length-text';

export interface CutAnswer {
  readonly sentence: string;
  /** what was asked, in a few words: it stands for the form where that is folded */
  readonly asked: string;
  readonly brief: readonly [what: string, amount: string];
  readonly stocks: readonly StockAnswer[];
  readonly facts: readonly Fact[];
  readonly warnings: readonly string[];
  /** of knife and shear, and of the saw where a cut eats some of the sheet */
  readonly cautions: readonly Caution[];
  readonly figures: readonly number[];
}

/** In turns; what is wrong with a plan is said in the first of them. */
export function* cutAnswerInTurns(plan: CutPlan): InTurns<Result<CutAnswer>> {
  // What a link gives past its limits is as good as not given.
  const stocks = stocksAreSound(plan.stocks) ? plan.stocks : [];
  const pieces = cutPiecesAreSound(plan.pieces) ? plan.pieces : [];
  const numbered = pieces.map((piece, row) => ({ ...piece, row }));
  const problems: InputError[] = numbered
    .filter(({ stock }) => stock >= stocks.length)
    .map(({ row }) => ({
      field: `piece-${row}-stock`,
      code: 'unknown-id',
      message: `Piece ${row + 1} names a sheet that is not in the list: choose one that is.`,
    }));
  if (pieces.length === 0) problems.push({ field: 'pieces', code: 'empty', message: 'Give at least one piece.' });
  const asked = stocks.flatMap((stock, s) => {
    const own = numbered.filter((piece) => piece.stock === s);
    return own.length === 0 ? [] : [{ stock, s, own, name: stock.name || `sheet ${s + 1}` }];
  });
  for (const { stock, s, own } of asked) {
    const named = own.map((piece) => ({ ...piece, name: piece.name || `piece ${piece.row + 1}` }));
    const wrong = fitProblems({ ...stock, kerfMm: plan.kerf }, named, plan.kits, plan.unit);
    problems.push(...wrong.map((one) => ({ ...one, field: fieldOf(one.field, s, own) })));
  }
  if (problems.length > 0) return fail(problems);
  const answers: StockAnswer[] = [];
  for (const { stock, own, name } of asked) {
    const found = yield* layOutInTurns({ ...stock, kerfMm: plan.kerf }, own, plan.kits);
    if (!found.ok) return found;
    const sheets = found.value.plans.map((each) => oneSheet(each, stock, name, own, plan.unit));
    answers.push({ stock, name, layout: found.value, sheets });
    yield;
  }
  const total = answers.reduce((sum, { layout }) => sum + layout.sheets, 0);
  return ok({
    sentence: cutSentence(answers),
    asked: askedFor(
      pieces.reduce((sum, { count }) => sum + count, 0),
      plan.kits,
    ),
    brief: [
      answers.map(({ name, layout }) => `${formatAmount(layout.sheets, 9)} ${name}`).join(', '),
      total === 1 ? '1 sheet' : `${total} sheets`,
    ],
    stocks: answers,
    facts: cutFacts(answers, costOf(answers), plan.unit),
    cautions: cautionsFor({ steps: [{ does: plan.kerf > 0 ? ['cut', 'shear', 'saw'] : ['cut', 'shear'] }] }),
    warnings: cutWarnings(stocks, numbered, plan.kerf > 0 ? `${inUnit(plan.kerf, plan.unit)} ${plan.unit}` : ''),
    figures: [total, ...answers.slice(0, 5).map(({ layout }) => layout.sheets)],
  });
}

const askedFor = (pieces: number, kits: number): string =>
  `${pieces === 1 ? '1 piece' : `${pieces} pieces`}${kits > 1 ? `, for ${kits} kits` : ''}`;

/** The same in one go. */
export const cutAnswer = (plan: CutPlan): Result<CutAnswer> => atOnce(cutAnswerInTurns(plan));

function oneSheet(plan: SheetPlan, stock: StockRow, name: string, own: readonly Own[], unit: LengthUnit): SheetAnswer {
  const steps = cutOrder(plan, (piece) => pieceName(own[piece]!), unit);
  const shown = { ...plan, placements: plan.placements.map((at) => ({ ...at, piece: own[at.piece]!.row })) };
  const rows = placeRows(plan, own, unit);
  return {
    plan,
    steps,
    drawing: drawSheet(shown, stock, steps, unit),
    rows,
    offcut: offcutWords(plan, unit),
    title: plan.times === 1 ? 'Cut one sheet like this' : `Cut ${plan.times} sheets like this`,
    label: sheetLabel(name, stock, rows, unit),
  };
}

/** The plan's own field for what the layout calls "0-wide", "trim", "kits" or "pieces". */
function fieldOf(field: string, stock: number, own: readonly { readonly row: number }[]): string {
  if (field === 'trim') return `stock-${stock}-trim`;
  const [, row, cell] = /^(\d+)-(\w+)$/.exec(field) ?? [];
  return row === undefined ? field : `piece-${own[Number(row)]!.row}-${cell}`;
}

/** Of all sheets that bear a price; nothing when none does. */
function costOf(answers: readonly StockAnswer[]): number | undefined {
  const priced = answers.filter(({ stock }) => stock.price !== undefined);
  if (priced.length === 0) return undefined;
  return priced.reduce((sum, { stock, layout }) => sum + stock.price! * layout.sheets, 0);
}
