/** How well papers that were not swatched are foretold after some swatches of others. */
import { atOnce } from '../../src/core/base/turns';
import { seededUniform } from '../../src/core/base/random';
import { inHand, type Draws } from '../../src/core/choose/draws';
import { kindOf } from '../../src/core/choose/kind';
import { SAMPLES } from '../../src/core/choose/ranking';
import { benchesOf, liquidsOf } from '../../src/core/choose/sampling';
import { holds } from '../../src/core/choose/tally';
import type { Margins } from '../../src/core/joint/bench';
import { wetMargins } from '../../src/core/joint/margins';
import { learnedDraws, learnInTurns } from '../../src/core/learn/reweigh';
import { marginsInTurns, POOL, SHEETS, type ByVersion, type MarginsOf } from '../../src/core/learn/versions';
import { sheetOf } from '../../src/core/paper/sheet';
import type { Catalogue, WetAdhesive } from '../../src/core/records/records';
import { ADHESIVES, conditionOf, drawWorld, HOLDS, jobFor, PAPERS } from './learning-worlds';
import type { BondConstants } from '../../src/core/joint/constants';

export const shuffled = <T>(list: readonly T[], uniform: () => number): T[] => {
  const pool = [...list];
  for (let i = pool.length - 1; i > 0; i -= 1) {
    const j = Math.floor(uniform() * (i + 1));
    [pool[i], pool[j]] = [pool[j]!, pool[i]!];
  }
  return pool;
};

/** The margins of every version, worked out once for all worlds. */
export function rememberedMargins(): MarginsOf {
  const known = new Map<string, ByVersion>();
  return function* (made, catalogue) {
    const key = `${made.job.paper.family} ${made.adhesive} ${made.job.placeSeconds}`;
    let found = known.get(key);
    if (!found) {
      const margins = yield* marginsInTurns(made, catalogue);
      const kept = Array.from({ length: POOL * SHEETS }, (_, i) => {
        const { spread, lift, sheetToFace } = margins(Math.floor(i / SHEETS), i % SHEETS);
        return { spread, lift, sheetToFace };
      });
      found = (version, sheet) => kept[version * SHEETS + sheet] as ReturnType<ByVersion>;
      known.set(key, found);
    }
    return found;
  };
}

/** Chances that it spreads and lifts clean, on these draws. */
export function foretell(paper: string, id: string, hold: number, draws: Draws, catalogue: Catalogue) {
  const job = jobFor(paper, hold);
  const adhesive = catalogue.adhesives.get(id) as WetAdhesive;
  const benches = benchesOf(job, sheetOf(job, catalogue), catalogue, draws);
  const liquids = liquidsOf(adhesive, catalogue, draws);
  const hand = draws.hand?.(kindOf(adhesive, catalogue));
  const own = (margins: Margins) => (hand ? inHand(margins, hand) : margins);
  let [spread, lift] = [0, 0];
  benches.forEach((bench, i) => {
    const margins = own(wetMargins(adhesive, liquids[i]!, bench, draws.constants[i]));
    spread += holds(margins.spread) / draws.count;
    lift += holds(margins.lift) / draws.count;
  });
  return { spread, lift };
}

export interface Told {
  readonly chance: number;
  readonly happened: boolean;
}
export interface Run {
  readonly model: Told[];
  readonly learned: Told[];
  readonly counted: Told[];
  /** by somebody who knows the bench by heart */
  readonly known: Told[];
}

/** One bench: `swatches` of half of the papers by lot, then every pair and hold of the other half foretold. */
export function runWorld(
  seed: number,
  constants: BondConstants,
  swatches: number,
  catalogue: Catalogue,
  ask: MarginsOf,
  alone: (paper: string, id: string, hold: number) => { spread: number; lift: number },
): Run {
  const world = drawWorld(seed, constants, catalogue);
  const uniform = seededUniform(seed * 7919 + 13);
  const papers = shuffled(PAPERS, uniform);
  const [swatched, others] = [papers.slice(0, 8), papers.slice(8)];
  const all = swatched.flatMap((paper) => ADHESIVES.flatMap((id) => HOLDS.map((hold) => [paper, id, hold] as const)));
  const laid = shuffled(all, uniform)
    .slice(0, swatches)
    .map(([paper, id, hold]) => conditionOf(paper, id, hold, world.lay(paper, id, hold)));
  const learned = atOnce(learnInTurns(laid, catalogue, 'one', ask));
  const draws = learnedDraws(learned, { family: 'none' }, SAMPLES);
  const counts = (id: string, thing: 'spread' | 'lift') => {
    const of = laid.filter(({ adhesive }) => adhesive === id);
    const clean = of.filter(
      ({ seen: [seen] }) => seen![thing] === 'pass' && (thing === 'spread' || seen!.board === 'pass'),
    );
    return (clean.length + 1) / (of.length + 2);
  };
  const run: Run = { model: [], learned: [], counted: [], known: [] };
  for (const paper of others)
    for (const id of ADHESIVES)
      for (const hold of HOLDS) {
        const before = alone(paper, id, hold);
        const now = foretell(paper, id, hold, draws, catalogue);
        const byHeart = world.knownByHeart(paper, id, hold);
        for (const thing of ['spread', 'lift'] as const) {
          if (thing === 'spread' && hold !== HOLDS[0]) continue;
          // what most such swatches would show
          const happened = world.margins(paper, id, hold)[thing] > 1;
          run.model.push({ chance: before[thing], happened });
          run.learned.push({ chance: now[thing], happened });
          run.counted.push({ chance: counts(id, thing), happened });
          run.known.push({ chance: byHeart[thing], happened });
        }
      }
  return run;
}

export const brier = (told: readonly Told[]): number =>
  told.reduce((sum, { chance, happened }) => sum + (chance - Number(happened)) ** 2, 0) / told.length;

/** Mean distance between what was said and what came true, in tenths of chance. */
export function calibrationError(told: readonly Told[]): number {
  const bins = Array.from({ length: 10 }, () => ({ n: 0, said: 0, came: 0 }));
  for (const { chance, happened } of told) {
    const bin = bins[Math.min(9, Math.floor(chance * 10))]!;
    bin.n += 1;
    bin.said += chance;
    bin.came += Number(happened);
  }
  return bins.reduce((sum, { said, came }) => sum + Math.abs(said - came), 0) / told.length;
}
