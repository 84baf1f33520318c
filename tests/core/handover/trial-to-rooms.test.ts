/** From a planned trial to the other rooms: each link, read with that room's own fields, says what the plan said. */
import { describe, expect, test } from 'vitest';
import { decodeJob } from '../../../src/core/choose/read-link';
import { CLASS_FIELDS } from '../../../src/core/class/plan';
import { COVER_FIELDS } from '../../../src/core/cover/plan';
import { CUT_FIELDS } from '../../../src/core/cut/plan';
import { tailsAfterTrial } from '../../../src/core/handover/trial-to-rooms';
import type { FieldTable } from '../../../src/core/link/fields';
import { decodePlan } from '../../../src/core/link/read-plan-link';
import { trialWith } from '../support/trial';

const read = (tail: string, fields: FieldTable) => {
  const { plan, dropped } = decodePlan(tail, fields);
  expect(dropped).toEqual([]);
  return plan as Readonly<Record<string, unknown>>;
};

/** Two papers, two adhesives, one hold time, three of each: twelve swatches of 50 × 70 mm. */
const PLAN = trialWith(() => undefined);
const tails = tailsAfterTrial(PLAN);

describe('two papers with two adhesives, three of each', () => {
  test('the chooser is asked of the first paper, on the board and in the room of the trial', () => {
    const { job, dropped } = decodeJob(tails.choose);
    expect(dropped).toEqual([]);
    expect(job).toMatchObject({ paper: { family: 'unryu', grammage: 25 }, substrate: 'binders-board' });
    expect(job).toMatchObject({ celsius: 20, humidity: 50 });
  });
  test('the coverage is asked for the six swatches of the first adhesive', () => {
    const plan = read(tails.cover, COVER_FIELDS);
    expect(plan).toMatchObject({ thing: 'own', adhesive: 'wheat-starch-paste-thin', paper: 'unryu~25gsm' });
    expect(plan['pieces']).toEqual([{ widthMm: 50, heightMm: 70, count: 6, turnInMm: 0 }]);
  });
  test('the sheets are asked for twelve boards, a margin of 10 mm all round, and six pieces of each paper', () => {
    const { stocks, pieces } = read(tails.cut, CUT_FIELDS) as {
      stocks: readonly { name: string }[];
      pieces: readonly { stock: number; widthMm: number; heightMm: number; count: number }[];
    };
    expect(stocks.map(({ name }) => name)).toEqual(['board', 'Thin tissue', 'Book paper']);
    expect(pieces.map(({ stock, widthMm, heightMm, count }) => [stock, widthMm, heightMm, count])).toEqual([
      [0, 70, 90, 12],
      [1, 50, 70, 6],
      [2, 50, 70, 6],
    ]);
  });
  test('the class is asked for the same paper, ground, adhesive and room', () => {
    expect(read(tails.class, CLASS_FIELDS)).toMatchObject({
      paper: 'unryu~25gsm',
      on: 'binders-board',
      adhesive: 'wheat-starch-paste-thin',
      celsius: 20,
      humidity: 50,
    });
  });
});

test('a plan of papers and adhesives that the shelf does not know carries its sizes alone', () => {
  const unknown = tailsAfterTrial({
    ...PLAN,
    papers: [{ id: 'paper-1', name: 'From the attic' }],
    glues: [{ id: 'glue-1', name: 'Grandmother’s' }],
  });
  expect(unknown.choose).not.toContain('paper=');
  expect(read(unknown.cover, COVER_FIELDS)['pieces']).toMatchObject([{ count: 3 }]);
});

test('as many papers as there are stocks besides the board, and a weight that no calculator takes left out', () => {
  const many = tailsAfterTrial({
    ...PLAN,
    papers: Array.from({ length: 9 }, (_, i) => ({ id: `p${i}`, name: `Sheet ${i}`, family: 'unryu', grammage: 5000 })),
  });
  expect(read(many.cut, CUT_FIELDS)['stocks']).toHaveLength(6);
  expect(read(many.class, CLASS_FIELDS)['paper']).toBe('unryu');
});
