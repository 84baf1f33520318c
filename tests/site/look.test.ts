/** Tests that only look share a page (see `look`): what one of them left behind is no part of what the next one sees. */
import { expect, test } from 'vitest';
import { look, SITE } from './support/browser';

const WINDOW = { viewport: { width: 500, height: 400 } };

test('a page that is looked at again has forgotten what it kept, and is as wide as at first', async () => {
  const heard: string[] = [];
  const first = await look(WINDOW, async (page) => {
    page.on('request', (request) => heard.push(request.url()));
    await page.goto(`${SITE}404.html`);
    await page.evaluate(async () => {
      localStorage.setItem('kept', 'here');
      sessionStorage.setItem('kept', 'here');
      document.cookie = 'kept=here';
      await caches.open('kept');
      await new Promise((done) => (indexedDB.open('kept').onsuccess = done));
      // and what a page keeps as it goes
      addEventListener('pagehide', () => sessionStorage.setItem('late', 'here'));
    });
    await page.setViewportSize({ width: 320, height: 640 });
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    return page;
  });
  const before = heard.length;
  expect(before).toBeGreaterThan(0);
  await look(WINDOW, async (page) => {
    expect(page).toBe(first);
    await page.goto(`${SITE}404.html`);
    const found = await page.evaluate(async () => ({
      kept: [...Object.keys(localStorage), ...Object.keys(sessionStorage), document.cookie].filter(Boolean),
      caches: await caches.keys(),
      databases: await indexedDB.databases(),
      wide: innerWidth,
      print: matchMedia('print').matches,
      dark: matchMedia('(prefers-color-scheme: dark)').matches,
      still: matchMedia('(prefers-reduced-motion: reduce)').matches,
    }));
    expect(found).toEqual({
      kept: [],
      caches: [],
      databases: [],
      wide: 500,
      print: false,
      dark: false,
      still: true,
    });
  });
  expect(heard).toHaveLength(before);
});

test('one that failed is looked at no more', async () => {
  const failed = look(WINDOW, async (page) => {
    await page.goto(`${SITE}404.html`);
    throw Object.assign(new Error('as a test does that fails'), { page });
  });
  const page = await failed.catch((problem: Error & { page: unknown }) => problem.page);
  expect(page).toBeDefined();
  await look(WINDOW, async (other) => {
    await other.goto(`${SITE}404.html`);
    expect(other).not.toBe(page);
  });
});
