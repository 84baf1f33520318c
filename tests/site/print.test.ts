/** A page printed for the bench is the page without its furniture. */
import { expect, test } from 'vitest';
import { ORIGIN, withPage } from './support/browser';
import { LESSONS, PAGES_WITH_ISLANDS } from './support/dist';

test('there is a lesson to print', () => {
  expect(LESSONS.length).toBeGreaterThan(0);
});

const chosen = [...new Set([...LESSONS.slice(0, 1), ...PAGES_WITH_ISLANDS.slice(0, 1)])];

test.for(chosen.map((page) => [page.address, page] as const))('%s prints without navigation', async ([, page]) => {
  await withPage({}, async (tab) => {
    await tab.goto(ORIGIN + page.address);
    const nav = tab.getByRole('banner').getByRole('navigation');
    expect(await nav.isVisible()).toBe(true);
    await tab.emulateMedia({ media: 'print' });
    expect(await tab.locator('body > header nav').isVisible()).toBe(false);
    expect(await tab.locator('main h1').isVisible()).toBe(true);
    const pdf = (await tab.pdf({ format: 'A4' })).toString('latin1');
    expect(pdf.startsWith('%PDF-')).toBe(true);
    expect(pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0).toBeGreaterThan(0);
  });
});
