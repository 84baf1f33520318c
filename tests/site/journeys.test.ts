/** One job carried through the rooms by one thumb: nothing is typed twice, and nothing is lost on the way back. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { complaintsOf, open, PHONE, SITE, wakeIslands, withPage } from './support/browser';

/** What a list shows as chosen. */
const shownIn = (page: Page, select: string) =>
  page.locator(select).evaluate((one: HTMLSelectElement) => one.selectedOptions[0]?.text);
const wakesAt = async (page: Page, room: string) => {
  await page.waitForURL(new RegExp(`/${room}/`));
  await wakeIslands(page);
};
/** One tap on a next step, which is one room further. */
async function goOn(page: Page, step: string | RegExp, room: string) {
  await page.locator('.bench-answer .next-steps').getByRole('link', { name: step }).tap();
  await wakesAt(page, room);
}
/** One tap on the head, which is there in every room. */
async function goByHead(page: Page, name: string, room: string) {
  await page.getByRole('navigation', { name: 'Site' }).getByRole('link', { name, exact: true }).tap();
  await wakesAt(page, room);
}
async function goBack(page: Page, room: string) {
  await page.goBack();
  await wakesAt(page, room);
}
const job = (page: Page) => page.locator('.job-now strong');
/** The text of an element, once there is some. */
const text = async (page: Page, selector: string) => (await page.locator(selector).first().innerText()).trim();
const whole = (words: string) => words.replace(/\u00a0/g, ' ');

const LOKTA = 'lokta-light~55gsm';
/** The box of an ingredient, which stands before that of an adhesive of the same id. */
const ticked = (page: Page, id: string) => page.locator(`input[name="atHand"][value="${id}"]`).first();
const MIXED_OF = ['pva', 'methylcellulose'];

describe('lokta of 55 g/m², with PVA and methylcellulose powder on the bench', () => {
  /** The weight is typed, the two jars are ticked, and nothing else is said. */
  async function choose(page: Page) {
    const complaints = await open(page, `${SITE}choose/`);
    await page.locator('#ch-family').selectOption('lokta-light');
    await page.locator('#ch-grammage').fill('55');
    await page.getByText('Limit to what I have').tap();
    for (const id of MIXED_OF) await ticked(page, id).check();
    await expect.poll(() => text(page, '.bench-strip')).toMatch(/PVA|methylcellulose/i);
    await expect.poll(() => page.url()).toContain('have=');
    return complaints;
  }

  test('goes from choosing to mixing, covering, lying flat, a swatch and a class, at one tap each', () =>
    withPage(PHONE, async (page) => {
      const complaints = await choose(page);
      await expect.poll(async () => whole(await job(page).innerText())).toContain('55 g/m²');
      expect(await page.getByRole('button', { name: 'Start afresh' }).count()).toBe(1);

      await goOn(page, 'Mix this', 'mix');
      const need = await page.inputValue('#mix-need');
      expect(Number(need)).toBeGreaterThan(0);
      await expect.poll(async () => whole(await text(page, '.portions-plate .plate-caption'))).toContain(`${need} ml`);
      expect(whole(await job(page).innerText())).toMatch(/Lokta.* 55 g\/m².*210 × 150 mm/);

      await goOn(page, 'How much it takes', 'cover');
      expect(await page.inputValue('#cover-paper')).toBe(LOKTA);
      expect(await page.locator('input[id^="cover-piece-"]').first().inputValue()).toBe('210');
      // as much as was mixed
      await expect.poll(() => text(page, '.portions dd')).toBe(`${need} ml`);
      const glue = await page.inputValue('#cover-adhesive');

      await goOn(page, 'Will it lie flat', 'flat');
      expect(await page.inputValue('#warp-paper')).toBe(LOKTA);
      expect(await page.inputValue('#warp-adhesive')).toBe(glue);
      expect([await page.inputValue('#warp-width'), await page.inputValue('#warp-height')]).toEqual(['210', '150']);

      await goOn(page, 'Try it on a swatch', 'trials/plan');
      await expect.poll(() => page.inputValue('#plan-paper-0-grammage')).toBe('55');
      expect(await page.inputValue('#plan-paper-0-family')).toBe('lokta-light');
      expect(await page.inputValue('#plan-glue-0-record')).toBe(glue);

      await goByHead(page, 'Class', 'workshop');
      await expect.poll(() => page.inputValue('#class-paper')).toBe(LOKTA);
      expect(await page.inputValue('#class-adhesive')).toBe(glue);
      expect(whole(await text(page, '#class-answer'))).toMatch(/55 g\/m²|lokta/i);
      expect(complaints).toEqual([]);
    }));

  test('and back through the rooms with nothing lost', () =>
    withPage(PHONE, async (page) => {
      await choose(page);
      await goOn(page, 'Mix this', 'mix');
      await page.locator('.form-fold > summary').tap();
      await page.locator('#mix-need').fill('120');
      await goOn(page, 'How much it takes', 'cover');
      await page.locator('.form-fold > summary').tap();
      await page.locator('#cover-loss').fill('12');
      await goOn(page, 'Will it lie flat', 'flat');
      // straight back, before the address could be written
      await goBack(page, 'cover');
      expect(await page.inputValue('#cover-loss')).toBe('12');
      expect(await page.inputValue('#cover-paper')).toBe(LOKTA);
      await goBack(page, 'mix');
      expect(await page.inputValue('#mix-need')).toBe('120');
      await goBack(page, 'choose');
      await expect.poll(() => page.inputValue('#ch-grammage')).toBe('55');
      for (const id of MIXED_OF) expect(await ticked(page, id).isChecked(), id).toBe(true);
      expect(await page.locator('.job-now [role="status"]').count()).toBe(0);
    }));

  test('what was said in a later room is known in an earlier one that is gone back to', () =>
    withPage(PHONE, async (page) => {
      await choose(page);
      await goOn(page, 'Will it lie flat', 'flat');
      await page.locator('.form-fold > summary').tap();
      await page.locator('#warp-width').fill('230');
      await expect.poll(async () => whole(await job(page).innerText())).toContain('230 × 150 mm');
      await goBack(page, 'choose');
      await expect.poll(() => page.inputValue('#ch-widthMm')).toBe('230');
      expect(await page.inputValue('#ch-grammage')).toBe('55');
      await page.getByRole('button', { name: 'Start afresh' }).tap();
      await expect.poll(() => page.inputValue('#ch-grammage').catch(() => 'on its way')).toBe('');
      expect(await page.locator('.job-now').count()).toBe(0);
    }));
});

test('a paper of one’s own has its name in every room, and takes it along', () =>
  withPage(PHONE, async (page) => {
    const complaints = await open(page, `${SITE}paper/`);
    await page.fill('#know-name', 'Grey with cranes');
    await page.selectOption('#know-family', 'chiyogami');
    await page.selectOption('#know-weightBy', 'metric');
    await page.fill('#know-gsm', '92');
    await expect.poll(async () => whole(await job(page).innerText())).toBe('Grey with cranes 92 g/m²');
    await goOn(page, 'Which adhesive', 'choose');
    // the chooser holds a sheet field by field, and the line over its next steps has the name
    await expect.poll(() => page.inputValue('#ch-grammage')).toBe('92');
    await expect.poll(async () => whole(await job(page).innerText())).toContain('Grey with cranes 92 g/m²');
    await goOn(page, 'Try it on a swatch', 'trials/plan');
    await expect.poll(() => page.inputValue('#plan-paper-0-name')).toBe('Grey with cranes');
    for (const [room, select] of [
      ['cover', '#cover-paper'],
      ['flat', '#warp-paper'],
      ['workshop', '#class-paper'],
    ] as const) {
      await page.goto(SITE + room + '/');
      await wakeIslands(page);
      await expect.poll(() => shownIn(page, select)).toBe('Yours: Grey with cranes');
      await expect.poll(() => job(page).innerText()).toContain('Grey with cranes');
    }
    for (const room of ['make', 'cut', 'mix', 'choose', 'paper']) {
      await page.goto(`${SITE}${room}/`);
      await wakeIslands(page);
      await expect.poll(() => job(page).innerText()).toContain('Grey with cranes');
    }
    expect(complaints).toEqual([]);
  }));

test('a box is measured, cut, covered and bought for, and each room is found again on the way back', () =>
  withPage(PHONE, async (page) => {
    const complaints = await open(page, `${SITE}make/`);
    await page.getByRole('radio', { name: 'Lidded box' }).tap();
    await page.fill('#make-width', '120');
    await page.fill('#make-height', '80');
    await page.fill('#make-thickness', '40');
    await expect.poll(async () => whole(await job(page).innerText())).toContain('lidded box 120 × 80 × 40 mm');
    const sizes = (await page.locator('.piece-table td.n:nth-of-type(1)').allInnerTexts()).map((size) =>
      size.replace(/\s/g, ''),
    );
    await goOn(page, 'Cut it from sheets', 'cut');
    expect(await page.locator('.bench-answer .problem-list').count()).toBe(0);
    const wide = await page
      .locator('[id^="cut-piece-"][id$="-wide"]')
      .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value));
    expect(wide).toEqual(sizes.map((size) => size.split('×')[0]));
    await goOn(page, 'How much it takes', 'cover');
    await expect.poll(() => page.inputValue('#cover-thing')).toBe('own');
    const pieces = await page.locator('[id^="cover-piece-"][id$="-wide"]').count();
    await goOn(page, 'Put it in a class', 'workshop');
    await expect.poll(() => page.locator('#class-answer').innerText()).toMatch(/kits of the lidded box/);
    expect(await page.locator('#class-answer table').first().innerText()).toContain('sheet');
    await goBack(page, 'cover');
    expect(await page.locator('[id^="cover-piece-"][id$="-wide"]').count()).toBe(pieces);
    await goBack(page, 'cut');
    expect(
      await page
        .locator('[id^="cut-piece-"][id$="-wide"]')
        .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value)),
    ).toEqual(wide);
    await goBack(page, 'make');
    expect(await page.inputValue('#make-thickness')).toBe('40');
    expect(complaints).toEqual([]);
  }));

describe('one job in all rooms', () => {
  test('a sheet said once is known in each room, and each is found again as it was left', () =>
    withPage(PHONE, async (page) => {
      const complaints = await open(page, `${SITE}flat/`);
      await page.selectOption('#warp-paper', 'lokta-light');
      await page.fill('#warp-paperWeight', '55');
      await expect.poll(() => job(page).innerText()).toContain('55');
      await goOn(page, 'How much it takes', 'cover');
      await expect.poll(() => page.inputValue('#cover-paper')).toBe('lokta-light~55gsm');
      expect(await shownIn(page, '#cover-paper')).toContain('55 g/m²');
      const inHand = (await page.locator('.portions dd').innerText()).trim();
      await goOn(page, 'Mix it', 'mix');
      // what is to be had in hand is what is mixed
      await expect.poll(() => page.inputValue('#mix-need')).toBe(inHand.replace(/\D/g, ''));
      expect(await page.inputValue('#mix-paper')).toBe('lokta-light~55gsm');
      await goOn(page, 'Put it in a class', 'workshop');
      await expect.poll(() => page.inputValue('#class-paper')).toBe('lokta-light~55gsm');
      await page.locator('.form-fold > summary').tap();
      await page.fill('#class-people', '12');
      await expect.poll(() => page.url()).toContain('people=12');
      // and back, by the head and not by a link
      await page.goto(`${SITE}flat/`);
      await wakeIslands(page);
      await expect.poll(() => page.inputValue('#warp-paperWeight')).toBe('55');
      await page.goto(`${SITE}workshop/`);
      await wakeIslands(page);
      await expect.poll(() => page.inputValue('#class-people')).toBe('12');
      expect(complaints).toEqual([]);
    }));

  test('a stranger’s link wins, says so, and the job can be taken back or forgotten', () =>
    withPage(PHONE, async (page) => {
      await open(page, `${SITE}flat/`);
      await page.selectOption('#warp-paper', 'lokta-light');
      await expect.poll(() => job(page).innerText()).toContain('Lokta');
      await page.goto(`${SITE}cover/?v=1&thing=lining&paper=unryu&glue=pva`);
      await wakeIslands(page);
      await expect.poll(() => page.locator('.job-now').innerText()).toMatch(/link brought this job.*Lokta.*put aside/s);
      expect(await page.inputValue('#cover-paper')).toBe('unryu');
      await page.getByRole('button', { name: 'Take mine back' }).tap();
      const paper = () => page.inputValue('#cover-paper').catch(() => 'the page is on its way');
      await expect.poll(paper).toBe('lokta-light');
      await page.getByRole('button', { name: 'Start afresh' }).tap();
      await expect.poll(paper).toBe('chiyogami');
      expect(await page.locator('.job-now').count()).toBe(0);
    }));
  test('the chooser says so too when a link brings another job, and gives the first back', () =>
    withPage(PHONE, async (page) => {
      const complaints = complaintsOf(page);
      await open(page, `${SITE}flat/`);
      await page.selectOption('#warp-paper', 'lokta-light');
      await expect.poll(() => job(page).innerText()).toContain('Lokta');
      await page.goto(`${SITE}choose/?v=1&paper=unryu&on=binders-board`);
      await wakeIslands(page);
      await expect.poll(() => page.locator('.job-now').innerText()).toMatch(/link brought this job.*Lokta.*put aside/s);
      await page.getByRole('button', { name: 'Take mine back' }).tap();
      const paper = () => page.inputValue('#ch-family').catch(() => 'the page is on its way');
      await expect.poll(paper).toBe('lokta-light');
      expect(complaints).toEqual([]);
    }));
});
