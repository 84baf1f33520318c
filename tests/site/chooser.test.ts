/** A teacher's and a student's way through the chooser, on the built site in a real browser. */
import type { Page } from 'playwright-core';
import { encode } from 'uqr';
import { describe, expect, test } from 'vitest';
import { answerSentence, VERDICT_WORDS } from '../../src/core/choose/answer-words';
import { choose } from '../../src/core/choose/choose';
import { encodeJob } from '../../src/core/choose/write-link';
import { DEFAULT_JOB, type Job } from '../../src/core/choose/job';
import { decodeJob } from '../../src/core/choose/read-link';
import { readCatalogue } from '../tools/read-content';
import { linkOf, open, ORIGIN, PHONE, SITE, wakeIslands, withPage } from './support/browser';

const CHOOSE = `${SITE}choose/`;
const catalogue = readCatalogue();

/** What the core answers to a job, worked out here and not in the page. */
const told = (job: Job) => answerSentence(choose(job, catalogue)[0]!, catalogue);
const sentence = (page: Page) => page.locator('.bench-answer .verdict-why');
const weight = (page: Page) => page.getByRole('textbox', { name: /^Its weight/ });

/** Opens the chooser and waits until it can be used; whatever goes wrong or goes elsewhere is noted. */
async function openChoose(page: Page, address = CHOOSE) {
  const strangers: string[] = [];
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(`${ORIGIN}/`) && !url.startsWith('data:')) strangers.push(url);
  });
  return { strangers, complaints: await open(page, address) };
}

const inTheEnd = (page: Page, words: string) =>
  page.waitForFunction((asked) => document.querySelector('.bench-answer .verdict-why')?.textContent === asked, words);

test('filled in on a phone, sent, and opened by someone else: the same answer', async () => {
  const job: Job = {
    ...DEFAULT_JOB,
    paper: { family: 'lokta-light', grammage: 52.5 },
    substrate: 'mount-board',
    needs: ['flat'],
    placeSeconds: 30,
  };
  const sent = await withPage(PHONE, async (page) => {
    const noted = await openChoose(page);
    await page.getByRole('combobox', { name: /most like/ }).selectOption('lokta-light');
    await weight(page).fill('52,5');
    await page.getByRole('combobox', { name: 'It goes on' }).selectOption('mount-board');
    await page.getByText('What the work must do').tap();
    await page.getByRole('checkbox', { name: 'Must stay flat' }).tap();
    await page.getByText('The piece, the room and the tool').tap();
    await page.getByRole('textbox', { name: /^Time you need/ }).fill('30');
    await inTheEnd(page, told(job));
    // the answer stays in view while the fields are filled in
    const strip = page.locator('.bench-strip');
    expect(await strip.isVisible()).toBe(true);
    const box = (await strip.boundingBox())!;
    expect(box.y).toBeGreaterThanOrEqual(0);
    expect(box.y + box.height).toBeLessThanOrEqual(844);
    expect(await strip.innerText()).toContain(VERDICT_WORDS[choose(job, catalogue)[0]!.verdict]);
    const link = await linkOf(page).inputValue();
    // the address of the page becomes the link, so that it can be sent from there too
    await page.waitForFunction((address) => location.href === address, link);
    expect(noted).toEqual({ strangers: [], complaints: [] });
    return { link, answer: await sentence(page).innerText() };
  });
  expect(decodeJob(new URL(sent.link).search).job).toEqual(job);

  await withPage({}, async (page) => {
    const noted = await openChoose(page, sent.link);
    await inTheEnd(page, told(job));
    expect(await sentence(page).innerText()).toBe(sent.answer);
    expect(await page.getByRole('status').count()).toBe(0);
    expect(await weight(page).inputValue()).toBe('52.5');
    expect(await page.getByRole('combobox', { name: /most like/ }).inputValue()).toBe('lokta-light');
    expect(await page.getByRole('combobox', { name: 'It goes on' }).inputValue()).toBe('mount-board');

    // away and back, and forward again: the answer is still the one that was sent
    await page.goto(SITE);
    await page.goBack();
    await wakeIslands(page);
    await inTheEnd(page, told(job));
    await weight(page).fill('60');
    const changed: Job = { ...job, paper: { family: 'lokta-light', grammage: 60 } };
    await inTheEnd(page, told(changed));
    await page.waitForFunction(() => location.search.includes('gsm=60'));
    await page.goForward();
    expect(page.url()).toBe(SITE);
    await page.goBack();
    await wakeIslands(page);
    await inTheEnd(page, told(changed));
    expect(noted).toEqual({ strangers: [], complaints: [] });
  });
});

describe('a link that is not what it was', () => {
  test('broken, it opens with what can be read and names what cannot; mended, the notice goes', async () => {
    await withPage(PHONE, async (page) => {
      await openChoose(page, `${CHOOSE}?v=1&paper=moon-paper&gsm=heavy&on=glass&have=%E0%A4%A`);
      const job: Job = { ...DEFAULT_JOB, substrate: 'glass' };
      await inTheEnd(page, told(job));
      const notice = await page.getByRole('status').innerText();
      for (const part of ['gsm (heavy)', 'paper (moon-paper)', 'have']) expect(notice).toContain(part);
      expect(await page.locator('main').innerText()).not.toMatch(/NaN|undefined|Infinity/);
      // on a phone the form of a link is folded to its line
      await page.getByText('change', { exact: true }).tap();
      await weight(page).fill('70');
      await page.getByRole('status').waitFor({ state: 'detached' });
    });
  });
  test('from someone who saw another answer, it shows both', async () => {
    await withPage({}, async (page) => {
      const seen = { modelVersion: 0, adhesiveId: 'glue-stick', verdict: 'likely', slipLow: 20, slipHigh: 45 } as const;
      await openChoose(page, `${CHOOSE}?${encodeJob(DEFAULT_JOB, seen)}`);
      const notice = await page.getByRole('status').innerText();
      expect(notice).toContain(catalogue.adhesives.get('glue-stick')!.name);
      expect(notice).toContain(VERDICT_WORDS.likely);
      expect(await sentence(page).innerText()).toBe(told(DEFAULT_JOB));
    });
  });
});

test('by keyboard alone: from the top of the page to an answer, past a mistake', async () => {
  await withPage({}, async (page) => {
    await openChoose(page);
    const focused = () => page.evaluate(() => document.activeElement?.id ?? '');
    const reach = async (id: string) => {
      for (let steps = 0; steps < 60; steps += 1) {
        if ((await focused()) === id) return;
        await page.keyboard.press('Tab');
      }
      throw new Error(`60 steps of Tab did not reach #${id}; focus is on "${await focused()}"`);
    };
    await reach('ch-family');
    await page.keyboard.type('Kozo tissue');
    await reach('ch-grammage');
    await page.keyboard.type('abc');
    await page.locator('#ch-grammage-error').waitFor();
    // a mistake does not take the focus away from where it is being made
    expect(await focused()).toBe('ch-grammage');
    expect(await page.locator('.bench-answer.stale').count()).toBe(1);
    for (let i = 0; i < 3; i += 1) await page.keyboard.press('Backspace');
    await page.keyboard.type('18');
    await reach('ch-substrate');
    const before = await page.locator('#ch-substrate').inputValue();
    await page.keyboard.press('ArrowDown');
    const substrate = await page.locator('#ch-substrate').inputValue();
    expect(substrate).not.toBe(before);
    const job: Job = { ...DEFAULT_JOB, paper: { family: 'kozo-tissue', grammage: 18 }, substrate };
    await inTheEnd(page, told(job));
    // a closed set of fields opens with Enter, and a need is ticked with the space bar
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Space');
    await inTheEnd(page, told({ ...job, needs: ['flat'] }));
    await reach('ch-link');
    expect(decodeJob(new URL(await linkOf(page).inputValue()).search).job).toEqual({ ...job, needs: ['flat'] });
  });
});

test('without script it shows the answer to the usual job, and how to do it', async () => {
  await withPage({ javaScriptEnabled: false }, async (page) => {
    await page.goto(CHOOSE);
    expect(await sentence(page).innerText()).toBe(told(DEFAULT_JOB));
    const [best] = choose(DEFAULT_JOB, catalogue);
    const text = await page.locator('main').innerText();
    for (const step of best!.technique.steps) expect(text).toContain(step);
    expect(await page.locator('main .rank-list > li').count()).toBeGreaterThanOrEqual(catalogue.adhesives.size);
  });
});

test('printed, it carries the answer, the job, the link in letters and as a code, and none of the fields', async () => {
  await withPage({}, async (page) => {
    const job: Job = { ...DEFAULT_JOB, paper: { family: 'chiyogami', grammage: 72 } };
    await openChoose(page, `${CHOOSE}?${encodeJob(job)}`);
    await inTheEnd(page, told(job));
    const code = page.getByRole('img', { name: /^Code of the link/ });
    await code.waitFor();
    const link = await linkOf(page).inputValue();
    // the code is of this link and not of one that was typed on the way
    const { data } = encode(link, { ecc: 'M', border: 2 });
    const dark = data.flat().filter(Boolean).length;
    const drawn = (await code.locator('.qr-ink').getAttribute('d')) ?? '';
    expect(drawn.split('M').length - 1).toBe(dark);
    expect(drawn).toBe(data.flatMap((row, y) => row.map((on, x) => (on ? `M${x} ${y}h1v1h-1z` : ''))).join(''));
    await page.emulateMedia({ media: 'print' });
    expect(await code.isVisible()).toBe(true);
    const { width, height } = (await code.boundingBox())!;
    expect(width).toBeCloseTo(height, 0);
    expect(width).toBeGreaterThan(75); // 2 cm: what a phone's camera reads at arm's length (common practice)
    expect(await page.getByText(link, { exact: true }).isVisible()).toBe(true);
    expect(await sentence(page).isVisible()).toBe(true);
    expect(await page.locator('main').innerText()).toContain('72');
    expect(await page.locator('.bench-inputs input:visible, .bench-inputs select:visible').count()).toBe(0);
    expect(await page.getByRole('button').count()).toBe(0);
  });
});
