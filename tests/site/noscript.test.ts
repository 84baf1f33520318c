/** With scripts off, a page still says what it is for and shows the answers it was built with. */
import { expect, test } from 'vitest';
import { ORIGIN, withPage } from './support/browser';
import { LESSONS, LOOKED_AT, PAGES_WITH_ISLANDS } from './support/dist';

/** the pages of the top level, those with calculators, one lesson, and some of each family */
const chosen = LOOKED_AT.filter(
  (page) =>
    /^([^/]+\/)?index\.html$/.test(page.file) ||
    /^(?:answers|shelf)\//.test(page.file) ||
    PAGES_WITH_ISLANDS.includes(page) ||
    LESSONS.indexOf(page) === 0,
);

test.for(chosen.map((page) => [page.address, page] as const))('%s', async ([, page]) => {
  await withPage({ javaScriptEnabled: false }, async (tab) => {
    await tab.goto(ORIGIN + page.address);
    expect(await tab.locator('main h1').first().innerText()).not.toBe('');
    expect((await tab.locator('main').innerText()).length).toBeGreaterThan(200);
    // a fold is opened by hand
    for (const fold of await tab.locator('main details.fold:not([open]):has(astro-island) > summary').all())
      await fold.click();
    for (const island of await tab.locator('main astro-island').all()) {
      // a number in it means that an answer, and not only an empty form, was built
      expect(await island.innerText()).toMatch(/\d/);
    }
  });
});
