/** What stands behind the number of sheets, as rows to read. */
import type { StockAnswer } from './stock-answer';
import { leftOver } from './words';
import { inUnit, type LengthUnit } from '../base/length-text';
import type { Fact } from '../base/fact';
import { formatAmount } from '../base/format';

/** What stands behind the number of sheets: one row for each stock, and the price of all. */
export function cutFacts(answers: readonly StockAnswer[], cost: number | undefined, unit: LengthUnit): Fact[] {
  const unpriced = answers.filter(({ stock }) => stock.price === undefined).map(({ name }) => name);
  return [
    ...answers.map(({ stock, name, layout }): Fact => {
      const { sheets, bound, areaBound, proved } = layout;
      const size = `${inUnit(stock.widthMm, unit)} × ${inUnit(stock.heightMm, unit)} ${unit}`;
      return {
        label: name,
        value: `${sheets} of ${size}; ${leftOver(layout)} left over`,
        note: `The area alone asks for ${areaBound}; ${
          proved ? 'no plan of straight-through cuts needs fewer than these' : `no plan needs fewer than ${bound}`
        }.`,
      };
    }),
    ...(cost === undefined
      ? []
      : [
          {
            label: 'Price of all sheets',
            value: formatAmount(cost, 6),
            note: `In your own currency${unpriced.length > 0 ? `, without ${unpriced.join(', ')}` : ''}.`,
          },
        ]),
  ];
}
