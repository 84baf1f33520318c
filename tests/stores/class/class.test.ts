/** A class is answered in two parts: the sheet, and then how it is glued. */
import { describe, expect, it } from 'vitest';
import { classAnswer } from '../../../src/core/class/answer';
import { DEFAULT_CLASS, type ClassPlan } from '../../../src/core/class/plan';
import { catalogue } from '../../../src/data/catalogue';
import { createClass, type ClassStore, type Laid } from '../../../src/stores/class/class';
import { layingInTurns } from '../../../src/stores/class/class-laying';
import { openClass, prepareClass } from '../../../src/stores/class/open-class';

/** When the gluing of the sheet that stands there is worked out. */
const laidOf = (store: ClassStore): Promise<Laid> =>
  new Promise((resolve) => {
    store.$laid.subscribe((laid) => {
      if (laid && laid.sheet === store.$solved.get().answer) resolve(laid);
    });
  });
const solved = (store: ClassStore): Promise<void> =>
  new Promise((resolve) => {
    store.$isLoading.subscribe((isLoading) => {
      if (!isLoading) setTimeout(resolve);
    });
  });
const whole = (change: Partial<ClassPlan>) => {
  const found = classAnswer({ ...DEFAULT_CLASS, ...change }, catalogue);
  if (!found.ok) throw new Error('no such class');
  return found.value;
};

describe('how it is glued', () => {
  it('follows the sheet, and both are the whole answer', async () => {
    const store = createClass(catalogue);
    expect(store.$laid.get()).toBeUndefined();
    const stop = store.layWith(layingInTurns());
    const { sheet, laying } = await laidOf(store);
    expect({ ...sheet, ...laying }).toEqual(whole({}));
    stop();
  });
  it('is that of the last sheet, whatever was asked before it was there', async () => {
    const store = createClass(catalogue);
    const stop = store.layWith(layingInTurns());
    store.set('celsius', '28');
    store.set('adhesive', 'wheat-starch-paste-thick');
    await solved(store);
    const { sheet, laying } = await laidOf(store);
    expect({ ...sheet, ...laying }).toEqual(whole({ celsius: 28, adhesive: 'wheat-starch-paste-thick' }));
    stop();
  });
  it('goes no further once it is stopped', async () => {
    const store = createClass(catalogue);
    const stop = store.layWith(layingInTurns());
    const { sheet } = await laidOf(store);
    stop();
    store.set('people', '11');
    await solved(store);
    expect(store.$laid.get()!.sheet).toBe(sheet);
    expect(store.$solved.get().answer).not.toBe(sheet);
  });
});

describe('what was typed before the page woke', () => {
  const openTyped = async (typed: Record<string, string>) => {
    await prepareClass({ typed, prefix: 'class-' });
    return openClass();
  };
  it('is what the first answer is to', async () => {
    const store = await openTyped({ 'class-people': '17', 'class-nonsense': 'x' });
    expect(store.$solved.get().plan.people).toBe(17);
    expect(store.$texts.get().people).toBe('17');
    expect(store.$solved.get().answer.brief[0]).toBe('18 kits');
  });
  it.each([[{}], [{ 'class-people': 'many' }], [{ 'class-joint': '1' }], [{ 'class-unit': 'in' }]])(
    '%j makes no class by itself, and the page opens at the usual one',
    async (typed) => {
      const store = await openTyped(typed as Record<string, string>);
      expect(store.$solved.get().plan).toBe(DEFAULT_CLASS);
    },
  );
});
