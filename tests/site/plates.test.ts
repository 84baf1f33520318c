/** Plates where they stand: their words are large enough to be read, and on a desk they stand in line. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { look, ORIGIN, SITE, withPage } from './support/browser';
import { PAGES } from './support/dist';

/** What a word of a drawing is high at least, in the pixels of the page: the letters of a footnote. */
const LEAST = 9;

/** Pages that hold words in drawings; of answers as many as show each such drawing once. */
const SHOWN = (() => {
  const seen = new Set<string>();
  return PAGES.filter(({ file, html }) => {
    if (!/^(index\.html|answers\/|lessons\/|shelf\/plates\/)/.test(file)) return false;
    const drawings = [...html.matchAll(/<svg class="draw"[^>]*>.*?<\/svg>/gs)]
      .map(([drawing]) => [...drawing.matchAll(/<text[^>]*>([^<]*)/g)].map(([, word]) => word).join('|'))
      .filter(Boolean);
    if (!file.startsWith('answers/')) return drawings.length > 0;
    const fresh = drawings.filter((words) => !seen.has(words));
    fresh.forEach((words) => seen.add(words));
    return fresh.length > 0;
  });
})();

/** Every word of a drawing that is seen, and how high its letters are set. */
const words = (page: Page) =>
  page.evaluate(() => {
    for (const folded of document.querySelectorAll('details')) folded.open = true;
    return [...document.querySelectorAll<SVGTextElement>('svg.draw text')]
      .filter((word) => word.checkVisibility())
      .map((word) => ({
        word: word.textContent,
        high: parseFloat(getComputedStyle(word).fontSize) * word.getScreenCTM()!.a,
      }));
  });

/** Widths of a small phone, a phone, a tablet and a desk, and of what a sheet of A4 leaves between its margins. */
const WIDTHS = [
  ['a small phone', 320, 'screen'],
  ['a phone', 390, 'screen'],
  ['a tablet', 768, 'screen'],
  ['a desk', 1280, 'screen'],
  ['paper', 627, 'print'],
] as const;

/** Each page is opened once and laid out at every width in turn: to open it takes longer than that. */
const walk = () =>
  look({}, async (page) => {
    const seen = WIDTHS.map(() => ({ count: 0, small: [] as string[] }));
    for (const { address } of SHOWN) {
      await page.goto(ORIGIN + address);
      for (const [i, [, width, media]] of WIDTHS.entries()) {
        await page.setViewportSize({ width, height: 844 });
        await page.emulateMedia({ media });
        const found = await words(page);
        seen[i]!.count += found.length;
        for (const { word, high } of found)
          if (!(high >= LEAST)) seen[i]!.small.push(`${address}: “${word}” is ${high.toFixed(1)} px high`);
      }
    }
    return seen;
  });
let walked: ReturnType<typeof walk> | undefined;

describe.for(WIDTHS.map(([name], i) => [name, i] as const))('on %s', ([, i]) => {
  test('every word in a drawing can be read', async () => {
    const { count, small } = (await (walked ??= walk()))[i]!;
    expect(small).toEqual([]);
    expect(count).toBeGreaterThan(100);
  });
});

test.for([
  ['a desk', 1280, 'screen'],
  ['paper', 627, 'print'],
] as const)('on %s the drawings of a lot stand in boxes of one size, their feet in line', ([, width, media]) =>
  look({ viewport: { width, height: 900 } }, async (page) => {
    await page.emulateMedia({ media });
    for (const lot of ['spread', 'lay', 'pot', 'test', 'repair', 'failure', 'tool', 'project']) {
      await page.goto(`${SITE}shelf/plates/${lot}/`);
      const boxes = await page.locator('.drawings > li > svg').evaluateAll((all) =>
        all.map((one) => {
          const { left, bottom, width: wide, height: high } = one.getBoundingClientRect();
          return { left: Math.round(left), bottom: Math.round(bottom), wide, high };
        }),
      );
      expect(boxes.length).toBeGreaterThan(4);
      for (const { wide, high } of boxes) {
        expect(Math.abs(wide - boxes[0]!.wide), lot).toBeLessThan(1);
        expect(Math.abs(high - boxes[0]!.high), lot).toBeLessThan(1);
      }
      const [rows, columns] = (['bottom', 'left'] as const).map((side) => new Set(boxes.map((box) => box[side])).size);
      expect(rows, lot).toBe(Math.ceil(boxes.length / columns!));
    }
  }),
);

test.for([
  ['phone', { width: 390, height: 844 }],
  ['desk', { width: 1280, height: 900 }],
] as const)(
  'the first screen of the home page on a %s holds the joint, what can be changed, and the answer',
  ([, viewport]) =>
    withPage({ viewport }, async (page) => {
      await page.goto(SITE);
      const home = page.locator('.home-answer');
      const parts = [
        home.locator('.home-joint'),
        ...(await home.locator('select').all()),
        home.locator('.verdict-why').first(),
      ];
      expect(parts).toHaveLength(5);
      for (const part of parts) {
        const box = (await part.boundingBox())!;
        expect(box.y).toBeGreaterThan(0);
        expect(box.y + box.height).toBeLessThanOrEqual(viewport.height);
      }
      // and it is live: another ground, another answer
      const before = await home.locator('.verdict').first().textContent();
      await home.getByLabel('Your paper is most like').selectOption('photo-print-rc');
      await expect.poll(() => home.locator('.verdict').first().textContent()).not.toBe(before);
    }),
);
