/** With scripts off, a page still says what it is for and shows the answers it was built with. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { ORIGIN, SITE, withPage } from './support/browser';
import { LESSONS, LOOKED_AT, PAGES_WITH_ISLANDS } from './support/dist';

/** the pages of the top level, those with calculators, one lesson, and some of each family */
const chosen = LOOKED_AT.filter(
  (page) =>
    /^([^/]+\/)?index\.html$/.test(page.file) ||
    /^(?:answers|shelf)\//.test(page.file) ||
    PAGES_WITH_ISLANDS.includes(page) ||
    LESSONS.indexOf(page) === 0,
);

/** One page for all: with scripts off, nothing can be remembered from the page before it. */
let tab: Page;
/** none where the page could not be opened, which is then what the tests say */
let close: (() => void) | undefined;
beforeAll(
  () =>
    new Promise<void>((opened, failed) => {
      const use = (page: Page) => {
        tab = page;
        opened();
        return new Promise<void>((done) => (close = done));
      };
      withPage({ javaScriptEnabled: false }, use).catch(failed);
    }),
);
afterAll(() => close?.());

test.for(chosen.map((page) => [page.address, page] as const))('%s', async ([, page]) => {
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

test('nothing is offered or feared that only a script could tell', async () => {
  for (const path of ['choose/', 'workshop/', '', 'flat/', 'trials/plan/', 'lessons/open-time/']) {
    await tab.goto(SITE + path);
    // a clock that would not run, a copy that nobody makes, a plan that nobody draws
    expect(await tab.locator('main astro-island').getByRole('button').count(), path).toBe(0);
  }
  // whether this browser keeps a trial
  await tab.goto(`${SITE}trials/plan/`);
  const text = await tab.locator('main').innerText();
  expect(text).not.toMatch(/does not let the page keep/);
});

test('that a page needs script for more is said before its first field or figure', async () => {
  for (const { address, html } of PAGES_WITH_ISLANDS) {
    const notice = html.search(/<noscript/);
    const island = html.search(/<astro-island/);
    if (/trials\/(?:cards|read|published)/.test(address)) continue; // what they show is whole without
    expect(notice, address).toBeGreaterThan(0);
    expect(notice, address).toBeLessThan(island);
  }
});

test('what can hurt in a trial stands before the button that begins it', () => {
  const { html } = PAGES_WITH_ISLANDS.find(({ address }) => address.endsWith('trials/plan/'))!;
  const begin = html.indexOf('Draw the order and begin');
  expect(begin).toBeGreaterThan(0);
  expect(html.lastIndexOf('class="caution')).toBeLessThan(begin);
  expect(html.lastIndexOf('class="caution')).toBeGreaterThan(0);
});
