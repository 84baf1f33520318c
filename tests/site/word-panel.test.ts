/** A trade word is explained where it stands; without script, or where the words cannot be had, its link leads to the glossary. */
import { expect, test } from 'vitest';
import { ORIGIN, PHONE, open, withPage } from './support/browser';
import { LESSONS } from './support/dist';

const FLATNESS = LESSONS.find(({ address }) => address.endsWith('/flatness/'))!;
const ADDRESS = ORIGIN + FLATNESS.address;

test('by keyboard: opens, takes the focus, and Escape gives it back', async () => {
  await withPage({}, async (page) => {
    expect(await open(page, ADDRESS)).toEqual([]);
    const word = page.getByRole('link', { name: 'endpaper', exact: true }).first();
    await word.press('Enter');
    const panel = page.getByRole('dialog', { name: 'What “endpaper” means' });
    await panel.waitFor();
    expect(await panel.innerText()).toMatch(/folded sheet at the front or back of a book/);
    expect(await panel.evaluate((one) => one === document.activeElement)).toBe(true);
    await page.keyboard.press('Tab');
    await page.keyboard.press('Escape');
    await panel.waitFor({ state: 'detached' });
    expect(await word.evaluate((one) => one === document.activeElement)).toBe(true);
    expect(page.url()).toBe(ADDRESS);
  });
});

test('on a phone: within the page, closes by its button and by a touch beside it', async () => {
  await withPage(PHONE, async (page) => {
    await open(page, ADDRESS);
    for (const close of ['button', 'beside']) {
      await page.getByRole('link', { name: 'lining', exact: true }).first().tap();
      const panel = page.getByRole('dialog', { name: 'What “lining” means' });
      await panel.waitFor();
      const { x, width } = (await panel.boundingBox())!;
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x + width).toBeLessThanOrEqual(390);
      if (close === 'button') await panel.getByRole('button', { name: 'Close' }).tap();
      else await page.touchscreen.tap(4, 4);
      await panel.waitFor({ state: 'detached' });
    }
  });
});

test('where the words cannot be had, the link is followed', async () => {
  await withPage({ serviceWorkers: 'block' }, async (page) => {
    await page.route('**/words.json', (route) => route.abort());
    await page.goto(ADDRESS);
    await page.getByRole('link', { name: 'endpaper', exact: true }).first().press('Enter');
    await page.waitForURL('**/glossary/#endpaper');
  });
});

test('without script it is a link', async () => {
  await withPage({ javaScriptEnabled: false }, async (page) => {
    await page.goto(ADDRESS);
    await page.getByRole('link', { name: 'endpaper', exact: true }).first().click();
    await page.waitForURL('**/glossary/#endpaper');
  });
});
