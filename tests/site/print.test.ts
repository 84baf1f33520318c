/** A page printed for the bench is the page without its furniture. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { PROJECT_IDS } from '../../src/core/make/projects';
import { look, open, ORIGIN, SITE } from './support/browser';
import { LESSONS, PAGES_WITH_ISLANDS } from './support/dist';

test('there is a lesson to print', () => {
  expect(LESSONS.length).toBeGreaterThan(0);
});

const chosen = [...new Set([...LESSONS.slice(0, 1), ...PAGES_WITH_ISLANDS.slice(0, 1)])];

test.for(chosen.map((page) => [page.address, page] as const))('%s prints without navigation', async ([, page]) => {
  await look({}, async (tab) => {
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

test('a movement is four drawings side by side, in print and for those who want no motion, each in its own colours', async () => {
  await look({}, async (tab) => {
    await tab.goto(`${SITE}shelf/plates/moving/`);
    const seen = () =>
      tab.evaluate(() => {
        const drawings = [...document.querySelector('.moving [role="img"]')!.querySelectorAll('svg')].filter((svg) =>
          svg.checkVisibility({ visibilityProperty: true }),
        );
        const sheets = drawings.map((svg) => [...svg.querySelectorAll('path.p')]);
        return {
          places: new Set(drawings.map((svg) => `${svg.getBoundingClientRect().x} ${svg.getBoundingClientRect().y}`))
            .size,
          unpainted: sheets.filter((own) => own.length === 0).length,
          black: sheets.flat().filter((sheet) => getComputedStyle(sheet).fill === 'rgb(0, 0, 0)').length,
        };
      });
    const atRest = { places: 4, unpainted: 0, black: 0 };
    expect(await seen()).toEqual(atRest);
    await tab.emulateMedia({ media: 'print', reducedMotion: 'no-preference' });
    expect(await seen()).toEqual(atRest);
    await tab.emulateMedia({ media: 'screen', reducedMotion: 'no-preference' });
    expect((await seen()).places).toBe(1);
  });
});

/** Long answers and short: many cautions, many steps, none at all. */
const ANSWERS = {
  'the usual job': '',
  'a mix at hand': '?v=1&paper=lokta-light&gsm=55&have=pva.methylcellulose',
  'a mend on a valued original': '?v=1&task=mend&paper=kozo-tissue&on=text-block&wide=10&high=120&need=undo.valued',
  'hot glue': '?v=1&have=animal-glue&need=strong.quick.flexes',
  'a film': '?v=1&paper=photo-print-rc&on=mount-board&have=film-double-sided',
  'food, refused': '?v=1&need=food',
};
test.for(Object.entries(ANSWERS))('an answer is one page, on A4 and on Letter: %s', async ([, query]) => {
  await look({}, async (tab) => {
    await open(tab, `${SITE}choose/${query}`);
    // until what stands below it is there, and the best mix has been worked out
    await tab.locator('.send-it .qr').waitFor();
    await tab.getByText(/^Trying sixty mixes/).waitFor({ state: 'detached' });
    await tab.getByText(/^Looking for the nearest change/).waitFor({ state: 'detached' });
    for (const format of ['A4', 'Letter']) {
      const pdf = (await tab.pdf({ format })).toString('latin1');
      expect(pdf.match(/\/Type\s*\/Page\b/g), format).toHaveLength(1);
    }
    // open on paper, though folded on the screen
    await tab.emulateMedia({ media: 'print' });
    if (!query.includes('food'))
      expect(await tab.locator('.fold', { hasText: 'Why' }).locator('.reasons').isVisible()).toBe(true);
  });
});

/** How many pages a page takes on paper of either size. */
async function pagesOf(tab: Page): Promise<Record<'A4' | 'Letter', number>> {
  const count = async (format: string) =>
    (await tab.pdf({ format })).toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
  return { A4: await count('A4'), Letter: await count('Letter') };
}

test('whether it lies flat is two pages: what comes of it, and what it rests on', async () => {
  await look({}, async (tab) => {
    await open(tab, `${SITE}flat/?v=1`);
    await tab.locator('.send-it .qr').waitFor();
    expect(await pagesOf(tab)).toEqual({ A4: 2, Letter: 2 });
    await tab.emulateMedia({ media: 'print' });
    // the sheet names the job, its form being left out
    expect(await tab.locator('.bench-answer').innerText()).toMatch(/Marbled paper, 148\s×\s216/);
  });
});

describe.each(PROJECT_IDS)('a %s', (project) => {
  test('takes no more pages than it has drawings', async () => {
    await look({}, async (tab) => {
      await open(tab, `${SITE}make/?v=1&make=${project}`);
      await tab.locator('.send-it .qr').waitFor();
      const drawings = await tab.locator('.bench .drawing').count();
      expect(drawings).toBeGreaterThan(1);
      const { A4, Letter } = await pagesOf(tab);
      expect(A4).toBeLessThanOrEqual(drawings);
      expect(Letter).toBeLessThanOrEqual(drawings);
    });
  });

  test('is one page for each student, by the students’ link, with the way back on it', async () => {
    await look({}, async (tab) => {
      await open(tab, `${SITE}workshop/?v=1&make=${project}&sheet=student`);
      await tab.locator('.handout .qr').waitFor();
      expect(await pagesOf(tab)).toEqual({ A4: 1, Letter: 1 });
    });
  });
});

test('a class is its sheets: the student’s alone bears a code, and stands on a page with it', async () => {
  await look({}, async (tab) => {
    await open(tab, `${SITE}workshop/`);
    await tab.locator('.handout .qr').waitFor({ state: 'attached' });
    await tab.locator('.send-it .qr').waitFor({ state: 'attached' });
    const { A4, Letter } = await pagesOf(tab);
    // two for lists and times, one for the adhesive, two for the sheets, one for the cautions, one for the student
    expect(A4).toBeLessThanOrEqual(7);
    // Letter is 18 mm shorter
    expect(Letter).toBeLessThanOrEqual(8);
    await tab.emulateMedia({ media: 'print' });
    const codes = await tab
      .locator('.qr')
      .evaluateAll((all) => all.filter((one) => one.checkVisibility()).map((one) => one.closest('.handout') !== null));
    expect(codes).toEqual([true]);
  });
});
