/** A bench of one's own as a text, and in words. */
import { figure } from '../base/format';
import { readBench, type BenchQuantity, type OwnBench } from './own-bench';

/** Four figures of a number, as links carry it. */
const short = (value: number): string => String(Number(value.toPrecision(4)));

/** The text of a bench; `readBench` reads it back, with four figures of each number. */
export const writeBench = ({ measures, name }: OwnBench): string =>
  [
    ...measures.map(({ of, quantity, range: { low, middle, high } }) =>
      [of, quantity, short(low), short(middle), short(high)].join('_'),
    ),
    ...(name ? [`named ${name}`] : []),
  ].join('~');

/** What each is called in a sentence, and the unit it is shown in. */
export const QUANTITY_WORDS: Readonly<Record<BenchQuantity, readonly [what: string, unit: string]>> = {
  coat: ['a coat of', 'g/m²'],
  drinks: ['a board that drinks', 'g/m²/√s'],
  solids: ['solids of', '%'],
  grabs: ['grab at solids of', '%'],
};

/** A quantity's number as it is shown: shares in per cent. */
export const shownAs = (quantity: BenchQuantity, value: number): number =>
  quantity === 'solids' || quantity === 'grabs' ? 100 * value : value;

/** "“Kitchen table”: a coat of 63 g/m², solids of 54 %". Empty for a text that is no bench. */
export function benchInWords(text: string): string {
  const bench = readBench(text);
  if (!bench) return '';
  const parts = bench.measures.map(({ quantity, range }) => {
    const [what, unit] = QUANTITY_WORDS[quantity];
    return `${what} ${figure(shownAs(quantity, range.middle))}\u00a0${unit}`;
  });
  return `${bench.name === undefined ? '' : `“${bench.name}”: `}${parts.join(', ')}`;
}
