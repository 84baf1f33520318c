/** The questions of a lesson take an answer, say why, and remember what was right. */
import { expect, test } from 'vitest';
import { ORIGIN, open, withPage } from './support/browser';
import { BASE, LESSONS } from './support/dist';
import type { Page } from 'playwright-core';

const MENDING = LESSONS.find(({ address }) => address.endsWith('/mending/'))!;
const PASTE = LESSONS.find(({ address }) => address.endsWith('/starch-paste/'))!;
const said = (page: Page, at: number) => page.locator('.question').nth(at).getByRole('status');
const check = (page: Page, at: number) =>
  page.locator('.question').nth(at).getByRole('button', { name: 'Check' }).press('Enter');

test('a choice: wrong says why not, right counts, and the count is there again on the lesson and in the list', async () => {
  await withPage({}, async (page) => {
    await open(page, ORIGIN + MENDING.address);
    const question = page.locator('.question').first();
    await check(page, 0);
    await expect.poll(() => said(page, 0).innerText()).toMatch(/^Choose one/);
    await question.getByRole('radio', { name: /A strip of the same paper/ }).check();
    await check(page, 0);
    await expect.poll(() => said(page, 0).innerText()).toMatch(/^No\.\s+It would be as strong as the leaf/);
    expect(await page.locator('.questions-count').innerText()).toBe('0 of 4 done.');
    await question.getByRole('radio', { name: /Kozo tissue of about 10/ }).check();
    await check(page, 0);
    await expect.poll(() => said(page, 0).innerText()).toMatch(/^Right\.\s+Long fibres/);
    expect(await page.locator('.questions-count').innerText()).toBe('1 of 4 done.');

    await page.reload();
    await expect.poll(() => page.locator('.questions-count').innerText()).toBe('1 of 4 done.');
    await page.goto(`${ORIGIN}${BASE}lessons/`);
    const row = page.locator('li', { has: page.getByRole('link', { name: 'Mending a tear' }) });
    await expect.poll(() => row.innerText()).toContain('1 of 4 questions done');

    await page.goto(ORIGIN + MENDING.address);
    await page.getByRole('button', { name: 'Forget it' }).press('Enter');
    expect(await page.locator('.questions-count').innerText()).toBe('0 of 4 done.');
    expect(await page.evaluate(() => localStorage.getItem('open-time:answered'))).toBeNull();
  });
});

test('a number: with its unit or without, too small, a slip, and no number', async () => {
  await withPage({}, async (page) => {
    await open(page, ORIGIN + PASTE.address);
    const typed = async (text: string, words: RegExp) => {
      await page.locator('.question input').first().fill(text);
      await check(page, 0);
      await expect.poll(() => said(page, 0).innerText()).toMatch(words);
    };
    await typed('some', /^Type a number in ml/);
    expect(await page.locator('.question input').first().getAttribute('aria-invalid')).toBe('true');
    await typed('200', /too small/);
    await typed('240', /One part in seven would be 1:6/);
    // 7 × 40 g
    await typed('280 ml', /^Right/);
    expect(await page.locator('.question details').first().getAttribute('open')).not.toBeNull();
  });
});

test('where nothing may be kept, it says so and counts all the same', async () => {
  await withPage({}, async (page) => {
    await page.addInitScript(() => {
      Storage.prototype.setItem = () => {
        throw new Error('refused');
      };
    });
    await open(page, ORIGIN + PASTE.address);
    await page.locator('.question input').first().fill('280');
    await check(page, 0);
    await expect.poll(() => page.locator('.questions-count').innerText()).toBe('1 of 4 done.');
    expect(await page.locator('.questions-kept').innerText()).toMatch(/keeps nothing/);
  });
});

test('without script there is no form, and the answer stands behind the question', async () => {
  await withPage({ javaScriptEnabled: false }, async (page) => {
    await page.goto(ORIGIN + MENDING.address);
    expect(await page.locator('.question-try').first().isVisible()).toBe(false);
    expect(await page.locator('.questions-note').isVisible()).toBe(false);
    await page.locator('.question summary').first().click();
    expect(await page.locator('.question details').first().innerText()).toMatch(/Right: “Kozo tissue of about 10/);
  });
});
