/** The cutting answer in sentences. */
import type { StockRow } from './codec';
import { listed } from './layout-order';
import type { SheetLayout, SheetPiece } from './layout-types';

interface Answered {
  readonly name: string;
  readonly layout: SheetLayout;
}

/** The share of stock that is left over, in whole per cents: "11 %", "under 1 %". */
export function leftOver({ waste }: SheetLayout): string {
  const percent = Math.round(waste * 100);
  return percent > 0 ? `${percent}\u00a0%` : waste > 0.0005 ? 'under 1\u00a0%' : 'nothing';
}

const sheets = (n: number): string => (n === 1 ? '1 sheet' : `${n} sheets`);

/** "2 sheets of board and 1 sheet of paper. 11 % of the board … is left over. No plan needs fewer." */
export function cutSentence(answers: readonly Answered[]): string {
  const asked = listed(answers.map(({ name, layout }) => `${sheets(layout.sheets)} of ${name}`));
  const left = listed(answers.map(({ name, layout }) => `${leftOver(layout)} of the ${name}`));
  return `${asked}. Left over: ${left}. ${proofWords(answers)}`;
}

function proofWords(answers: readonly Answered[]): string {
  const open = answers.filter(({ layout }) => !layout.proved);
  if (open.length === 0) return 'Proved: no plan of straight-through cuts needs fewer.';
  const near = listed(open.map(({ name, layout }) => `at least ${sheets(layout.bound)} of ${name}`));
  const rest = open.length < answers.length ? ' For the rest it is proved that no plan needs fewer.' : '';
  return `Perhaps it can be done with fewer: any plan takes ${near}.${rest}`;
}

/** What to look out for before the knife; `kerf` in words, empty when a cut takes nothing. */
export function cutWarnings(
  stocks: readonly StockRow[],
  pieces: readonly (SheetPiece & { readonly stock: number })[],
  kerf: string,
): string[] {
  const loose = stocks.filter(
    ({ grain }, s) => grain === 'none' && pieces.some((one) => one.stock === s && one.grain !== 'either'),
  );
  const grain = loose.map(
    ({ name }) =>
      `The grain of ${name || 'one sheet'} is not minded, so its pieces may be turned, though they ask for a grain. If the sheet has one, say which way it runs.`,
  );
  if (kerf === '') return grain;
  return [
    ...grain,
    `Each cut takes ${kerf}: distances are to its near side, so keep the blade on the far side of your line.`,
  ];
}
