/** A bench is measured in a form, told to the other rooms, and comes back from its link. */
import { beforeEach, describe, expect, it } from 'vitest';
import { EXAMPLE_BENCH } from '../../../src/core/bench/plan';
import { readBench } from '../../../src/core/bench/own-bench';
import { createBench, type BenchStore } from '../../../src/stores/bench/bench';
import { loadPlan } from '../../../src/stores/shared/plan-link';
import { readCatalogue } from '../../tools/read-content';

const catalogue = readCatalogue();
let store: BenchStore;
beforeEach(() => {
  store = createBench(catalogue);
});

describe('a form that opens blank', () => {
  it('tells nobody of anything', () => {
    expect(store.$tells.get()).toEqual({});
    expect(store.$texts.get()).toMatchObject({ before: '', dish: '', drops: '', grabbed: '' });
  });
  it('asks for what is missing once one of the four is chosen', () => {
    store.set('coatBy', 'weighed');
    expect(store.$problems.get().map(({ field }) => field)).toEqual(
      expect.arrayContaining(['before', 'after', 'wide', 'high']),
    );
    for (const [field, text] of [
      ['before', '41'],
      ['after', '43'],
      ['step', '0.1'],
      ['seconds', '20'],
      ['wide', '148'],
      ['high', '210'],
    ] as const)
      store.set(field, text);
    expect(store.$problems.get()).toEqual([]);
    expect(readBench(store.$tells.get()['bench'])!.measures).toHaveLength(1);
  });
});

it('what its link says is what was measured', async () => {
  store.take(EXAMPLE_BENCH);
  await expect.poll(() => store.$isLoading.get()).toBe(false);
  const other = createBench(catalogue);
  loadPlan(other, store.$tail.get());
  await expect.poll(() => other.$isLoading.get()).toBe(false);
  expect(other.$solved.get().answer.found).toHaveLength(4);
  expect(other.$solved.get().answer.text).toBe(store.$solved.get().answer.text);
  expect(other.$link.get().dropped).toEqual([]);
});
