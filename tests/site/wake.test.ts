/** Calculators that are fetched when they are used: nothing typed before they have come is lost. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { answerSentence } from '../../src/core/choose/answer-words';
import { choose } from '../../src/core/choose/choose';
import { encodeJob } from '../../src/core/choose/write-link';
import { DEFAULT_JOB } from '../../src/core/choose/job';
import { decodeJob } from '../../src/core/choose/read-link';
import { presets } from '../../src/data/presets';
import { readCatalogue } from '../tools/read-content';
import { SITE, withPage } from './support/browser';

const catalogue = readCatalogue();
const LESSON = `${SITE}lessons/open-time/`;
const CHOOSE = `${SITE}choose/`;
const island = (page: Page) => page.locator('astro-island').first();
const weight = (page: Page) => page.getByLabel('Its weight');
const sentence = (page: Page) => page.locator('.bench-answer .verdict-why').first();
const awake = (page: Page) => page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
/** The preset that the lesson opens its chooser at, by the name that its fields carry. */
const jobOf = async (page: Page) => presets[(await weight(page).getAttribute('id'))!.replace(/-grammage$/, '')]!;
const told = (job: typeof DEFAULT_JOB) => answerSentence(choose(job, catalogue)[0]!, catalogue);

/** Holds every script back until it is let go. */
async function holdScripts(page: Page): Promise<() => void> {
  let letGo = () => {};
  const gate = new Promise<void>((resolve) => (letGo = resolve));
  await page.route('**/_astro/*.js', async (route) => {
    await gate;
    await route.continue();
  });
  return letGo;
}

test('a lesson asks for no script until its calculator is used', async () => {
  await withPage({}, async (page) => {
    const asked: string[] = [];
    page.on('request', (request) => request.resourceType() === 'script' && asked.push(request.url()));
    await page.goto(LESSON, { waitUntil: 'networkidle' });
    await island(page).scrollIntoViewIfNeeded();
    // time for what is in view to be noticed
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
    expect(asked).toEqual([]);
    await weight(page).hover();
    await awake(page);
    expect(asked.length).toBeGreaterThan(0);
  });
});

test('what is typed while the calculator is on its way stays, and is answered when it has come', async () => {
  await withPage({}, async (page) => {
    const letGo = await holdScripts(page);
    await page.goto(LESSON);
    const job = await jobOf(page);
    const before = await sentence(page).innerText();
    await weight(page).fill('');
    await weight(page).pressSequentially('123');
    await page.keyboard.press('ArrowLeft');
    await page.getByLabel('It goes on').selectOption('glass');
    await weight(page).focus();
    await weight(page).evaluate((field: HTMLInputElement) => field.setSelectionRange(1, 1));
    await page.getByRole('status').getByText('on its way').waitFor();
    expect(await island(page).getAttribute('aria-busy')).toBe('true');
    expect(await sentence(page).innerText()).toBe(before);
    letGo();
    await awake(page);
    const asked = { ...job, paper: { ...job.paper, grammage: 123 }, substrate: 'glass' };
    await expect.poll(() => sentence(page).innerText()).toBe(told(asked));
    expect(await weight(page).inputValue()).toBe('123');
    expect(await page.getByLabel('It goes on').inputValue()).toBe('glass');
    expect(await island(page).getAttribute('aria-busy')).toBeNull();
    expect(await page.getByText('on its way').count()).toBe(0);
    // the caret is where it was
    await page.keyboard.type('0');
    expect(await weight(page).inputValue()).toBe('1023');
    const onward = await page.getByRole('link', { name: 'Open this in the chooser' }).getAttribute('href');
    expect(decodeJob(onward!.replace(/^[^?]*/, '')).job.paper.grammage).toBe(123);
  });
});

test('a calculator that cannot be fetched says so and keeps what was typed', async () => {
  await withPage({}, async (page) => {
    await page.route('**/_astro/*.js', (route) => route.abort());
    await page.goto(LESSON);
    await weight(page).fill('33');
    await page.getByRole('status').getByText('could not be fetched').waitFor();
    expect(await weight(page).inputValue()).toBe('33');
    await page.unroute('**/_astro/*.js');
    await weight(page).fill('34');
    await awake(page);
    expect(await weight(page).inputValue()).toBe('34');
    expect(await page.getByText('could not be fetched').count()).toBe(0);
  });
});

test('fields that the browser filled in again on coming back are answered', async () => {
  await withPage({}, async (page) => {
    await page.goto(LESSON);
    const job = await jobOf(page);
    // what a browser does between reading the page and showing it
    await page.addInitScript(() =>
      addEventListener('DOMContentLoaded', () => {
        document.querySelector<HTMLSelectElement>('select[id$="-substrate"]')!.value = 'glass';
      }),
    );
    await page.reload();
    await awake(page);
    await expect.poll(() => sentence(page).innerText()).toBe(told({ ...job, substrate: 'glass' }));
  });
});

describe('the chooser’s own page', () => {
  test.for(['', `?${encodeJob({ ...DEFAULT_JOB, celsius: 12 })}`])(
    'keeps what is typed before it wakes: "%s"',
    async (tail) => {
      await withPage({}, async (page) => {
        const letGo = await holdScripts(page);
        await page.goto(CHOOSE + tail, { waitUntil: 'commit' });
        await weight(page).fill('55');
        await page.getByText('What the work must do').click();
        await page.getByRole('checkbox', { name: 'Must stay flat' }).check();
        letGo();
        await awake(page);
        const job = {
          ...DEFAULT_JOB,
          paper: { ...DEFAULT_JOB.paper, grammage: 55 },
          needs: ['flat'] as const,
          celsius: tail ? 12 : DEFAULT_JOB.celsius,
        };
        const link = () => page.getByRole('textbox', { name: /^Link to exactly/ }).inputValue();
        await expect.poll(async () => decodeJob(new URL(await link()).search).job).toEqual(job);
        await expect.poll(() => sentence(page).innerText()).toBe(told(job));
        expect(await weight(page).inputValue()).toBe('55');
        expect(await page.getByRole('checkbox', { name: 'Must stay flat' }).isChecked()).toBe(true);
        expect(await page.locator('#ch-celsius').inputValue()).toBe(String(job.celsius));
      });
    },
  );
});
