/**
 * How much could be learned at best on the invented benches: a learner that knows exactly from what they were drawn
 * (their constants, glues, boards, sheets and quirks, though not which of them it has before it) and weighs very many of
 * them by Bayes' rule. What it cannot foretell, no swatches of other papers can tell.
 */
import { liquidOf } from '../../src/core/adhesive/liquid';
import { at, type Range } from '../../src/core/base/quantity';
import { seededUniform } from '../../src/core/base/random';
import { DIMENSIONS, PAPER_DIMENSIONS, type Draws } from '../../src/core/choose/draws';
import { benchesOf } from '../../src/core/choose/sampling';
import type { BondConstants } from '../../src/core/joint/constants';
import { easeOf } from '../../src/core/joint/margins';
import { bearing } from '../../src/core/joint/spread';
import { coated, laidMargins, type LaidMargins } from '../../src/core/learn/laid';
import { likelihoodOf } from '../../src/core/learn/likelihood';
import { poreVolume } from '../../src/core/paper/paper';
import { sheetOf } from '../../src/core/paper/sheet';
import type { Catalogue, WetAdhesive } from '../../src/core/records/records';
import { shuffled } from './learning';
import { ADHESIVES, below, drawWorld, HOLDS, jobFor, PAIR, PAPERS } from './learning-worlds';

const SHEETS = 12;
const LIFTS_AND_SPREADS = { spread: true, lift: true, dry: false };
const AS_IT_IS = { spread: 1, lift: 1 };
const CELLS = PAPERS.flatMap((paper) => ADHESIVES.flatMap((id) => HOLDS.map((hold) => ({ paper, id, hold }))));
const keyOf = (paper: string, id: string, hold: number) => `${paper} ${id} ${hold}`;
type Shown = Pick<LaidMargins, 'spread' | 'lift' | 'sheetToFace'>;

/** For each cell the margins of bench v on sheet s at v·SHEETS + s, of benches drawn as the worlds are. */
function drawnBenches(all: readonly BondConstants[], catalogue: Catalogue): ReadonlyMap<string, readonly Shown[]> {
  const uniform = seededUniform(4711);
  const sheets = new Map(PAPERS.map((paper) => [paper, Array.from({ length: SHEETS * PAPER_DIMENSIONS }, uniform)]));
  const found = new Map<string, Shown[]>(CELLS.map(({ paper, id, hold }) => [keyOf(paper, id, hold), []]));
  for (const constants of all) {
    const lots = new Map<Range, number>();
    const lotOf = (range: Range) => lots.get(range) ?? lots.set(range, uniform()).get(range)!;
    const board = Array.from({ length: DIMENSIONS - PAPER_DIMENSIONS }, uniform);
    const liquids = ADHESIVES.map((id) => {
      const adhesive = catalogue.adhesives.get(id) as WetAdhesive;
      const liquid = liquidOf(adhesive, catalogue, (range) => at(range, lotOf(range)));
      return { id, adhesive, liquid, ease: easeOf(adhesive, liquid, jobFor(PAPERS[0], HOLDS[0]).celsius, constants) };
    });
    for (const paper of PAPERS) {
      const points = new Float64Array(SHEETS * DIMENSIONS);
      for (let s = 0; s < SHEETS; s += 1) {
        const own = sheets.get(paper)!.slice(s * PAPER_DIMENSIONS, (s + 1) * PAPER_DIMENSIONS);
        points.set([...own, ...board], s * DIMENSIONS);
      }
      const draws: Draws = { count: SHEETS, points, constants: [] };
      for (const hold of HOLDS) {
        const job = jobFor(paper, hold);
        for (const bench of benchesOf(job, sheetOf(job, catalogue), catalogue, draws))
          for (const { id, adhesive, liquid, ease } of liquids) {
            const { spread, lift, sheetToFace } = laidMargins(
              coated(adhesive, liquid, bench, constants, ease),
              bench,
              poreVolume(bench.paper.grammage, bench.paper.grammage / bench.paper.density),
              bearing(bench.paper.grammage, constants),
              LIFTS_AND_SPREADS,
            );
            found.get(keyOf(paper, id, hold))!.push({ spread, lift, sheetToFace });
          }
      }
    }
  }
  return found;
}

/**
 * Its mean Brier score on papers that were not swatched, after each number of swatches. `drawn`: the benches it weighs;
 * `worlds`: seed and constants of those it is asked about.
 */
export function idealBrier(
  drawn: readonly BondConstants[],
  worlds: readonly { readonly seed: number; readonly constants: BondConstants }[],
  swatches: readonly number[],
  catalogue: Catalogue,
): number[] {
  const benches = drawnBenches(drawn, catalogue);
  const sums = swatches.map(() => 0);
  for (const { seed, constants } of worlds) {
    const world = drawWorld(seed, constants, catalogue);
    const uniform = seededUniform(seed * 7919 + 13);
    const papers = shuffled(PAPERS, uniform);
    const half = papers.slice(0, papers.length / 2);
    const others = new Set<string>(papers.slice(papers.length / 2));
    const laid = shuffled(
      CELLS.filter(({ paper }) => half.includes(paper)),
      uniform,
    )
      .slice(0, Math.max(...swatches))
      .map((cell) => ({ ...cell, reads: likelihoodOf(world.lay(cell.paper, cell.id, cell.hold)) }));
    swatches.forEach((count, k) => {
      const logs = drawn.map((_, v) => {
        let log = 0;
        for (const paper of half) {
          const on = laid.slice(0, count).filter((one) => one.paper === paper);
          if (on.length === 0) continue;
          let mean = 0;
          for (let s = 0; s < SHEETS; s += 1)
            mean += on.reduce((product, { id, hold, reads }) => {
              const shown = benches.get(keyOf(paper, id, hold))![v * SHEETS + s]!;
              return product * reads({ ...shown, flat: 1, bond: 1 }, AS_IT_IS);
            }, 1 / SHEETS);
          log += Math.log(mean);
        }
        return log;
      });
      const top = Math.max(...logs);
      const weights = logs.map((log) => Math.exp(log - top));
      const whole = weights.reduce((sum, weight) => sum + weight, 0);
      let [missed, asked] = [0, 0];
      for (const { paper, id, hold } of CELLS) {
        if (!others.has(paper)) continue;
        const margins = benches.get(keyOf(paper, id, hold))!;
        for (const thing of hold === HOLDS[0] ? (['spread', 'lift'] as const) : (['lift'] as const)) {
          let chance = 0;
          weights.forEach((weight, v) => {
            if (weight < 1e-6 * whole) return;
            for (let s = 0; s < SHEETS; s += 1)
              chance += ((weight / whole) * below(Math.log(margins[v * SHEETS + s]![thing]) / PAIR)) / SHEETS;
          });
          missed += (chance - Number(world.margins(paper, id, hold)[thing] > 1)) ** 2;
          asked += 1;
        }
      }
      sums[k]! += missed / asked / worlds.length;
    });
  }
  return sums;
}
