/** The shelf on a phone: parts that are no longer than a reader will thumb through, and anchors of before that still lead on. */
import { describe, expect, test } from 'vitest';
import { look, ORIGIN, PHONE, SITE, withPage } from './support/browser';
import { BASE, PAGES, documentOf, fileAt, partOf } from './support/dist';
import { readContent } from '../../src/schemas/read-content';

/** The phone of the design is 844 px high. */
const SCREEN = 844;
const TALLEST = 10 * SCREEN;

const PARTS = PAGES.filter(({ file }) =>
  /^shelf\/((papers|adhesives|substrates|ingredients|techniques|cautions|plates(\/[a-z]+)?)\/)?index\.html$/.test(file),
);
const longReads = [...PARTS, ...PAGES.filter(({ file }) => file === 'how-we-check/index.html')];

describe('on a phone', () => {
  test.for(longReads.map((page) => [page.address, page] as const))(
    '%s is under ten screens high, and nothing scrolls sideways',
    async ([, { address }]) => {
      await look(PHONE, async (page) => {
        await page.goto(ORIGIN + address);
        const { high, wide, swiped } = await page.evaluate(() => ({
          high: document.documentElement.scrollHeight,
          wide: document.documentElement.scrollWidth,
          swiped: [...document.querySelectorAll('main *')]
            .filter((one) => one.checkVisibility() && one.scrollWidth > one.clientWidth + 1)
            .filter((one) => /auto|scroll/.test(getComputedStyle(one).overflowX))
            .map((one) => one.getAttribute('aria-label') ?? one.className),
        }));
        expect(high).toBeLessThan(TALLEST);
        expect(wide).toBeLessThanOrEqual(390);
        expect(swiped).toEqual([]);
      });
    },
  );
});

test('every anchor that the shelf had when it was one page leads to where the record stands now', () => {
  const shelf = documentOf(PAGES.find(({ file }) => file === 'shelf/index.html')!);
  const content = readContent();
  for (const part of ['papers', 'substrates', 'adhesives', 'ingredients', 'techniques', 'cautions'] as const) {
    expect(shelf.getElementById(part), part).not.toBeNull();
    for (const id of content[part].keys()) {
      const link = shelf.querySelector(`#${part}-${id} a`)?.getAttribute('href') ?? '';
      const [path = '', anchor] = link.split('#');
      expect(path.startsWith(`${BASE}shelf/${part}/`), `${part}-${id}: ${link}`).toBe(true);
      expect(fileAt(path), link).toBeDefined();
      if (anchor !== undefined) {
        const page = PAGES.find(({ address }) => address === path)!;
        expect(documentOf(page).getElementById(anchor), link).not.toBeNull();
      }
    }
  }
  const plates = documentOf(PAGES.find(({ file }) => file === 'shelf/plates/index.html')!);
  for (const lot of ['spread', 'lay', 'corner', 'pot', 'cooking', 'test', 'failure', 'tool', 'project', 'moving'])
    expect(plates.querySelector(`#${lot} a`)?.getAttribute('href'), lot).toBe(`${BASE}shelf/plates/${lot}/`);
});

test('an adhesive’s caution is found on the page of cautions', async () => {
  await withPage(PHONE, async (page) => {
    await page.goto(`${SITE}shelf/cautions/#cautions-hot-iron`);
    await page.locator('#cautions-hot-iron').waitFor();
    expect(await page.locator(':target').getAttribute('id')).toBe('cautions-hot-iron');
  });
});

test('a swatch shows one view of the paper, square, and not the strip of three that its file holds', async () => {
  await withPage({}, async (page) => {
    await page.goto(`${SITE}shelf/papers/lokta-light/`);
    const swatches = page.locator('.swatch').first().locator('img');
    await swatches.first().scrollIntoViewIfNeeded();
    await expect.poll(() => swatches.first().evaluate((one: HTMLImageElement) => one.complete)).toBe(true);
    const boxes = await swatches.evaluateAll((all) => all.map((one) => one.getBoundingClientRect()));
    expect(boxes).toHaveLength(3);
    for (const { width, height } of boxes) expect(Math.abs(width - height)).toBeLessThanOrEqual(1);
  });
});

test('each paper is drawn on its own page and on those of its answers, fetched when it comes into view and marked as drawn', () => {
  const shown = PAGES.filter(({ file }) => /^(answers|shelf\/papers)\/[^/]+\/index\.html$/.test(file));
  const drawn = new Set<string>();
  for (const page of shown) {
    const figure = partOf(page, /<figure\b(?:(?!<\/figure>)[\s\S])*?<ul\b[^>]*\bswatch\b/, '</figure>');
    const swatch = figure.querySelector('ul.swatch')!;
    const views = [...swatch.querySelectorAll('img')];
    const [paper = '', ...others] = new Set(views.map(({ src }) => /\/([\w-]+)\.svg#/.exec(src)?.[1] ?? src));
    expect(others, page.file).toEqual([]);
    if (page.file.startsWith('shelf/')) expect(page.file).toContain(`/${paper}/`);
    expect(
      views.map(({ src }) => src.split('#')[1]),
      page.file,
    ).toEqual(['flat', 'light', 'torn']);
    for (const view of views) {
      expect(view.getAttribute('loading'), page.file).toBe('lazy');
      expect(view.alt.length, page.file).toBeGreaterThan(10);
    }
    expect(swatch.closest('figure')?.textContent, page.file).toContain('drawn, not a photograph');
    drawn.add(paper);
  }
  expect([...drawn].sort()).toEqual([...readContent().papers.keys()].sort());
});
