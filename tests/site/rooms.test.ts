/** Five ways in, and one name for each calculator: in its own title, where it is framed, and in every list. */
import { expect, test } from 'vitest';
import { ROOMS, type RoomId } from '../../src/core/handover/rooms';
import { SITE, withPage } from './support/browser';
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

test.for([320, 390])('the rooms stand in one row at %d px, and so do the name, the shelf and the search', (width) =>
  withPage({ viewport: { width, height: 844 } }, async (page) => {
    await page.goto(SITE);
    const rows = (selector: string) =>
      page
        .locator(selector)
        .evaluateAll((links) => new Set(links.map((link) => link.getBoundingClientRect().top)).size);
    expect(await page.locator('.site-rooms a').allInnerTexts()).toEqual([
      'Learn',
      'Choose',
      'Calculators',
      'Class',
      'Trials',
    ]);
    expect(await rows('.site-rooms a')).toBe(1);
    expect(await rows('.site-tools a')).toBe(1);
    const [name, tools] = await Promise.all(
      ['.site-name', '.site-tools'].map((one) => page.locator(one).boundingBox()),
    );
    expect(tools!.y).toBeLessThan(name!.y + name!.height);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  }),
);

test('on a desk the parts of a lesson stay in view beside it', () =>
  withPage({ viewport: { width: 1280, height: 900 } }, async (page) => {
    await page.goto(`${SITE}lessons/grain/`);
    await page.locator('.pager').scrollIntoViewIfNeeded();
    const contents = (await page.locator('.contents').boundingBox())!;
    expect(contents.y).toBeGreaterThanOrEqual(0);
    const text = (await page.locator('.prose > p').last().boundingBox())!;
    expect(contents.x + contents.width).toBeLessThan(text.x);
    expect(await page.locator('.page-title .label a').first().innerText()).toBe('Learn');
  }));
