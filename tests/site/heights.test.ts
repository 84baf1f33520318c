/** A calculator that opens with a job, on a phone: its form folded to a line, the answer in view, the whole under six screens. */
import { expect, test } from 'vitest';
import { PROJECT_IDS } from '../../src/core/make/projects';
import { PHONE, SITE, open, withPage } from './support/browser';

/** The phone of the design. */
const SCREEN = 844;
const JOBS = {
  'the chooser': 'choose/?v=1&paper=lokta-light&gsm=55&have=pva.methylcellulose',
  'the mixer': 'mix/?v=1',
  'how much it takes': 'cover/?v=1',
  'the bow': 'flat/?v=1',
  'cutting from sheets': 'cut/?v=1',
  'a paper of one’s own': 'paper/?v=1',
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
  await withPage(PHONE, async (page) => {
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
