/**
 * How often the page of a trial says what is not so. Draws 2000 trials a row from `null-trials.ts`, reads them as the
 * page does, writes the rates to content/checks/false-claims.yaml, which the site shows, and prints them. Takes about
 * a minute.
 */
import { writeFileSync } from 'node:fs';
import { stringify } from 'yaml';
import { cellRate, claimRates } from './rates';
import { CELLS, ROWS } from './null-trials';

const TRIALS = 2000;

const report = {
  title: 'What a trial page says when nothing differs',
  about:
    'Swatch trials drawn by lot and read as the page reads them: how often it says that something differs. Written by `npm run simulate`; do not edit by hand.',
  kind: 'simulated',
  made: new Date().toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' }),
  trials: TRIALS,
  rows: ROWS.map(({ id, says, differs, draw }) => {
    const rates = claimRates(id, draw, TRIALS);
    console.log(`${says}: “did better” ${rates.better}, weight ${rates.weight}, either ${rates.either}`);
    return { id, says, differs, ...rates };
  }),
  cells: CELLS.map(({ id, swatches }) => {
    const rate = cellRate(id, swatches, TRIALS);
    console.log(`pairings at a true half with ${swatches} swatches: “mostly” ${rate}`);
    return { id, swatches, rate };
  }),
};

writeFileSync(new URL('../../content/checks/false-claims.yaml', import.meta.url), stringify(report, { lineWidth: 0 }));
