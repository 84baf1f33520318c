/** A maker's, a teacher's and a student's way through the calculator of warp, on the built site in a real browser. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { flatAnswer } from '../../src/core/flat/answer';
import { DEFAULT_FLAT, type FlatPlan } from '../../src/core/flat/plan';
import { keepUnits } from '../../src/core/base/format';
import { readCatalogue } from '../tools/read-content';
import { open, PHONE, SITE, withPage } from './support/browser';

const FLAT = `${SITE}flat/`;
const catalogue = readCatalogue();

/** What the core answers, worked out here and not in the page. */
function told(change: Partial<FlatPlan> = {}): string {
  const found = flatAnswer({ ...DEFAULT_FLAT, ...change }, catalogue);
  if (!found.ok) throw new Error(found.errors[0]?.message);
  return keepUnits(found.value.why);
}
const inTheEnd = (page: Page, words: string) =>
  page.waitForFunction((asked) => document.querySelector('.bench-answer .verdict-why')?.textContent === asked, words);
const box = (page: Page, name: RegExp) => page.getByRole('textbox', { name });

test('filled in on a phone, sent, and opened by someone else: the same answer', async () => {
  const job: Partial<FlatPlan> = { paper: 'wove-text', width: 235, boardThick: 3, adhesive: 'pva', later: 65 };
  const sent = await withPage(PHONE, async (page) => {
    const complaints = await open(page, FLAT);
    await inTheEnd(page, told());
    await page.getByRole('combobox', { name: 'The cover paper is most like' }).selectOption('wove-text');
    await box(page, /^Board’s width/).fill('23,5 cm');
    await box(page, /^Board’s thickness/).fill('3');
    await page.getByRole('combobox', { name: 'The adhesive' }).selectOption('pva');
    await box(page, /^Where it will live/).fill('65');
    await inTheEnd(page, told(job));
    const strip = page.locator('.bench-strip');
    expect(await strip.isVisible()).toBe(true);
    const link = await box(page, /^Link to exactly/).inputValue();
    await page.waitForFunction((address) => location.href === address, link);
    expect(complaints).toEqual([]);
    return link;
  });
  await withPage({}, async (page) => {
    const complaints = await open(page, sent);
    await inTheEnd(page, told(job));
    expect(await box(page, /^Board’s width/).inputValue()).toBe('235');
    expect(await page.getByRole('status').count()).toBe(0);
    expect(complaints).toEqual([]);
  });
});

test('with the keyboard alone: a field, a remedy, and back', async () => {
  await withPage({}, async (page) => {
    const complaints = await open(page, FLAT);
    await box(page, /^Board’s width/).focus();
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.type('300');
    await inTheEnd(page, told({ width: 300 }));
    // from the fields on to the radio of the lining and the first remedy, by Tab and the space bar
    const reach = async (name: RegExp) => {
      for (let steps = 0; steps < 60; steps += 1) {
        await page.keyboard.press('Tab');
        const label = await page.evaluate(
          () => document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.textContent,
        );
        if (label && name.test(label)) return;
      }
      throw new Error(`Tab never came to ${String(name)}`);
    };
    await reach(/^Try this: Both faces covered alike/);
    await page.keyboard.press('Space');
    const alike: Partial<FlatPlan> = { width: 300, lining: 'paper', liningPaper: DEFAULT_FLAT.paper };
    await inTheEnd(page, told(alike));
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('warp-answer');
    await reach(/^Back to what it was/);
    await page.keyboard.press('Enter');
    await inTheEnd(page, told({ width: 300 }));
    expect(complaints).toEqual([]);
  });
});

describe('slips', () => {
  test('air that cannot be is refused beside its field, and the last answer stays', async () => {
    await withPage(PHONE, async (page) => {
      const complaints = await open(page, FLAT);
      await box(page, /^Its humidity/).fill('140');
      expect(await page.locator('#warp-humidity-error').innerText()).toMatch(/from 5 to 95/);
      await inTheEnd(page, told());
      await box(page, /^Its humidity/).fill('40');
      await inTheEnd(page, told({ humidity: 40 }));
      expect(await page.locator('#warp-humidity-error').count()).toBe(0);
      expect(complaints).toEqual([]);
    });
  });
  test('a broken link opens with what can be read', async () => {
    await withPage(PHONE, async (page) => {
      const complaints = await open(page, `${FLAT}?v=9&paper=moon&wide=NaN&rh-later=1e9&press=0&seen=%E0%A4%A`);
      await inTheEnd(page, told({ press: 0 }));
      const notice = await page.getByRole('status').innerText();
      for (const part of ['wide (NaN)', 'rh-later (1e9)', 'paper']) expect(notice).toContain(part);
      expect(await page.locator('main').innerText()).not.toMatch(/\bundefined\b|Infinity/);
      expect(complaints).toEqual([]);
    });
  });
});

test('without script the first answer stands there to read, and the lesson leads to it', async () => {
  await withPage({ javaScriptEnabled: false }, async (page) => {
    await page.goto(FLAT);
    expect(await page.locator('.bench-answer .verdict-why').textContent()).toBe(told());
    await page.goto(`${SITE}lessons/flatness/`);
    expect(await page.getByRole('link', { name: 'Will it lie flat?' }).getAttribute('href')).toMatch(/\/flat\/$/);
  });
});
