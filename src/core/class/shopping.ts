/** What to buy and to lay out for a class. Tools a head are common practice, no source. */
import type { CoverAnswer } from '../cover/answer';
import type { CutAnswer } from '../cut/answer';
import { inUnit } from '../base/length-text';
import { roundUpToBuy } from '../base/rounding';
import { paperName } from '../paper/own-paper';
import { lowerFirst, formatAmount } from '../base/format';
import type { Catalogue, WetAdhesive } from '../records/records';
import type { Batch } from './glue';
import { kitsOf, type ClassPlan } from './plan';

export interface Item {
  readonly what: string;
  /** of what is mixed: what goes in */
  readonly amount: string;
  /** of what is mixed: the round figure that is bought, more than goes in */
  readonly buy?: string;
  readonly note?: string;
}

const GRAIN = { long: 'grain long', short: 'grain short', none: 'no grain to mind' } as const;
const WHOLE = (count: number): string => formatAmount(count, 9);

/** Sheets of each stock, then what the adhesive is made of. */
export function materials(
  plan: ClassPlan,
  cut: CutAnswer,
  coverage: CoverAnswer,
  batches: readonly Batch[],
  adhesive: WetAdhesive,
  catalogue: Catalogue,
): readonly Item[] {
  const names: Readonly<Record<string, string>> = {
    board: `${lowerFirst(catalogue.substrates.get(plan.on)!.name)}, ${inUnit(plan.board, plan.unit)}\u00a0${plan.unit} thick`,
    paper: `covering: ${paperName(plan.paper, catalogue)}`,
    cloth: plan.stock === 'cloth' ? `covering: ${paperName(plan.paper, catalogue)}` : 'bookcloth',
    'lining paper': 'paper for the inside: endpapers, strips, linings',
  };
  const sheets = cut.stocks.map(({ stock, layout }): Item => ({
    what: names[stock.name] ?? stock.name,
    amount: layout.sheets === 1 ? '1 sheet' : `${WHOLE(layout.sheets)} sheets`,
    note: `${inUnit(stock.widthMm, plan.unit)} × ${inUnit(stock.heightMm, plan.unit)}\u00a0${plan.unit}, ${GRAIN[stock.grain]}`,
  }));
  return [...sheets, ...glueItems(coverage, batches, adhesive)];
}

function glueItems(coverage: CoverAnswer, batches: readonly Batch[], adhesive: WetAdhesive): Item[] {
  if (batches.length === 0)
    return [
      { what: adhesive.short, amount: `${formatAmount(coverage.buyMillilitres, 9)}\u00a0ml`, note: 'used as it comes' },
    ];
  return batches.flatMap(({ plan, mix }, i) =>
    // Water is in the tap (into the pan or not), and what an earlier batch makes is not bought.
    (plan.kind === 'stretch' && i > 0 ? mix.portions.slice(0, 1) : mix.portions)
      .filter(({ name }) => !/^water\b/.test(name))
      .map(({ name, amount, or, grams }): Item => ({
        what: name,
        amount,
        ...(grams !== undefined && { buy: `${WHOLE(roundUpToBuy(grams))}\u00a0g` }),
        note: `${amount} of it goes in${or ? `, or ${or}` : ''}`,
      })),
  );
}

/** The tools that this class needs, with how many. */
export function tools(plan: ClassPlan): readonly Item[] {
  const { people } = plan;
  const pairs = Math.ceil(people / 2);
  const each = (what: string, count: number, note?: string): Item => ({
    what,
    amount: WHOLE(count),
    ...(note && { note }),
  });
  return [
    each('glue brushes', people + 1, 'one for you'),
    each('pots with lids', pairs, 'one for two people'),
    each('bone folders', people),
    each('knives, and as many steel rules and mats', pairs, 'only for trimming: the kits are cut'),
    each('press boards with weights', people),
    each('waste sheets', kitsOf(plan) * 6, 'old newsprint, unprinted'),
    each('blotters or clean waste sheets for the press', kitsOf(plan) * 4),
    each('damp cloths', people + 1),
  ];
}
