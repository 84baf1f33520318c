/**
 * What the statistics and the learning come to, on invented trials and benches. Prints the tables and writes them to
 * content/checks/false-claims.yaml and learning.yaml, which the site shows. `npm run simulate claims`, `learning` or `ideal`
 * (what could be learned at best, written beside the second) runs one of them; each takes some minutes.
 */
import { writeFileSync } from 'node:fs';
import { stringify } from 'yaml';
import { readCatalogue, readRecords } from '../tools/read-content';
import { drawsOf } from '../../src/core/choose/draws';
import { SAMPLES } from '../../src/core/choose/ranking';
import { ENSEMBLE, SETS } from '../../src/core/joint/ensemble';
import { seededUniform } from '../../src/core/base/random';
import type { BondConstants } from '../../src/core/joint/constants';
import type { Catalogue } from '../../src/core/records/records';
import { memoize } from '../../src/core/base/memoize';
import type { Outcomes } from '../calibration/fit';
import { runChoice, rightFrom, WAYS } from './choosing';
import { idealBrier } from './ideal';
import { brier, calibrationError, foretell, rememberedMargins, runWorld, type Run } from './learning';
import { otherConstants } from './learning-worlds';
import { cellRate, claimRates } from './rates';
import { CELLS, ROWS } from './null-trials';
import { PROMISES } from './promises';

const TRIALS = 2000;
/** Sixty were too few: a lot of them moved "lower by" three points either way. */
const WORLDS = 240;
/** Of them, those on which the first place is sought: each takes a hundred swatches, and the next one worked out before each. */
const CHOICES = 60;
/** Of the first bench: other benches than those that anything was tried on. */
const SEED = 1001;
const asked = process.argv.slice(2);
const wanted = (part: string) => asked.length === 0 || asked.includes(part);
const made = new Date().toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
/** How often each bench outcome counts for constants that lie farther off than those that learning starts from. */
const FAR_OFF = 0.25;
const write = (name: string, report: object) =>
  writeFileSync(new URL(`../../content/checks/${name}.yaml`, import.meta.url), stringify(report, { lineWidth: 0 }));
const digits = (value: number) => Number(value.toFixed(4));

function claims() {
  return {
    title: 'What a trial page says when nothing differs',
    about:
      'Swatch trials drawn by lot and read as the page reads them: how often it says that something differs. Written by `npm run simulate`; do not edit by hand.',
    kind: 'simulated',
    made,
    trials: TRIALS,
    rows: ROWS.map(({ id, says, differs, draw, before }) => {
      const rates = claimRates(id, draw, TRIALS);
      console.log(
        `${says}: “did better” ${rates.better}, weight ${rates.weight}, either ${rates.either} (before: ${before.better}, ${before.weight}, ${before.either})`,
      );
      return { id, says, differs, ...rates, before };
    }),
    cells: CELLS.map(({ id, swatches, before }) => {
      const rate = cellRate(id, swatches, TRIALS);
      console.log(`pairings at a true half with ${swatches} swatches: “mostly” ${rate} (before: ${before})`);
      return { id, swatches, rate, before };
    }),
    promises: PROMISES.map(({ id, says, before, kept }) => {
      const rate = digits(kept(id, TRIALS));
      console.log(`${says}: ${rate} (before: ${before})`);
      return { id, says, rate, before };
    }),
  };
}

/** What the model alone foretells, each pair and hold worked out once. */
function modelAlone(
  catalogue: Catalogue,
): (paper: string, id: string, hold: number) => { spread: number; lift: number } {
  const even = drawsOf(SAMPLES);
  return memoize(
    (paper: string, id: string, hold: number) => foretell(paper, id, hold, even, catalogue),
    (paper, id, hold) => `${paper} ${id} ${hold}`,
  );
}

function learning() {
  const catalogue = readCatalogue();
  const outcomes = readRecords('checks')['bench-outcomes.yaml'] as Outcomes;
  const ask = rememberedMargins();
  const alone = modelAlone(catalogue);
  const uniform = seededUniform(31);
  const families: readonly (readonly [id: string, constants: readonly BondConstants[]])[] = [
    ['other-constants', otherConstants(outcomes, catalogue, WORLDS)],
    ['far-constants', otherConstants(outcomes, catalogue, WORLDS, { timesSeen: FAR_OFF })],
    ['own-constants', Array.from({ length: WORLDS }, () => ENSEMBLE[Math.floor(uniform() * SETS)]!)],
  ];
  const foretold = families.flatMap(([worlds, constants]) =>
    [6, 12, 24].map((swatches) => {
      const all: Run = { model: [], learned: [], counted: [], known: [] };
      constants.forEach((set, i) => {
        const run = runWorld(SEED + i, set, swatches, catalogue, ask, alone);
        for (const key of ['model', 'learned', 'counted', 'known'] as const) all[key].push(...run[key]);
      });
      const of = (key: keyof Run) => ({ brier: digits(brier(all[key])), off: digits(calibrationError(all[key])) });
      const known = digits(brier(all.known));
      const row = { worlds, swatches, model: of('model'), learned: of('learned'), counted: of('counted'), known };
      console.log(JSON.stringify(row));
      return row;
    }),
  );
  const [, outside] = families[0]!;
  const chosen = WAYS.map((way) => {
    const runs = outside.slice(0, CHOICES).map((set, i) => runChoice(SEED + i, set, way, catalogue, ask));
    const after = (count: number) =>
      runs.filter((right) => right[Math.min(count, right.length - 1)]).length / runs.length;
    const needed = runs.map((right) => rightFrom(right) ?? Infinity).sort((a, b) => a - b);
    const quantile = (q: number) => needed[Math.ceil(q * runs.length) - 1]!;
    const row = {
      way,
      right: [0, 4, 8, 16, 32].map((swatches) => ({ swatches, share: digits(after(swatches)) })),
      // -1: never within what was made
      mostNeed: Number.isFinite(quantile(0.8)) ? quantile(0.8) : -1,
      made: digits(runs.reduce((sum, right) => sum + right.length - 1, 0) / runs.length),
      spoiled: digits(
        runs.filter((right) => right[0] && !right.at(-1)).length / runs.filter((right) => right[0]).length,
      ),
    };
    console.log(JSON.stringify(row));
    return row;
  });
  return {
    title: 'What the model learns from swatches',
    about:
      'Benches drawn by lot, whose constants, glues and sheets the model does not know: how well it foretells papers that were not swatched, and how soon the right adhesive stands first. Written by `npm run simulate learning`; do not edit by hand.',
    kind: 'learning',
    made,
    benches: WORLDS,
    choices: CHOICES,
    foretold,
    chosen,
  };
}

/** Benches that the ideal learner weighs, how many it is asked about, and how many of the chain's lie from one such to the next. */
const IDEAL = { drawn: 1200, asked: 60, every: 4 };

/** How much could be learned at best on benches with other constants, beside what was. */
function ideal() {
  const catalogue = readCatalogue();
  const outcomes = readRecords('checks')['bench-outcomes.yaml'] as Outcomes;
  // asked of benches of the table above it, each the fourth of a chain four times as dense
  const all = otherConstants(outcomes, catalogue, IDEAL.drawn + WORLDS, { apart: 25 });
  const ofTable = all.filter((_, i) => i % IDEAL.every === 3).slice(0, WORLDS);
  const drawn = all.filter((set) => !ofTable.includes(set));
  const worlds = ofTable.slice(0, IDEAL.asked).map((constants, i) => ({ seed: SEED + i, constants }));
  const counts = [0, 6, 12, 24, 96];
  const briers = idealBrier(drawn, worlds, counts, catalogue);
  const [ask, before] = [rememberedMargins(), modelAlone(catalogue)];
  const alone = worlds.flatMap(({ seed, constants }) => runWorld(seed, constants, 0, catalogue, ask, before).model);
  const found = {
    model: digits(brier(alone)),
    rows: counts.map((swatches, k) => ({ swatches, brier: digits(briers[k]!) })),
  };
  console.log(JSON.stringify(found));
  return found;
}

if (wanted('claims')) write('false-claims', claims());
if (wanted('learning')) write('learning', learning());
if (wanted('ideal')) write('learning', { ...(readRecords('checks')['learning.yaml'] as object), ideal: ideal() });
