/** `npm run calibrate`: prints the fitted constants, every outcome, and the leave-one-paper-out result. */
import { agreement, fit, FREE, marginsOf, type Outcomes } from './fit';
import { readCatalogue, readRecords } from '../tools/read-content';

const catalogue = readCatalogue();
const outcomes = readRecords('checks')['bench-outcomes.yaml'] as Outcomes;
const { constants, loss } = fit(outcomes, catalogue);
console.log('loss', loss.toFixed(4));
for (const key of FREE) console.log(`  ${key}: ${Number(constants[key].toPrecision(3))},`);
for (const row of outcomes.rows) {
  const margins = marginsOf(row, outcomes, catalogue)(constants);
  const least = Math.min(...agreement(row, margins));
  console.log(row.id.padEnd(20), 'spread', margins.spread.toFixed(2), 'lift', margins.lift.toFixed(2), margins.gives, least > 0 ? 'met' : 'MISSED', least.toFixed(2));
}
let right = 0;
let all = 0;
for (const paper of new Set(outcomes.rows.map((row) => row.paper))) {
  const kept = { ...outcomes, rows: outcomes.rows.filter((row) => row.paper !== paper) };
  const without = fit(kept, catalogue).constants;
  for (const row of outcomes.rows.filter((one) => one.paper === paper)) {
    const margins = marginsOf(row, outcomes, catalogue)(without);
    const spread = margins.spread >= 1 === row.spreads;
    const lift = margins.lift >= 1 === row.lifts;
    right += Number(spread) + Number(lift);
    all += 2;
    console.log(`left out ${row.id.padEnd(20)} spread ${spread ? 'right' : 'WRONG'} lift ${lift ? 'right' : 'WRONG'} (${margins.lift.toFixed(2)})`);
  }
}
console.log(`leave-one-paper-out: ${right} of ${all}`);
