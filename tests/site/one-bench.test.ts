/** What every calculator does alike: a link shows its answer at once, a clock beside a slip time, prints of few pages. */
import { describe, expect, test } from 'vitest';
import { linkOf, look, open, PHONE, SITE, wakeIslands, withPage } from './support/browser';

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
    look(PHONE, async (page) => {
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

test.for(['choose', 'mix', 'cover', 'flat', 'make', 'cut', 'workshop', 'paper', 'bench'])(
  'on a low desk screen the last line of the answer of /%s/ can be scrolled to, and nothing lies over it',
  (room) =>
    look({ viewport: { width: 1280, height: 700 } }, async (page) => {
      await open(page, `${SITE}${room}/`);
      await page.locator('.next-steps a').last().click({ trial: true });
    }),
);

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
    const clock = page.locator('.slip-clock');
    await page.getByRole('button', { name: 'Start when it is down' }).tap();
    await clock.waitFor();
    const first = await clock.innerText();
    expect(first).toMatch(/\d:\d\d/);
    await page.clock.runFor(3000);
    await expect.poll(() => clock.innerText()).not.toBe(first);
    await page.clock.runFor(3_600_000);
    await expect.poll(() => clock.innerText()).toMatch(/It has grabbed by now/);
    await page.locator('.slip-clock').getByRole('button', { name: 'Stop' }).tap();
    await page.getByRole('button', { name: 'Start when it is down' }).waitFor();
    expect(complaints).toEqual([]);
  }));

test('a clock stands beside the answer of the chooser, and one for a drop where its seconds are asked for', () =>
  withPage(PHONE, async (page) => {
    await page.clock.install();
    const complaints = await open(page, `${SITE}choose/?v=1&paper=lokta-light&gsm=55&have=pva-mc-1-1`);
    await page.locator('.bench-answer').getByRole('button', { name: 'Start when it is down' }).tap();
    await page.locator('.slip-clock').waitFor();
    await page.clock.runFor(3_600_000);
    await expect.poll(() => page.locator('.slip-clock').innerText()).toMatch(/It has grabbed by now/);
    await page.locator('.form-fold > summary').tap();
    await page.getByText('More about this paper').tap();
    await page.getByRole('button', { name: 'Time a drop' }).tap();
    await page.getByRole('button', { name: 'A drop touches: start' }).tap();
    await page.clock.runFor(4000);
    await page.getByRole('button', { name: 'Its shine is gone: stop' }).tap();
    await expect.poll(() => page.inputValue('#ch-dropSeconds')).not.toBe('');
    expect(Number(await page.inputValue('#ch-dropSeconds'))).toBeGreaterThanOrEqual(4);
    expect(complaints).toEqual([]);
  }));

test.for(['', 'lessons/open-time/'])(
  'the clock stands beside the answer of /%s, and is fetched when it is pressed',
  (path) =>
    withPage(PHONE, async (page) => {
      await page.clock.install();
      const complaints = await open(page, SITE + path);
      const asked: string[] = [];
      page.on('request', (request) => asked.push(request.url()));
      const answer = page.locator('astro-island .bench-answer').first();
      await answer.getByRole('button', { name: 'Start when it is down' }).tap();
      await answer.locator('.slip-clock').waitFor();
      expect(asked.some((url) => url.includes('SlipClock'))).toBe(true);
      await page.clock.runFor(3_600_000);
      await expect.poll(() => answer.locator('.slip-clock').innerText()).toMatch(/It has grabbed by now/);
      expect(complaints).toEqual([]);
    }),
);

test('a plan of a trial goes on with its figures, at one tap', () =>
  withPage(PHONE, async (page) => {
    const complaints = await open(page, `${SITE}trials/plan/?paper=lokta-light~55gsm&glue=pva.methylcellulose-4`);
    await page.getByRole('navigation', { name: 'Next' }).last().getByRole('link', { name: 'How much it takes' }).tap();
    await page.waitForURL(/cover\/\?.*pieces=/);
    await wakeIslands(page);
    // four swatches of each adhesive, 50 × 70 mm, as the planner opens
    const query = new URL(page.url()).searchParams;
    expect([query.get('pieces'), query.get('glue'), query.get('paper')]).toEqual([
      '50x70x4',
      'pva',
      'lokta-light~55gsm',
    ]);
    expect(complaints).toEqual([]);
  }));

test('the student’s sheet has the clock on a phone, and not on paper', () =>
  withPage(PHONE, async (page) => {
    await open(page, `${SITE}workshop/?v=1&people=12&glue=pva-mc-1-1&sheet=student`);
    const start = page.locator('.handout').getByRole('button', { name: 'Start when it is down' });
    await start.waitFor();
    await page.emulateMedia({ media: 'print' });
    expect(await start.isVisible()).toBe(false);
  }));

const pagesOf = (pdf: Buffer) => pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g)?.length ?? 0;

describe.for(['A4', 'Letter'] as const)('on %s', (format) => {
  test('the student’s sheet is one page, by its own link', () =>
    look({}, async (page) => {
      await open(page, `${SITE}workshop/?v=1&people=12&sheet=student`);
      await page.locator('.handout').waitFor();
      expect(await page.locator('.bench-answer').isVisible()).toBe(false);
      expect(pagesOf(await page.pdf({ format }))).toBe(1);
    }));
  test('that of a box, the longest, is one page too, and says what can hurt', () =>
    look({}, async (page) => {
      await open(page, `${SITE}workshop/?v=1&people=12&make=lidded-box&sheet=student`);
      await page.locator('.handout').waitFor();
      expect(await page.locator('.handout').innerText()).toMatch(/Take care[\s\S]*Knives and scissors cut/);
      expect(pagesOf(await page.pdf({ format }))).toBe(1);
    }));
  test('a class has no page that holds only a code', () =>
    look({}, async (page) => {
      await open(page, `${SITE}workshop/?v=1&people=12`);
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('.send-it .qr').isVisible()).toBe(false);
      const pages = pagesOf(await page.pdf({ format }));
      console.log(`class on ${format}: ${pages} pages`);
      expect(pages).toBeGreaterThanOrEqual(3);
      expect(pages).toBeLessThanOrEqual(12);
    }));
  test('a project takes few pages', () =>
    look({}, async (page) => {
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
