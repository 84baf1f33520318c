/** A page printed for the bench is the page without its furniture. */
import { expect, test } from 'vitest';
import { open, ORIGIN, SITE, withPage } from './support/browser';
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
  await withPage({}, async (tab) => {
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
