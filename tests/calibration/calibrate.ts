/**
 * `npm run calibrate`: draws the ensemble of constants anew and writes it to src/core/joint/ensemble.ts, and the loose
 * sets that learning starts from to src/core/learn/loose-sets.ts, leaves each paper out in turn, and writes what came of
 * that to content/checks/leave-one-out.yaml, which the site shows and the tests check. Takes some ten minutes. Copy the
 * printed constants into src/core/joint/constants.ts, and raise MODEL_VERSION, when they have changed.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { stringify } from 'yaml';
import { SETS } from '../../src/core/joint/ensemble';
import { readCatalogue, readRecords } from '../tools/read-content';
import { drawSets, LOOSE, LOOSE_COUNT } from './chain';
import { answerer, FREE, rounded, type Outcomes } from './fit';

const catalogue = readCatalogue();
const outcomes = readRecords('checks')['bench-outcomes.yaml'] as Outcomes;

const { sets, best } = drawSets(outcomes, catalogue, SETS);
for (const key of FREE) console.log(`  ${key}: ${rounded(best)[key]},`);
const rows = sets.map((set) => `  [${FREE.map((key) => rounded(set)[key]).join(', ')}],`).join('\n');
writeFileSync(
  new URL('../../src/core/joint/ensemble.ts', import.meta.url),
  `/**
 * Sets of the fitted constants, drawn by a seeded chain (tests/calibration/chain.ts) from their stated ranges, each
 * as likely as it meets the bench outcomes. Calibrated to \`bench-outcomes\`. Written by \`npm run calibrate\`; not by hand.
 */
import { BOND_CONSTANTS, type BondConstants } from './constants';

/** How many there are: one for each draw of the chooser. */
export const SETS = ${SETS};

/** The constants that were fitted, in the order of the tables. */
export const FREE = [
${FREE.map((key) => `  '${key}',`).join('\n')}
] as const satisfies readonly (keyof BondConstants)[];

// prettier-ignore
const TABLE: readonly (readonly number[])[] = [
${rows}
];

export const ENSEMBLE: readonly BondConstants[] = TABLE.map((row) => ({
  ...BOND_CONSTANTS,
  ...Object.fromEntries(FREE.map((key, i) => [key, row[i]!])),
}));
`,
);

const loose = drawSets(outcomes, catalogue, LOOSE_COUNT, LOOSE).sets;
const twentieths = loose.map(
  (set) => `  [${FREE.map((key) => Math.round(20 * Math.log(set[key] / rounded(best)[key])) + 0).join(', ')}],`,
);
const looseSets = new URL('../../src/core/learn/loose-sets.ts', import.meta.url);
writeFileSync(
  looseSets,
  readFileSync(looseSets, 'utf8').replace(/(= \[\n)[^]*?(\];)/, `$1${twentieths.join('\n')}\n$2`),
);

/** Fewer sets and draws for the folds: each is a chain of its own. */
const FOLD = { count: 32, draws: 24, steps: 10_000 };
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const digits = (chance: number) => Number(chance.toFixed(3));

const folds = [...new Set(outcomes.rows.map((row) => row.paper))].map((paper) => {
  const others = { ...outcomes, rows: outcomes.rows.filter((row) => row.paper !== paper) };
  const drawn = drawSets(others, catalogue, FOLD.count, FOLD).sets;
  const asked = outcomes.rows
    .filter((row) => row.paper === paper)
    .map((row) => {
      const answers = drawn.map(answerer(row, outcomes, catalogue));
      return {
        id: row.id,
        spread: digits(mean(answers.map(({ spreadChance }) => spreadChance))),
        lift: digits(mean(answers.map(({ liftChance }) => liftChance))),
      };
    });
  console.log(paper, JSON.stringify(asked));
  return { paper, rows: asked };
});
const about =
  'Each paper of the bench outcomes was left out in turn, an ensemble of constants was drawn again from the other ' +
  'five, and the model was asked about the one left out. Written by `npm run calibrate`; do not edit by hand.';
const report = { title: 'With one paper left out', about, kind: 'leave-one-out', of: 'bench-outcomes', folds };
writeFileSync(new URL('../../content/checks/leave-one-out.yaml', import.meta.url), stringify(report, { lineWidth: 0 }));
