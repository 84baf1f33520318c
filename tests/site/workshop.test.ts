/** A class is planned, sent and printed, on the built site in a real browser. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { linkOf, open, ORIGIN, SITE, withPage } from './support/browser';

const sentence = (page: Page) => page.locator('#class-answer .verdict-why');
/** What is planned, without what is said aloud to those who listen. */
const planned = (page: Page) => page.locator('#class-answer table').allInnerTexts();
const pages = (pdf: Buffer) => pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g)?.length ?? 0;
const size = (pdf: Buffer) =>
  /\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/.exec(pdf.toString('latin1'))?.slice(1, 3).map(Number);

test('planned, sent, opened elsewhere, and taken by a student to the chooser', async () => {
  await withPage({ viewport: { width: 1280, height: 900 } }, async (page) => {
    const complaints = await open(page, `${SITE}workshop/`);
    await page.getByRole('textbox', { name: 'People' }).fill('12');
    await page.getByLabel('Day').fill('2026-12-04');
    await page.getByRole('radio', { name: 'Lidded box' }).check();
    await page.waitForFunction(() =>
      document.querySelector('#class-answer')?.textContent?.includes('13 kits of the lidded box'),
    );
    expect(await page.locator('.schedule').textContent()).toContain('Friday 4 December, 14:00');
    const said = await planned(page);
    const link = await linkOf(page).inputValue();
    await withPage({ viewport: { width: 390, height: 844 } }, async (phone) => {
      expect(await open(phone, link)).toEqual([]);
      await phone.waitForFunction(() =>
        document.querySelector('#class-answer')?.textContent?.includes('13 kits of the lidded box'),
      );
      expect(await planned(phone)).toEqual(said);
      await open(phone, `${link}&sheet=student`);
      await phone.getByRole('link', { name: 'Your paper and glue in the chooser' }).waitFor();
      const glue = await phone.locator('.handout strong').innerText();
      const student = await phone
        .getByRole('link', { name: 'Your paper and glue in the chooser' })
        .getAttribute('href');
      await open(phone, ORIGIN + student!);
      await phone.waitForFunction(
        (words) => document.querySelector('.bench-answer .verdict-why')?.textContent === words,
        glue,
      );
    });
    expect(complaints).toEqual([]);
  });
});

test('a sheet that is too small is said beside its field, and the last plan stays', async () => {
  await withPage({}, async (page) => {
    await open(page, `${SITE}workshop/`);
    const before = await sentence(page).innerText();
    await page.getByText('The sheets you buy').click();
    const wide = page.locator('#class-paperWide');
    await wide.fill('120');
    await page.locator('#class-paperWide-error').waitFor();
    expect(await page.locator('#class-paperWide-error').innerText()).toMatch(/larger than the sheet/);
    expect(await wide.inputValue()).toBe('120');
    expect(await sentence(page).innerText()).toBe(before);
    await page.getByRole('textbox', { name: 'People' }).fill('0');
    await page.locator('#class-people-error').waitFor();
    expect(await page.locator('#class-people-error').innerText()).toMatch(/whole number from 1 to 60/);
  });
});

test('prints on A4 and on Letter, the handout on a page of its own', async () => {
  await withPage({}, async (page) => {
    await open(page, `${SITE}workshop/`);
    const a4 = await page.pdf({ format: 'A4' });
    const letter = await page.pdf({ format: 'Letter' });
    for (const [got, asked] of [
      [size(a4), [595.3, 841.9]],
      [size(letter), [612, 792]],
    ] as const)
      for (const i of [0, 1]) expect(Math.abs(got![i]! - asked[i]!)).toBeLessThan(2);
    for (const pdf of [a4, letter]) expect(pages(pdf)).toBeGreaterThanOrEqual(3);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.handout').evaluate((sheet) => getComputedStyle(sheet).breakBefore)).toBe('page');
    expect(await page.locator('.bench-inputs').isVisible()).toBe(false);
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
  });
});

test('by keyboard alone: one more person, and the plan follows', async () => {
  await withPage({}, async (page) => {
    await open(page, `${SITE}workshop/`);
    await page.locator('#class-people').focus();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('9');
    await page.waitForFunction(() => document.querySelector('#class-answer')?.textContent?.includes('10 kits'));
  });
});
