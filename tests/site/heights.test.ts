/**
 * On a phone, a calculator that opens with a job has its form folded to a line, the answer in view, and is under six
 * screens; a long page of words is folded to titles that say what is inside, and a link to any part of it opens that part.
 */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { PROJECT_IDS } from '../../src/core/make/projects';
import { ORIGIN, PHONE, SITE, look, open, withPage } from './support/browser';
import { LESSONS, PAGES, documentOf } from './support/dist';

/** The phone of the design. */
const SCREEN = 844;
const JOBS = {
  'the chooser': 'choose/?v=1&paper=lokta-light&gsm=55&have=pva.methylcellulose',
  'the chooser over the whole shelf': 'choose/?v=1&paper=lokta-light&gsm=55',
  'the chooser with needs': 'choose/?v=1&paper=chiyogami&needs=flat.children',
  'the mixer': 'mix/?v=1',
  'how much it takes': 'cover/?v=1',
  'the bow': 'flat/?v=1',
  'cutting from sheets': 'cut/?v=1',
  'a paper of one’s own': 'paper/?v=1',
  'a bench of one’s own':
    'bench/?v=1&coat=spoon&ml=5&tool=brush-full&spread=pva&wide=148&high=210&board=drop&on=binders-board&drops=44_52',
  'a trial': 'trials/plan/?paper=lokta-light&glue=pva.methylcellulose-4',
  'a class': 'workshop/?v=1',
  ...Object.fromEntries(
    PROJECT_IDS.flatMap((id) => [
      [`the pieces of a ${id}`, `make/?v=1&make=${id}`],
      [`a class of a ${id}`, `workshop/?v=1&make=${id}`],
    ]),
  ),
};

test.for(Object.entries(JOBS))('%s', async ([, path]) => {
  await look(PHONE, async (page) => {
    await open(page, SITE + path);
    await expect.poll(() => page.locator('.form-fold:not([open])').count()).toBeGreaterThan(0);
    // the code of a link comes last, and makes the page longer
    if (await page.locator('.send-it').count()) await page.locator('.send-it .qr').waitFor({ state: 'attached' });
    const { high, wide } = await page.evaluate(() => ({
      high: document.documentElement.scrollHeight,
      wide: document.documentElement.scrollWidth,
    }));
    expect(high).toBeLessThan(6 * SCREEN);
    expect(wide).toBeLessThanOrEqual(390);
  });
});

/** Long pages, folded, and the screens that each may fill. */
const FOLDED = {
  'glossary/': 9,
  'sources/': 9,
  'how-the-model-works/': 4,
  'how-we-check/': 6,
  'what-was-wrong/': 7,
  'answers/': 9,
} as const;

const screens = (page: Page) => page.evaluate((screen) => document.documentElement.scrollHeight / screen, SCREEN);

describe('a long page', () => {
  test.for(Object.entries(FOLDED))('%s is folded, all of it opens at a press, and paper has it open', ([path, most]) =>
    look(PHONE, async (page) => {
      await open(page, SITE + path);
      const high = await screens(page);
      console.log(`${path}: ${high.toFixed(1)} screens`);
      expect(high).toBeLessThan(most);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);

      const hidden = page.locator('main details.fold > :not(summary)').first();
      expect(await hidden.isVisible()).toBe(false);
      await page.emulateMedia({ media: 'print' });
      expect(await hidden.isVisible()).toBe(true);
      expect(await hidden.evaluate((element) => element.getBoundingClientRect().height)).toBeGreaterThan(10);
      await page.emulateMedia({ media: 'screen' });

      const all = page.getByRole('button', { name: 'Open all' });
      if ((await all.count()) === 0) return;
      await all.tap();
      expect(await page.locator('main details.fold:not([open])').count()).toBe(0);
      await page.getByRole('button', { name: 'Close all' }).tap();
      expect(await page.locator('main details.fold[open]').count()).toBe(0);
    }),
  );

  /** Every address of a part of these pages that another page of the site names. */
  const NAMED = [
    ...new Set(
      PAGES.flatMap((page) =>
        [
          ...page.html.matchAll(
            /href="([^"]*?(?:glossary|sources|how-the-model-works|how-we-check|what-was-wrong)\/#[^"]+)"/g,
          ),
        ].map(([, address = '']) => address),
      ),
    ),
  ];
  test('every link to a part of one, from anywhere on the site, opens it and brings it into view', async () => {
    expect(NAMED.length).toBeGreaterThan(100);
    await withPage(PHONE, async (page) => {
      const shut: string[] = [];
      const paths = new Set(NAMED.map((address) => address.split('#')[0]!));
      for (const path of paths) {
        const addresses = NAMED.filter((address) => address.startsWith(`${path}#`));
        await page.goto(new URL(path, SITE).href);
        for (const address of addresses) {
          const id = decodeURIComponent(address.split('#')[1]!);
          const isSeen = await page.evaluate(async (hash) => {
            location.hash = `#${hash}`;
            const target = document.getElementById(hash);
            const inView = () => {
              const box = target?.getBoundingClientRect();
              const isOpen = target?.closest('details')?.open !== false;
              return Boolean(box && isOpen && box.top < innerHeight && box.bottom > 0 && box.height > 0);
            };
            // a busy machine may paint before it tells the page of its new address
            for (let frames = 0; frames < 100 && !inView(); frames += 1) await new Promise(requestAnimationFrame);
            return inView();
          }, id);
          if (!isSeen) shut.push(address);
        }
      }
      expect(shut).toEqual([]);
    });
  });

  test('anchors of before are still there', () => {
    const ids = (file: string) =>
      [...documentOf(PAGES.find((page) => page.file === file)!).querySelectorAll('[id]')].map(({ id }) => id);
    expect(ids('how-the-model-works/index.html')).toEqual(
      expect.arrayContaining([
        ...['relations', 'one-joint', 'symbols', 'constants', 'order', 'own-bench', 'learns', 'simplified'],
        ...['foretells', 'equation-1', 'equation-9'],
      ]),
    );
    expect(ids('glossary/index.html')).toEqual(expect.arrayContaining(['endpaper', 'open-time', 'slip-time', 'grain']));
    expect(ids('sources/index.html')).toEqual(expect.arrayContaining(['gnu-units', 'writing-paper-limits']));
  });

  test('without script, a link to a word opens its fold', () =>
    withPage({ ...PHONE, javaScriptEnabled: false }, async (page) => {
      await page.goto(`${SITE}glossary/#endpaper`);
      await expect.poll(() => page.locator('#endpaper p').first().isVisible()).toBe(true);
    }));
});

const READ = {
  'a bench of one’s own, with how each test is done': 'bench/',
  'cards and labels': 'trials/cards/',
  'what a trial showed': 'trials/read/',
};
/** Screens that a lesson may fill with what is worked out in it folded. */
const LESSON_SCREENS = 18;

describe('a lesson, with its sums folded', () => {
  test.for(LESSONS.map(({ address }) => address))('%s', (address) =>
    look(PHONE, async (page) => {
      await open(page, ORIGIN + address);
      const folds = page.locator('.prose .worked');
      for (const fold of await folds.all()) {
        const inside = fold.locator(':scope > :not(summary)').first();
        expect(await inside.isVisible()).toBe(false);
        await fold.locator(':scope > summary').tap();
        expect(await inside.isVisible()).toBe(true);
        await fold.locator(':scope > summary').tap();
      }
      // what is not near is not laid out yet, so all of it is passed once
      await page.evaluate(async () => {
        for (let y = 0; y < document.documentElement.scrollHeight; y += 400) {
          scrollTo(0, y);
          await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
        }
      });
      expect(await screens(page)).toBeLessThan(LESSON_SCREENS);
      await page.emulateMedia({ media: 'print' });
      const heights = await page
        .locator('.prose .worked > :not(summary), .prose .plate-body')
        .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));
      expect(heights.filter((height) => height < 10)).toEqual([]);
    }),
  );
});

test.for(Object.entries(READ))('%s, as it opens', async ([, path]) => {
  await look(PHONE, async (page) => {
    await open(page, SITE + path);
    expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThan(6 * SCREEN);
  });
});

test('what is folded of the tests of a bench opens by its link, and is on paper all the same', () =>
  withPage(PHONE, async (page) => {
    await open(page, `${SITE}bench/#card-grab`);
    const steps = (id: string) => page.locator(`details:has(#card-${id}) .steps`);
    await expect.poll(() => steps('grab').isVisible()).toBe(true);
    expect(await steps('coat').isVisible()).toBe(false);
    await page.locator('a[href$="#card-coat"]').first().click();
    await expect.poll(() => steps('coat').isVisible()).toBe(true);
    await page.emulateMedia({ media: 'print' });
    for (const id of ['coat', 'solids', 'board', 'grab'])
      await expect.poll(() => steps(id).evaluate((list) => list.getBoundingClientRect().height)).toBeGreaterThan(50);
  }));
