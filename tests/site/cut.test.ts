/** The sheets calculator in a real browser: typed, sent, printed, and worked without a mouse. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { open, SITE, wakeIslands, withPage } from './support/browser';

const PAGE = `${SITE}cut/`;
/** By hand: two boards of 50 × 100 a sheet. */
const HALVES = `${PAGE}?v=1&in=mm&sheets=board~100x100~long&pieces=1~half~50x100x1~height&kits=4&kerf=0`;

const answer = async (page: Page) => (await page.locator('#cut-answer').innerText()).replace(/[\u00a0\u202f]/g, ' ');

describe('in use', () => {
  test('a change is answered at once, is in the address, and opens again as it was sent', () =>
    withPage({}, async (page) => {
      const complaints = await open(page, HALVES);
      await expect.poll(() => answer(page)).toContain('2 sheets of board');
      await page.locator('#cut-kits').fill('7');
      await expect.poll(() => answer(page)).toContain('4 sheets of board');
      await expect.poll(() => page.url()).toContain('kits=7');
      const seen = await answer(page);
      const steps = await page.locator('.sheet-cut').allInnerTexts();
      await page.goto(page.url());
      await wakeIslands(page);
      await expect.poll(() => answer(page)).toBe(seen);
      expect(await page.locator('.sheet-cut').allInnerTexts()).toEqual(steps);
      expect(complaints).toEqual([]);
    }));

  test('by keyboard alone: from the top of the page to another size and another grain', () =>
    withPage({}, async (page) => {
      await open(page, HALVES.replace('kits=4', 'kits=5'));
      const focused = () => page.evaluate(() => document.activeElement?.id ?? '');
      const reach = async (id: string) => {
        for (let presses = 0; presses < 60 && (await focused()) !== id; presses += 1) await page.keyboard.press('Tab');
        expect(await focused()).toBe(id);
      };
      await reach('cut-stock-0-wide');
      await page.keyboard.press('ControlOrMeta+a');
      await page.keyboard.type('250');
      await expect.poll(() => answer(page)).toMatch(/2 sheets of board/);
      // The longer side lies now, and the grain with it: so do the pieces, two across and two down. Turned, five stand.
      await reach('cut-stock-0-grain');
      await page.keyboard.press('ArrowDown');
      await expect.poll(() => answer(page)).toContain('1 sheet of board');
    }));

  test('bad input says what is allowed beside its field, and the last answer stays', () =>
    withPage({}, async (page) => {
      const complaints = await open(page, HALVES);
      await page.locator('#cut-piece-0-wide').fill('130');
      await expect.poll(() => page.locator('#cut-piece-0-wide-error').innerText()).toContain('30 mm too long');
      expect(await page.locator('#cut-piece-0-wide').inputValue()).toBe('130');
      expect(await answer(page)).toContain('2 sheets of board');
      expect(complaints).toEqual([]);
    }));

  test.for([
    '?%E0%A4%A',
    '?sheets=~~~&pieces=___&kits=1e9',
    '?sheets=a~9x9~long&pieces=9~b~1x1x1~either',
    '?kerf=wide',
  ])('a broken link is opened all the same: %s', (tail) =>
    withPage({}, async (page) => {
      const complaints = await open(page, PAGE + tail);
      await expect.poll(() => answer(page)).toMatch(/\d+ sheets? of/);
      expect(await page.locator('main').innerText()).not.toMatch(/NaN|undefined|Infinity/);
      expect(complaints).toEqual([]);
    }),
  );
});

test('on a wide screen what follows the answer is not covered by it', () =>
  withPage({ viewport: { width: 1280, height: 900 } }, async (page) => {
    await open(page, PAGE);
    const covered = await page.evaluate(() => {
      const step = document.querySelector('.sheet-cut ol li')!;
      scrollTo(0, step.getBoundingClientRect().top + scrollY - 200);
      const { left, top, width, height } = step.getBoundingClientRect();
      return !step.contains(document.elementFromPoint(left + width / 2, top + height / 2));
    });
    expect(covered).toBe(false);
  }));

test('on paper a sheet’s drawing and its cuts stay on one page', () =>
  withPage({}, async (page) => {
    await open(page, PAGE);
    await page.emulateMedia({ media: 'print' });
    const sheets = page.locator('.sheet-cut');
    expect(await sheets.count()).toBeGreaterThan(2);
    for (const sheet of await sheets.all()) {
      expect(await sheet.evaluate((element) => getComputedStyle(element).breakInside)).toBe('avoid');
      expect(await sheet.locator('svg').isVisible()).toBe(true);
      // A4 less the margins of the print style is 268 mm: what is no taller can be kept whole.
      expect((await sheet.boundingBox())!.height).toBeLessThan((268 / 25.4) * 96);
    }
    expect(await page.locator('.bench-inputs').isVisible()).toBe(false);
  }));
