/** One job carried through the rooms by one thumb: nothing is typed twice, and nothing is lost on the way back. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { linkOf, open, PHONE, SITE, wakeIslands, withPage } from './support/browser';

const shownIn = (page: Page, select: string) =>
  page.locator(select).evaluate((one: HTMLSelectElement) => one.selectedOptions[0]?.text);
const wakesAt = async (page: Page, room: string) => {
  await page.waitForURL(new RegExp(`/${room}/`));
  await wakeIslands(page);
};
/** One tap on a next step, which is one room further. */
async function goOn(page: Page, step: string, room: string) {
  await page.locator('.next-steps').getByRole('link', { name: step }).tap();
  await wakesAt(page, room);
}
const job = (page: Page) => page.locator('.job-now strong');

describe('journeys', () => {
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

  test('a paper of one’s own has its name in every room', () =>
    withPage(PHONE, async (page) => {
      await open(page, `${SITE}paper/`);
      await page.fill('#know-name', 'Grey with cranes');
      await page.selectOption('#know-weightBy', 'metric');
      await page.fill('#know-gsm', '92');
      await expect.poll(() => job(page).innerText()).toBe('Grey with cranes 92\u00a0g/m²');
      for (const [room, select] of [
        ['cover', '#cover-paper'],
        ['flat', '#warp-paper'],
        ['workshop', '#class-paper'],
      ] as const) {
        await page.goto(SITE + room + '/');
        await wakeIslands(page);
        await expect.poll(() => shownIn(page, select)).toBe('Yours: Grey with cranes');
        expect(await job(page).innerText()).toContain('Grey with cranes');
      }
      for (const room of ['make', 'cut', 'mix']) {
        await page.goto(`${SITE}${room}/`);
        await wakeIslands(page);
        await expect.poll(() => job(page).innerText()).toContain('Grey with cranes');
      }
    }));

  test('a box is measured, cut, covered and bought for', () =>
    withPage(PHONE, async (page) => {
      await open(page, `${SITE}make/`);
      await page.getByRole('radio', { name: 'Lidded box' }).tap();
      await page.fill('#make-width', '120');
      await page.fill('#make-height', '80');
      await page.fill('#make-thickness', '40');
      await expect.poll(() => job(page).innerText()).toContain('lidded box 120\u00a0×\u00a080\u00a0×\u00a040\u00a0mm');
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
      await goOn(page, 'Put it in a class', 'workshop');
      await expect.poll(() => page.locator('#class-answer').innerText()).toMatch(/kits of the lidded box/);
      expect(await page.locator('#class-answer table').first().innerText()).toContain('sheet');
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
});

/** Links as somebody sends them; the part of the answer that has to be seen at once. */
const SENT = [
  ['mix/?v=1&do=stretch&paper=lokta-light&need=250&loss=0', '.portions'],
  ['cover/?v=1&thing=own&pieces=210x150x1&glue=pva-mc-1-1&paper=lokta-light', '.portions'],
  ['flat/?v=1&paper=lokta-light&gsm=55', '.verdict'],
  ['make/?v=1&make=lidded-box&wide=120&high=80&thick=40', '.plate-body'],
  ['cut/?v=1&kits=6', '.portions'],
  ['workshop/?v=1&people=12', '.verdict-why'],
  ['paper/?v=1&paper=wove-text&weight=metric&gsm=92', '.plate-body'],
] as const;
/** Screens of a phone that a calculator takes, folded; a lined box has eighteen pieces to list, which alone fill two. */
const MOST_SCREENS = 6;
const MOST_FOR_A_BOX = 7.5;

describe('on a phone', () => {
  test.for(SENT)('the link %s shows its answer at once, folded, in six screens and nothing sideways', ([tail, card]) =>
    withPage(PHONE, async (page) => {
      await open(page, SITE + tail);
      await page.evaluate(() => scrollTo(0, 0));
      expect(await page.locator('.form-fold').evaluate((form: HTMLDetailsElement) => form.open)).toBe(false);
      const box = (await page.locator(`.bench-answer ${card}`).first().boundingBox())!;
      expect(box.y).toBeLessThan(600);
      const size = await page.evaluate(() => ({
        high: document.documentElement.scrollHeight / 844,
        wide: document.documentElement.scrollWidth,
      }));
      console.log(`${tail.split('/')[0]}: ${size.high.toFixed(1)} screens`);
      expect(size.wide).toBeLessThanOrEqual(390);
      expect(size.high).toBeLessThanOrEqual(tail.startsWith('make') ? MOST_FOR_A_BOX : MOST_SCREENS);
      await page.locator('.form-fold > summary').tap();
      expect(await page.locator('.form-fold').evaluate((form: HTMLDetailsElement) => form.open)).toBe(true);
    }),
  );
});

test('on a desk the form is open beside the answer', () =>
  withPage({ viewport: { width: 1280, height: 900 } }, async (page) => {
    await open(page, SITE + SENT[0][0]);
    const form = (await page.locator('#mix-need').boundingBox())!;
    const answer = (await page.locator('.bench-answer').boundingBox())!;
    expect(form.x + form.width).toBeLessThanOrEqual(answer.x);
  }));

test('a clock stands beside a slip time, and counts from the press', () =>
  withPage(PHONE, async (page) => {
    await page.clock.install();
    const complaints = await open(page, SITE + SENT[0][0]);
    await page.getByRole('button', { name: 'Start when it is down' }).tap();
    await page.locator('.slip-clock').waitFor();
    expect(await page.locator('.slip-clock').innerText()).toMatch(/0:0\d/);
    await page.clock.runFor(3_600_000);
    expect(await page.locator('.slip-clock').innerText()).toMatch(/It has grabbed by now/);
    await page.locator('.slip-clock').getByRole('button', { name: 'Stop' }).tap();
    await page.getByRole('button', { name: 'Start when it is down' }).waitFor();
    expect(complaints).toEqual([]);
  }));

const pagesOf = (pdf: Buffer) => pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g)?.length ?? 0;

describe.for(['A4', 'Letter'] as const)('on %s', (format) => {
  test('the student’s sheet is one page, by its own link', () =>
    withPage({}, async (page) => {
      await open(page, `${SITE}workshop/?v=1&people=12&sheet=student`);
      await page.locator('.handout').waitFor();
      expect(await page.locator('.bench-answer').isVisible()).toBe(false);
      expect(pagesOf(await page.pdf({ format }))).toBe(1);
    }));
  test('a class has no page that holds only a code', () =>
    withPage({}, async (page) => {
      await open(page, `${SITE}workshop/?v=1&people=12`);
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('.send-it .qr').isVisible()).toBe(false);
      const pages = pagesOf(await page.pdf({ format }));
      console.log(`class on ${format}: ${pages} pages`);
      expect(pages).toBeGreaterThanOrEqual(3);
      expect(pages).toBeLessThanOrEqual(12);
    }));
  test('a project takes few pages', () =>
    withPage({}, async (page) => {
      await open(page, `${SITE}make/?v=1&make=lidded-box&wide=120&high=80&thick=40`);
      const pages = pagesOf(await page.pdf({ format }));
      console.log(`box on ${format}: ${pages} pages`);
      expect(pages).toBeLessThanOrEqual(7);
    }));
});

test('what is sent and what is kept say the same', () =>
  withPage(PHONE, async (page) => {
    await open(page, `${SITE}cover/`);
    await page.selectOption('#cover-paper', 'unryu');
    await expect.poll(() => linkOf(page).inputValue()).toContain('paper=unryu');
    await page.goto(`${SITE}cover/`);
    await wakeIslands(page);
    await expect.poll(() => linkOf(page).inputValue()).toContain('paper=unryu');
  }));
