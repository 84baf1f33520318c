/**
 * `npm run calibrate`: finds the constants again, leaves each paper out in turn, and writes what came of
 * it to content/checks/leave-one-out.yaml, which the site shows and the tests check. Takes about two
 * minutes. Copy the printed constants into src/core/joint/constants.ts when they have changed.
 */
import { writeFileSync } from 'node:fs';
import { stringify } from 'yaml';
import { readCatalogue, readRecords } from '../tools/read-content';
import { agreement, answerer, fit, FREE, isRight, rounded, type Outcomes } from './fit';

const catalogue = readCatalogue();
const outcomes = readRecords('checks')['bench-outcomes.yaml'] as Outcomes;

const constants = rounded(fit(outcomes, catalogue).constants);
for (const key of FREE) console.log(`  ${key}: ${constants[key]},`);
for (const row of outcomes.rows) {
  const answer = answerer(row, outcomes, catalogue)(constants);
  const least = Math.min(...agreement(row, answer));
  console.log(
    row.id.padEnd(18),
    `spread ${answer.spreadChance.toFixed(2)} lift ${answer.liftChance.toFixed(2)} ${answer.gives}`,
    least > 0.5 ? 'met' : 'MISSED',
  );
}

const folds = [...new Set(outcomes.rows.map((row) => row.paper))].map((paper) => {
  const without = rounded(
    fit({ ...outcomes, rows: outcomes.rows.filter((row) => row.paper !== paper) }, catalogue).constants,
  );
  const rows = outcomes.rows
    .filter((row) => row.paper === paper)
    .map((row) => ({ id: row.id, ...isRight(row, answerer(row, outcomes, catalogue)(without)) }));
  return { paper, constants: Object.fromEntries(FREE.map((key) => [key, without[key]])), rows };
});
const right = folds.flatMap((fold) => fold.rows).reduce((sum, row) => sum + Number(row.spread) + Number(row.lift), 0);
console.log(`leave one paper out: ${right} of ${outcomes.rows.length * 2}`);

const about =
  'Each paper of the bench outcomes was left out in turn, the constants were found again from the other five, ' +
  'and the model was asked about the one left out. Written by `npm run calibrate`; do not edit by hand.';
const report = {
  title: 'With one paper left out',
  about,
  kind: 'leave-one-out',
  of: 'bench-outcomes',
  right,
  asked: outcomes.rows.length * 2,
  folds,
};
writeFileSync(new URL('../../content/checks/leave-one-out.yaml', import.meta.url), stringify(report, { lineWidth: 0 }));
