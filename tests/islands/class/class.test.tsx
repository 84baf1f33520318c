/** The workshop sheet and the paper calculator, as a reader meets them. */
import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { classAnswer } from '../../../src/core/class/answer';
import { DEFAULT_CLASS } from '../../../src/core/class/plan';
import { catalogue } from '../../../src/data/catalogue';
import Paper from '../../../src/islands/measure/Measure';
import Workshop from '../../../src/islands/class/Class';
import { openOwnPapers } from '../../../src/stores/shared/own-papers';
import { answer, doing, linkRead, pick, press, text, type } from '../support/reader';

const usual = classAnswer(DEFAULT_CLASS, catalogue);
if (!usual.ok) throw new Error('the usual class has no answer');
const LAYING = usual.value;

const openPaper = async (tail = '') => {
  window.history.replaceState(null, '', `/paper/${tail}`);
  await doing(() => render(<Paper address="/paper/" />));
  await linkRead();
};
const openClass = async (tail = '') => {
  window.history.replaceState(null, '', `/workshop/${tail}`);
  await doing(() =>
    render(<Workshop address="/workshop/" choose="/choose/" cut="/cut/" lessons={[]} cautions={{}} laying={LAYING} />),
  );
  await linkRead();
};

beforeEach(() => {
  window.history.replaceState(null, '', '/');
  window.localStorage.clear();
});
afterEach(cleanup);

describe('know your paper', () => {
  test('pounds of another grade are another paper', async () => {
    await openPaper('?v=1&weight=pounds&lb=60&grade=text');
    expect(answer()).toContain('88.8 g/m²');
    await pick(/^of the grade/, 'cover');
    // 60 lb cover: 60 × 453.59237 g over 500 sheets of 20 × 26 in
    expect(answer()).toContain('162 g/m²');
  });
  test.for(['', 'heavy', '-1', '0', '9999'])('“%s” pounds: a message beside the field, nothing lost', async (silly) => {
    await openPaper('?v=1&weight=pounds&lb=60&grade=text');
    const before = answer();
    await type(/^Basis weight/, silly);
    expect(screen.getByLabelText<HTMLInputElement>(/^Basis weight/).value).toBe(silly);
    expect(text(document.getElementById('know-pounds-error'))).toMatch(/a number from 1 to 400/);
    expect(answer()).toBe(before);
  });
  test('a nameless paper asks for its name, a named one is kept, a second of the name takes its place', async () => {
    await openPaper();
    await press(screen.getByRole('button', { name: 'Show an example' }));
    expect(answer()).toContain('grain long');
    await doing(() => fireEvent.click(screen.getByRole('button', { name: 'Keep this paper on this device' })));
    expect(document.activeElement?.id).toBe('know-name');
    expect(openOwnPapers(window.localStorage).$papers.get()).toEqual([]);
    await type('What you call it', 'Blue cover');
    await doing(() => fireEvent.click(screen.getByRole('button', { name: 'Keep this paper on this device' })));
    await type(/^The scale shows/, '36');
    await doing(() => fireEvent.click(screen.getByRole('button', { name: 'Keep this paper on this device' })));
    const kept = openOwnPapers(window.localStorage).$papers.get();
    expect(kept).toHaveLength(1);
    expect(kept[0]).toMatch(/^wove-text~96\.2gsm.*~named Blue cover$/);
    await doing(() => fireEvent.click(screen.getByRole('button', { name: /^Remove/ })));
    expect(openOwnPapers(window.localStorage).$papers.get()).toEqual([]);
  });
  test('what lies broken in the storage is passed over', () => {
    for (const broken of ['{', '7', '[1,null,"x"]', '["kraft~9999gsm~named X"]'])
      expect(
        openOwnPapers({ getItem: () => broken, setItem: () => undefined } as unknown as Storage).$papers.get(),
      ).toEqual([]);
  });
});

describe('plan a class', () => {
  test('more people, more sheets and more glue', async () => {
    await openClass();
    expect(answer()).toContain('9 kits');
    await type('People', '23');
    expect(answer()).toContain('24 kits');
  });
  test.for(['', 'many', '0', '61', '2.5'])(
    '“%s” people: a message beside the field, the last plan stays',
    async (silly) => {
      await openClass();
      await type('People', silly);
      expect(text(document.getElementById('class-people-error'))).toMatch(/a whole number from 1 to 60/);
      expect(answer()).toContain('9 kits');
    },
  );
  test('a link from the project calculator brings its measures', async () => {
    await openClass('?v=1&make=notebook&in=mm&wide=100&high=150&thick-by=measured&thick=8&board=2&joint=9');
    // 100 + 3 (square) − 9 (joint) wide, 150 + 2 × 3 high
    expect(text(document.querySelector('.handout'))).toContain('2 × 94 × 156');
    expect(screen.queryByRole('status')).toBe(null);
  });
  test('a day that there is not is told beside it', async () => {
    await openClass('?v=1&day=2026-02-30');
    expect(text(screen.getByRole('status'))).toMatch(/day/);
  });
});
