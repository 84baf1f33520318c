/** Figures whose number the reader changes: by keyboard, by dragging, and without script as a table. */
import { expect, test } from 'vitest';
import { ORIGIN, open, withPage } from './support/browser';
import { LESSONS } from './support/dist';

const WITH = ['flatness', 'sizing', 'spreading', 'thickness'].map((id) =>
  LESSONS.find(({ address }) => address.endsWith(`/lessons/${id}/`))!,
);

test.for(WITH.map((page) => [page.address, page] as const))('%s', async ([, { address }]) => {
  await withPage({ viewport: { width: 390, height: 844 } }, async (page) => {
    expect(await open(page, ORIGIN + address)).toEqual([]);
    const figure = page.locator('figure', { has: page.locator('.slide') });
    const range = figure.getByRole('slider');
    const said = () => figure.locator('.slide-says').innerText();
    const drawn = () =>
      figure.locator('svg [data-part]').evaluateAll((parts) => parts.map((one) => one.outerHTML).join());
    const [firstSaid, firstDrawn] = [await said(), await drawn()];
    await range.press('End');
    await expect.poll(said).not.toBe(firstSaid);
    await expect.poll(drawn).not.toBe(firstDrawn);
    // what it says is the last row of the table, and so is what a screen reader hears
    const row = (await figure.locator('tbody tr').last().locator('th, td').allTextContents()).map((one) => one.trim());
    expect((await said()).replace(/\s+/g, ' ')).toBe(row.join(': ').replace(/\s+/g, ' '));
    expect((await range.getAttribute('aria-valuetext'))!.replace(/\s+/g, ' ')).toBe(
      row.join(': ').replace(/\s+/g, ' '),
    );

    const drawing = figure.locator('svg');
    await drawing.scrollIntoViewIfNeeded();
    const { x, y, width, height } = (await drawing.boundingBox())!;
    await page.mouse.move(x + width / 2, y + height / 2);
    await page.mouse.down();
    await page.mouse.move(x + 1, y + height / 2);
    await page.mouse.up();
    await expect.poll(() => range.inputValue()).toBe('0');
    // let go, it stays
    await page.mouse.move(x + width, y + height / 2);
    expect(await range.inputValue()).toBe('0');
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  });
});

test('without script there is no range, and the table holds every step', async () => {
  await withPage({ javaScriptEnabled: false }, async (page) => {
    await page.goto(ORIGIN + WITH[0]!.address);
    expect(await page.locator('.slide').isVisible()).toBe(false);
    await page.getByText('The numbers', { exact: true }).click();
    expect(await page.locator('figure:has(.slide) tbody tr').count()).toBe(17);
  });
});
