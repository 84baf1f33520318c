/** Margins of very many versions, worked out by a shorter way: the same as the chooser's, whatever was asked before. */
import { expect, test } from 'vitest';
import { atOnce } from '../../../src/core/base/turns';
import { drawsOf, DIMENSIONS, PAPER_DIMENSIONS } from '../../../src/core/choose/draws';
import { DEFAULT_JOB, type Job } from '../../../src/core/choose/job';
import { benchesOf, liquidsOf } from '../../../src/core/choose/sampling';
import { wetMargins } from '../../../src/core/joint/margins';
import { marginsInTurns, POOL, SHEETS } from '../../../src/core/learn/versions';
import { sheetOf } from '../../../src/core/paper/sheet';
import { lowDiscrepancyPoints } from '../../../src/core/base/random';
import type { WetAdhesive } from '../../../src/core/records/records';
import { readCatalogue } from '../../tools/read-content';

const catalogue = readCatalogue();
const job = (family: string, placeSeconds: number, over: Partial<Job> = {}): Job => ({
  ...DEFAULT_JOB,
  paper: { family },
  placeSeconds,
  ...over,
});
/** One after the other: benches and glues are kept from each for the next. */
const ASKED: readonly (readonly [Job, string])[] = [
  [job('copy', 20), 'pva'],
  [job('photo-print-rc', 20), 'pva'],
  [job('copy', 90), 'pva'],
  [job('copy', 90, { substrate: 'glass' }), 'pva'],
  [job('copy', 90, { celsius: 12 }), 'animal-glue-hot'],
  [job('kozo-tissue', 20), 'wheat-starch-paste-12'],
];

test.for(ASKED.map(([made, id], i) => [`${i + 1}: ${made.paper.family}, ${id}`, made, id] as const))(
  '%s',
  ([, made, id]) => {
    const margins = atOnce(marginsInTurns({ job: made, adhesive: id }, catalogue));
    const adhesive = catalogue.adhesives.get(id) as WetAdhesive;
    // a version of a plain round, whose constants are the ensemble's own
    const [version, sheet] = [37, 3];
    const points = drawsOf(POOL).points.slice(version * DIMENSIONS, (version + 1) * DIMENSIONS);
    points.set(
      lowDiscrepancyPoints(SHEETS, PAPER_DIMENSIONS).subarray(sheet * PAPER_DIMENSIONS, (sheet + 1) * PAPER_DIMENSIONS),
    );
    const draws = { count: 1, points, constants: [drawsOf(POOL).constants[version]!] };
    const [bench] = benchesOf(made, sheetOf(made, catalogue), catalogue, draws);
    const whole = wetMargins(adhesive, liquidsOf(adhesive, catalogue, draws)[0]!, bench!, draws.constants[0]);
    const found = margins(version, sheet);
    for (const thing of ['spread', 'lift', 'sheetToFace', 'flat', 'bond'] as const)
      expect(found[thing]).toBeCloseTo(whole[thing], 9);
  },
);
