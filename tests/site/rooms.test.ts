/** Five ways in, and one name for each calculator: in its own title, where it is framed, and in every list. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { ROOMS, type RoomId } from '../../src/core/handover/rooms';
import { PHONE, SITE, withPage } from './support/browser';
import { BASE, documentOf, PAGES } from './support/dist';

const IDS = Object.keys(ROOMS) as RoomId[];
const pageAt = (path: string) => {
  const page = PAGES.find(({ address }) => address === BASE + path.slice(1));
  if (!page) throw new Error(`no page at ${path}`);
  return documentOf(page);
};
const titleOf = (path: string) => pageAt(path).querySelector('main h1')?.textContent?.trim();

test.for(IDS)('%s has one name', (id) => {
  const path = `/${ROOMS[id].path}`;
  expect(titleOf(path)).toBe(ROOMS[id].name);
  const named = [...pageAt('/calculators/').querySelectorAll('main a')].map((link) => [
    link.getAttribute('href'),
    link.textContent?.trim(),
  ]);
  expect(named).toContainEqual([BASE + path.slice(1), ROOMS[id].name]);
  if (id !== 'trial') expect(titleOf(`/embed${path}`)).toBe(ROOMS[id].name);
});

/** Where what can be pressed in the head stands, from the top of the page. */
const headOf = (page: Page) =>
  page.locator('.running-head :is(a, button)').evaluateAll((all) =>
    all
      .filter((one) => one.checkVisibility())
      .map((one) => {
        const { top, width, height } = one.getBoundingClientRect();
        return { name: one.textContent!.trim(), top, width, height };
      }),
  );

const ROOMS_IN_HEAD = ['Learn', 'Choose', 'Calculators', 'Class', 'Trials'];

test.for([360, 390, 430, 800])('the head is one row at %d px, wide and high enough for a thumb', (width) =>
  withPage({ ...PHONE, viewport: { width, height: 844 } }, async (page) => {
    await page.goto(SITE);
    const head = await headOf(page);
    expect(head.map(({ name }) => name)).toEqual(['Open Time', ...ROOMS_IN_HEAD, 'More']);
    const middles = new Set(head.map(({ top, height }) => Math.round(top + height / 2)));
    expect(middles.size).toBe(1);
    expect(head.filter((one) => one.width < 44 || (one.height < 44 && width < 500))).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  }),
);

test.for([195, 320])('at %d px, as on a phone whose letters are doubled, the head runs on in further rows', (width) =>
  withPage({ ...PHONE, viewport: { width, height: 844 } }, async (page) => {
    await page.goto(SITE);
    const head = await page.locator('.running-head').evaluate((one) => [one.scrollWidth, one.clientWidth]);
    expect(head[0]).toBeLessThanOrEqual(head[1]!);
    expect((await headOf(page)).map(({ name }) => name).toSorted()).toEqual(
      ['Open Time', ...ROOMS_IN_HEAD, 'More'].toSorted(),
    );
  }),
);

test.for([true, false])('the shelf and the search open from the end of the row, with script: %s', (javaScriptEnabled) =>
  withPage({ ...PHONE, javaScriptEnabled }, async (page) => {
    await page.goto(SITE);
    expect(await page.locator('.site-tools').isVisible()).toBe(false);
    await page.getByRole('button', { name: 'More' }).tap();
    expect(await page.locator('.site-tools a').allInnerTexts()).toEqual(['Shelf', 'Search']);
    await page.getByRole('link', { name: 'Shelf', exact: true }).first().tap();
    await page.waitForURL('**/shelf/');
  }),
);

test('on a desk all of it stands in the row', () =>
  withPage({ viewport: { width: 1280, height: 900 } }, async (page) => {
    await page.goto(SITE);
    const head = await headOf(page);
    expect(head.map(({ name }) => name)).toEqual(['Open Time', ...ROOMS_IN_HEAD, 'Shelf', 'Search']);
    expect(new Set(head.map(({ top, height }) => Math.round(top + height / 2))).size).toBe(1);
  }));

test('on a desk the parts of a lesson stay in view beside it', () =>
  withPage({ viewport: { width: 1280, height: 900 } }, async (page) => {
    await page.goto(`${SITE}lessons/grain/`);
    await page.locator('.pager').scrollIntoViewIfNeeded();
    const contents = (await page.locator('.contents').boundingBox())!;
    expect(contents.y).toBeGreaterThanOrEqual(0);
    const text = (await page.locator('.prose > p').last().boundingBox())!;
    expect(contents.x + contents.width).toBeLessThan(text.x);
    expect((await page.locator('.contents a').first().boundingBox())!.height).toBeGreaterThan(20);
    expect(await page.locator('.page-title .label a').first().innerText()).toBe('Learn');
  }));
