/** A teacher's and a student's way through the project calculator, on the built site in a real browser. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { DEFAULT_MAKE, type MakePlan } from '../../src/core/make/fields';
import { makeAnswer } from '../../src/core/make/answer';
import { open, PHONE, SITE, wakeIslands, withPage } from './support/browser';

const MAKE = `${SITE}make/`;

const field = (page: Page, name: RegExp) => page.getByRole('textbox', { name });
const rowsOf = (page: Page) =>
  page
    .locator('.bench-answer tbody tr')
    .evaluateAll((rows) =>
      rows.map((row) => [...row.querySelectorAll('th, td')].map((cell) => cell.textContent).join('; ')),
    );
/** What the core answers, worked out here and not in the page. */
function told(plan: Partial<MakePlan>): string[] {
  const found = makeAnswer({ ...DEFAULT_MAKE, ...plan });
  if (!found.ok) throw new Error(found.errors[0]?.message);
  return found.value.rows.map(({ name, from, size, count }) => `${name}${from}; ${size}; ${count}`);
}

test('filled in on a phone, sent, and opened by someone else: the same pieces', async () => {
  const plan = { project: 'lidded-box', width: 120.5, thickness: 60, lidDepth: 25, lined: 'no' } as const;
  const sent = await withPage(PHONE, async (page) => {
    const complaints = await open(page, MAKE);
    await page.getByRole('radio', { name: 'Lidded box' }).tap();
    await field(page, /^Width/).fill('120,5');
    await field(page, /^Thickness/).fill('60');
    await field(page, /^Lid, inside depth/).fill('2,5 cm');
    await page.getByRole('combobox', { name: 'Lined inside' }).selectOption('no');
    await expect.poll(() => rowsOf(page)).toEqual(told(plan));
    expect(complaints).toEqual([]);
    await expect.poll(() => page.url()).toContain('lid=25');
    return field(page, /^Link to exactly/).inputValue();
  });
  await withPage(PHONE, async (page) => {
    const complaints = await open(page, sent);
    await expect.poll(() => rowsOf(page)).toEqual(told(plan));
    // a link on a phone shows the answer first; the form is folded to its line
    await page.locator('.form-fold > summary').tap();
    expect(await field(page, /^Width/).inputValue()).toBe('120.5');
    expect(await page.locator('.bench-answer .problem-list').count()).toBe(0);
    expect(complaints).toEqual([]);
  });
});

test('with the keyboard only: another project, another size, on to the coverage calculator', () =>
  withPage({}, async (page) => {
    const complaints = await open(page, MAKE);
    await page.getByRole('radio', { name: 'Case-bound notebook' }).focus();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await expect.poll(() => rowsOf(page)).toEqual(told({ project: 'slip-case' }));
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Control+A');
    await page.keyboard.type('113');
    await expect.poll(() => rowsOf(page)).toEqual(told({ project: 'slip-case', width: 113 }));
    for (let i = 0; i < 40; i += 1) {
      if (await page.evaluate(() => document.activeElement?.textContent?.trim() === 'How much it takes')) break;
      await page.keyboard.press('Tab');
    }
    await page.keyboard.press('Enter');
    await page.waitForURL(/\/cover\/\?/);
    await wakeIslands(page);
    // The largest glued piece: sides and back of 2 × 115.5 + 19 by 217, in the calculator of coverage.
    expect(await page.getByRole('textbox', { name: 'Width mm' }).first().inputValue()).toBe('250');
    expect(complaints).toEqual([]);
  }));

test('bad input is named beside its field, and what was typed stays', () =>
  withPage({}, async (page) => {
    const complaints = await open(page, MAKE);
    const before = await rowsOf(page);
    await field(page, /^Joint/).fill('1');
    await expect.poll(() => page.locator('#make-joint-error').textContent()).toMatch(/at least as wide as the board/);
    expect(await field(page, /^Joint/).inputValue()).toBe('1');
    expect(await rowsOf(page)).toEqual(before);
    await page.locator('.problem-list a').first().click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('make-joint');
    expect(complaints).toEqual([]);
  }));

test('a hostile link opens with an answer', () =>
  withPage({}, async (page) => {
    const complaints = await open(page, `${MAKE}?make=%E0%A4%A&wide=1e309&high=NaN&panels=-0&square=<script>&seen=zzz`);
    await expect.poll(() => page.locator('.bench-answer .problem-list').count()).toBe(1);
    expect(await rowsOf(page)).toEqual(told({}));
    expect(await page.locator('.bench-answer .problem-list').textContent()).toContain('wide (1e309)');
    expect(complaints).toEqual([]);
  }));
