/** A paper is measured, kept, and taken to the other calculators, on the built site in a real browser. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { linkOf, open, PHONE, SITE, withPage } from './support/browser';

const answer = (page: Page) => page.getByRole('region', { name: 'The answer' });
/** What is known of the sheet, without what is said aloud to those who listen. */
const known = (page: Page) => page.locator('#know-answer .facts').innerText();

/** A job is known, so the form is folded to its line, if only just after the page has woken. */
async function unfold(page: Page, form: string) {
  await page.locator(`${form}:not([open]) > summary`).tap();
  await page.locator(`${form}[open]`).waitFor();
}

test('measured and kept on a phone, the paper is offered by every calculator and its link says the same', async () => {
  await withPage(PHONE, async (page) => {
    await page.clock.install();
    const complaints = await open(page, `${SITE}paper/`);
    await page.getByRole('combobox', { name: 'Your paper is most like' }).selectOption('kraft');
    await page.getByRole('combobox', { name: 'Its weight' }).selectOption('pounds');
    await page.getByRole('textbox', { name: /^Basis weight/ }).fill('60');
    await page.getByRole('combobox', { name: 'How it drinks' }).selectOption('drop');
    expect(await page.getByRole('textbox', { name: /^Drops took/ }).inputValue()).toBe('');
    expect(await page.locator('#know-drops-error').innerText()).toMatch(/each from 0\.2 to \d+.s/);
    await page.getByRole('button', { name: 'A drop touches: start' }).tap();
    await page.clock.runFor(1200);
    await page.getByRole('button', { name: 'Its shine is gone: stop' }).tap();
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('#know-drops')?.value !== '');
    const took = Number(await page.getByRole('textbox', { name: /^Drops took/ }).inputValue());
    // and what the machine took to press twice
    expect(took).toBeGreaterThanOrEqual(1.2);
    expect(took).toBeLessThan(120);
    await page.getByRole('textbox', { name: 'What you call it' }).fill('Brown wrapper');
    await page.waitForFunction(() => document.querySelector('#know-answer')?.textContent?.includes('88.8'));
    await page.getByRole('button', { name: 'Keep this paper on this device' }).tap();
    await page.getByText('“Brown wrapper” is kept', { exact: false }).waitFor();

    const said = await known(page);
    const link = await linkOf(page).inputValue();
    await withPage({}, async (other) => {
      await open(other, link);
      await other.waitForFunction(
        (words) => document.querySelector('#know-answer')?.textContent?.includes(words),
        '88.8',
      );
      expect(await known(other)).toBe(said);
    });

    await open(page, `${SITE}cover/`);
    await unfold(page, '.form-fold');
    await page
      .getByRole('combobox', { name: 'The paper is most like' })
      .selectOption({ label: 'Yours: Brown wrapper' });
    // over the bench, and in what stands folded behind the figure
    await page.locator('.job-now').getByText('Brown wrapper').waitFor();
    await page.getByText('Brown wrapper, from').waitFor({ state: 'attached' });
    const coverLink = await linkOf(page).inputValue();
    expect(decodeURIComponent(coverLink)).toContain('named Brown wrapper');
    await withPage({}, async (other) => {
      await open(other, coverLink);
      await other.waitForFunction(() => document.body.textContent?.includes('Brown wrapper, from'));
      expect(
        await other
          .getByRole('combobox', { name: 'The paper is most like' })
          .evaluate((list: HTMLSelectElement) => list.selectedOptions[0]?.text),
      ).toBe('Yours: Brown wrapper');
    });

    await open(page, `${SITE}choose/`);
    await unfold(page, '.form-fold');
    await page
      .getByRole('combobox', { name: 'Fill in a paper of your own' })
      .selectOption({ label: 'Yours: Brown wrapper' });
    expect(await page.getByRole('combobox', { name: /most like/ }).inputValue()).toBe('kraft');
    expect(await page.getByRole('textbox', { name: /^Its weight/ }).inputValue()).toBe('88.8');
    expect(complaints).toEqual([]);
  });
});

test('by keyboard alone: a bend, a damp square, and the grain is settled', async () => {
  await withPage({}, async (page) => {
    await open(page, `${SITE}paper/`);
    await page.getByRole('button', { name: 'Show an example' }).focus();
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.querySelector<HTMLSelectElement>('#know-bend')?.value === 'height');
    await page.getByRole('combobox', { name: /^Bend it/ }).focus();
    await page.keyboard.press('ArrowDown');
    expect(await page.getByRole('combobox', { name: /^Bend it/ }).inputValue()).toBe('width');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    expect(await page.getByRole('combobox', { name: /^Damp one face/ }).inputValue()).toBe('width');
    await page.waitForFunction(() => document.querySelector('#know-answer')?.textContent?.includes('grain short'));
    // one of the tests still says the other way, and that is said
    expect(await answer(page).innerText()).toMatch(/Tearing said otherwise/);
  });
});
