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

describe('a plan that a link brought', () => {
  const link = '?v=1&paper=marbled&glue=pva.wheat-starch-paste-thin';
  const sent = { link, text: { ...DEFAULT_PLAN, holds: '16' } };
  const opened = (session: Storage | undefined, by = sent, isReturn = true) => {
    const store = fresh();
    store.wake(storing(), 1, { ...by, isReturn }, session);
    return store;
  };
  it('is gone back to as it was left: an adhesive taken away stays away', () => {
    const tab = storing();
    const store = opened(tab);
    store.set('glues', store.$text.get().glues.slice(0, 1));
    const again = opened(tab);
    expect(names(again)).toEqual([nameOf('pva')]);
    expect(again.$text.get().holds).toBe('16');
    expect(again.$plan.get().glues).toHaveLength(1);
  });
  it('is the link’s own where the link is opened anew, also on the way back to that', () => {
    const tab = storing();
    opened(tab).set('holds', '45');
    expect(opened(tab, sent, false).$text.get()).toEqual(sent.text);
    expect(opened(tab).$text.get()).toEqual(sent.text);
  });
  it('is the link’s own where nothing was typed over it, and in another tab', () => {
    const tab = storing();
    opened(tab);
    expect(opened(tab).$text.get()).toEqual(sent.text);
    opened(tab).set('holds', '45');
    expect(opened(storing()).$text.get()).toEqual(sent.text);
    expect(opened(undefined).$text.get()).toEqual(sent.text);
  });
  it('is the new link’s own where another link is opened, and after its trial is drawn', () => {
    const tab = storing();
    opened(tab).set('holds', '45');
    const other = { link: '?v=1&paper=marbled&glue=eva', text: { ...DEFAULT_PLAN, holds: '8' } };
    expect(opened(tab, other).$text.get().holds).toBe('8');
    const store = opened(tab);
    expect(store.$text.get().holds).toBe('45');
    store.forget();
    expect(opened(tab).$text.get().holds).toBe('16');
  });
  it('is the link’s own where what was left cannot be read', () => {
    expect(opened(storing('nothing of a plan')).$text.get()).toEqual(sent.text);
  });
});
