/** The planner: what is typed, what follows it, and what the device keeps. */
import { describe, expect, it } from 'vitest';
import { DEFAULT_PLAN } from '../../../src/core/trial/plan-text';
import { catalogue } from '../../../src/data/catalogue';
import { createTrialPlan } from '../../../src/stores/trial/plan';

const nameOf = (record: string) => catalogue.adhesives.get(record)?.name ?? '';
const fresh = () => createTrialPlan(DEFAULT_PLAN, nameOf);
const names = (store: ReturnType<typeof fresh>) => store.$text.get().glues.map(({ name }) => name);

function storing(draft?: unknown): Storage {
  const held = new Map(draft === undefined ? [] : [['open-time:plan', JSON.stringify(draft)]]);
  return {
    length: 0,
    clear: () => {},
    key: () => null,
    getItem: (key) => held.get(key) ?? null,
    setItem: (key, value) => void held.set(key, value),
    removeItem: (key) => void held.delete(key),
  };
}

describe('the name of an adhesive', () => {
  it('of the default rows is the shelf’s', () => {
    for (const { name, record } of DEFAULT_PLAN.glues) expect(name).toBe(nameOf(record));
  });
  it('follows the shelf, again and again, until one is typed', () => {
    const store = fresh();
    for (const record of ['eva', 'gelatine', 'pva']) {
      if (!catalogue.adhesives.has(record)) continue;
      store.pickGlue(0, record);
      expect(names(store)[0]).toBe(nameOf(record));
    }
    store.nameGlue(0, 'Old pot');
    store.pickGlue(0, 'eva');
    expect(store.$text.get().glues[0]).toEqual({ name: 'Old pot', record: 'eva', named: 'yes' });
    expect(store.$plan.get().glues[0]).toEqual({ id: 'glue-1', name: 'Old pot', record: 'eva' });
  });
  it('follows again once it was emptied, and where what was typed is the shelf’s own', () => {
    const store = fresh();
    store.nameGlue(0, '');
    store.pickGlue(0, 'eva');
    expect(names(store)[0]).toBe(nameOf('eva'));
    store.nameGlue(1, nameOf('wheat-starch-paste-thin'));
    store.pickGlue(1, 'pva');
    expect(names(store)[1]).toBe(nameOf('pva'));
  });
  it('stays where nothing of the shelf is picked', () => {
    const store = fresh();
    store.pickGlue(0, '');
    expect(store.$text.get().glues[0]).toEqual({ name: nameOf('pva'), record: '', named: '' });
  });
  it('of an older draft is set right when it was never typed', () => {
    const store = fresh();
    const glues = [
      { name: 'PVA', record: 'eva' },
      { name: 'Old pot', record: 'pva' },
      { name: 'Adhesive 3', record: '' },
    ];
    store.wake(storing({ ...DEFAULT_PLAN, glues }), 1);
    expect(names(store)).toEqual([nameOf('eva'), 'Old pot', 'Adhesive 3']);
  });
  it('is kept as it was typed', () => {
    const storage = storing();
    const store = fresh();
    store.wake(storage, 1);
    store.nameGlue(0, 'Old pot');
    const next = fresh();
    next.wake(storage, 1);
    next.pickGlue(0, 'eva');
    expect(names(next)[0]).toBe('Old pot');
  });
});
