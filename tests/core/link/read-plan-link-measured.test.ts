/** A link to a form that opens unmeasured: nothing that it does not say is taken for measured. */
import { describe, expect, it } from 'vitest';
import { BENCH_FIELDS, UNMEASURED_BENCH } from '../../../src/core/bench/plan';
import { decodePlan } from '../../../src/core/link/read-plan-link';
import { encodePlan } from '../../../src/core/link/plan-link';
import { measuredOnly } from '../../../src/core/link/read-plan-link-measured';
import { MEASURE_FIELDS, UNMEASURED } from '../../../src/core/measure/plan';
import { createBench } from '../../../src/stores/bench/bench';
import { createMeasure } from '../../../src/stores/measure/measure';
import { loadPlan } from '../../../src/stores/shared/plan-link';
import { readCatalogue } from '../../tools/read-content';

const catalogue = readCatalogue();

describe('a bench', () => {
  const settle = measuredOnly(BENCH_FIELDS, UNMEASURED_BENCH);
  const opened = (link: string) => {
    const { plan, dropped } = decodePlan(link, BENCH_FIELDS, UNMEASURED_BENCH);
    const put = [...dropped];
    return { plan: settle(plan, put, link), put };
  };
  const ways = ({ plan }: ReturnType<typeof opened>) => [plan.coatBy, plan.solidsBy, plan.boardBy, plan.grabBy];
  it('of which a link says nothing is unmeasured', () => {
    for (const link of ['v=1', 'named=Mine', 'before=41', 'x=y'])
      expect(ways(opened(link)), link).toEqual(['none', 'none', 'none', 'none']);
  });
  it('is measured as far as a link says it whole', () => {
    const link = 'v=1&coat=weighed&tool=brush-full&before=41&after=43&step=0.1&waited=20&wide=148&high=210&board=drop';
    const found = opened(link);
    expect(ways(found)).toEqual(['weighed', 'none', 'none', 'none']);
    expect(found.put).toEqual(['board (drop)']);
  });
  it('whose weights cannot be read was not weighed', () => {
    const found = opened('v=1&coat=weighed&before=heavy&after=43&step=0.1&waited=20&wide=148&high=210');
    expect(ways(found)).toEqual(['none', 'none', 'none', 'none']);
    expect(found.put).toEqual(['before (heavy)', 'coat (weighed)']);
  });
  it('is what its own link says, whole', () => {
    for (const boardBy of ['none', 'drop'] as const) {
      const plan = { ...UNMEASURED_BENCH, coatBy: 'spoon', boardBy, millilitres: 7, drops: [30] } as const;
      expect(opened(encodePlan(plan, BENCH_FIELDS))).toEqual({ plan, put: [] });
    }
  });
});

describe('on the page', () => {
  it('weights that contradict each other leave the coat unmeasured, and are named', () => {
    const store = createBench(catalogue);
    loadPlan(store, 'v=1&coat=weighed&before=43&after=41&step=0.1&waited=20&wide=148&high=210');
    expect(store.$solved.get().answer).toMatchObject({ found: [], brief: 'nothing measured' });
    expect(store.$link.get().dropped).toEqual(['after', 'coat (weighed)']);
  });
  it('a sheet of which a link says only the kind goes by the kind', () => {
    const store = createMeasure(catalogue);
    loadPlan(store, 'paper=copy&bend=sideways');
    expect(store.$solved.get().plan).toEqual({ ...UNMEASURED, family: 'copy' });
    expect(store.$link.get().dropped).toEqual(['bend (sideways)']);
    expect(MEASURE_FIELDS.bend.usual).not.toBe('untried');
  });
});
