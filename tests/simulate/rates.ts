/** Rates of claims, by the words that a reader would read. */
import { cellsOf } from '../../src/core/trial/analysis';
import type { Trial } from '../../src/core/trial/record';
import { summaryOf } from '../../src/core/trial/summary';
import { standingOf } from '../../src/core/trial/words';
import { drawHalf, lotOf, type Rates } from './null-trials';

export function claimRates(id: string, draw: (uniform: () => number) => Trial, trials: number): Rates {
  const uniform = lotOf(id);
  let [better, weight, either] = [0, 0, 0];
  for (let i = 0; i < trials; i += 1) {
    const said = summaryOf(draw(uniform)).questions.flatMap(({ takeaways }) => takeaways);
    const [one, other] = [
      said.some((text) => text.includes(' did better')),
      said.some((text) => text.includes(': Of these papers the ')),
    ];
    better += one ? 1 : 0;
    weight += other ? 1 : 0;
    either += one || other ? 1 : 0;
  }
  return { better: better / trials, weight: weight / trials, either: either / trials };
}

/** Share of pairings at a true half that are called "mostly passes" or "mostly fails". */
export function cellRate(id: string, replicates: number, trials: number): number {
  const uniform = lotOf(id);
  let [called, all] = [0, 0];
  for (let i = 0; i < trials; i += 1) {
    for (const cell of cellsOf(drawHalf(replicates, uniform), 'q-1')) {
      all += 1;
      if (standingOf(cell).startsWith('mostly')) called += 1;
    }
  }
  return Number((called / all).toFixed(4));
}
