/** A bench is measured with one thumb, and every answer reckons with it until it is left out. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { linkOf, open, painted, PHONE, SITE, wakeIslands, withPage } from './support/browser';

const whole = (words: string) => words.replace(/\u00a0/g, ' ');
const answer = (page: Page) => page.locator('.bench-answer').innerText();
/** What the chooser says of the coat it reckons with: by how much glue it asks for. */
const inHand = async (page: Page) => whole(await page.locator('.portions dd').first().innerText()).trim();

test('measured on a phone, kept, named on the answers, and left out again', () =>
  withPage(PHONE, async (page) => {
    const complaints = await open(page, `${SITE}bench/`);
    expect(await answer(page)).toMatch(/None of the 4 is measured yet/);
    // there is nothing to send yet, by link or by code
    expect(await linkOf(page).count()).toBe(0);
    await page.selectOption('#my-coatBy', 'weighed');
    for (const [field, text] of [
      ['before', '41.2 40.9 41.5'],
      ['after', '45.3 45.0 45.7'],
      ['seconds', '20'],
      ['step', '0.1'],
      ['wide', '148'],
      ['high', '210'],
    ] as const)
      await page.fill(`#my-${field}`, text);
    // by hand: 4.13 g on 0.03108 m² are 133 g/m², and 1.1 dried on the way
    await expect.poll(async () => whole(await answer(page))).toMatch(/a coat of 13\d g\/m²/);
    await page.fill('#my-name', 'Loft');
    await page.getByRole('button', { name: 'Keep this bench on this device' }).tap();
    await page.getByText('This bench is kept').waitFor();
    const link = await linkOf(page).inputValue();

    await page.locator('.next-steps').getByRole('link', { name: 'How much it takes' }).tap();
    await page.waitForURL(/cover/);
    await wakeIslands(page);
    await page.getByText('“Loft”: a coat of').waitFor();
    const heavy = await inHand(page);
    await page.getByRole('button', { name: 'Leave it out' }).tap();
    await expect.poll(() => inHand(page)).not.toBe(heavy);
    expect(await page.getByText('“Loft”').count()).toBe(0);

    // another day, from what this device keeps
    await open(page, `${SITE}choose/`);
    await page.getByRole('button', { name: 'Reckon with my bench' }).tap();
    await page.getByText('“Loft”: a coat of').waitFor();
    await expect.poll(() => page.url()).toContain('bench=');
    const sent = page.url();
    await withPage({}, async (other) => {
      await open(other, sent);
      await other.getByText('“Loft”: a coat of').waitFor();
      await open(other, link);
      await expect.poll(async () => whole(await answer(other))).toMatch(/a coat of 13\d g\/m²/);
    });

    await open(page, `${SITE}bench/`);
    await page.getByRole('button', { name: 'Delete the bench kept here' }).tap();
    await page.getByText('deleted from this device').waitFor();
    await open(page, `${SITE}choose/`);
    expect(await page.getByRole('button', { name: 'Reckon with my bench' }).count()).toBe(0);
    // what is left of a bench after some other program, or a full disk, had it in hand
    const damaged = sent
      .slice(sent.indexOf('bench=') + 6)
      .replace(/&.*/, '')
      .slice(0, -3);
    await page.evaluate((text) => localStorage.setItem('open-time:bench', `${text}_`), damaged);
    const told = page.waitForResponse(/own-bench/);
    await open(page, `${SITE}choose/`);
    // the script that reads what is kept has run, and what it found has had its time to be shown
    await page.evaluate(`import(${JSON.stringify((await told).url())}).then(() => undefined)`);
    await painted(page);
    expect(await page.getByRole('button', { name: 'Reckon with my bench' }).count()).toBe(0);
    expect(complaints).toEqual([]);
  }));

test('the example measures all four, and its clocks count into their fields', () =>
  withPage(PHONE, async (page) => {
    await page.clock.install();
    const complaints = await open(page, `${SITE}bench/`);
    await page.getByRole('button', { name: 'Show an example' }).tap();
    await expect.poll(() => answer(page)).toMatch(/Wet coat[\s\S]*Solids[\s\S]*drinks[\s\S]*Grabs/);
    await page.getByRole('button', { name: 'The strip is down: start' }).tap();
    await page.clock.runFor(25_000);
    await page.getByRole('button', { name: 'It no longer slides: stop' }).tap();
    await expect.poll(() => page.inputValue('#my-grabbed')).toMatch(/^30 35 30 (2[5-9]|[3-9]\d)$/);
    await page.fill('#my-dry', '9');
    await expect.poll(() => page.locator('#my-dry-error').innerText()).toMatch(/weighs less than it did wet/);
    expect(complaints).toEqual([]);
  }));
