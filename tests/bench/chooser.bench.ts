/** `npm run bench`: what an answer costs. The aim is under 8 ms for all adhesives, so that a phone keeps up with typing. */
import { bench, describe } from 'vitest';
import type * as Chooser from '../../src/core/choose/choose';
import { FLIP_FIELDS, nearestFlip } from '../../src/core/choose/tipping-points';
import { DEFAULT_JOB } from '../../src/core/choose/job';
import type * as Ranking from '../../src/core/choose/ranking';
import { decodeJob, encodeJob } from '../../src/core/choose/read-link';
import { weightMap } from '../../src/core/choose/weight-map';
import { catalogue } from '../../src/data/catalogue';
import { asShipped } from '../tools/as-shipped';

const { choose } = await asShipped<typeof Chooser>(new URL('../../src/core/choose/choose.ts', import.meta.url));
const { rank } = await asShipped<typeof Ranking>(new URL('../../src/core/choose/ranking.ts', import.meta.url));

/** A new weight every time, as when someone types: nothing of the last answer can be used again. */
let turn = 0;
const typed = () => ({ ...DEFAULT_JOB, paper: { family: 'chiyogami', grammage: 60 + (turn++ % 100) / 10 } });

describe(`all ${catalogue.adhesives.size} adhesives`, () => {
  bench('choose: with reasons and technique', () => {
    choose(typed(), catalogue);
  });
  bench('rank: the order alone, as in a lesson', () => {
    rank(typed(), catalogue);
  });
});

describe('beside the answer', () => {
  bench('the map of one adhesive', () => {
    weightMap('pva-mc-1-1', typed(), catalogue);
  });
  bench('the nearest flips', () => {
    for (const field of FLIP_FIELDS) nearestFlip(field, typed(), catalogue);
  });
  bench('a link written and read', () => {
    decodeJob(encodeJob(typed()));
  });
});
