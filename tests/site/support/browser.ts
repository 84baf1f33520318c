/** The browser of the site tests, and how a page is opened in it. */
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { inject } from 'vitest';
import { startAt } from '../../tools/browser';

export const SITE = inject('site');
export const ORIGIN = new URL(SITE).origin;

/** However busy the machine: what is not there after this long never comes (see vitest.config.ts). */
const PATIENCE = 180_000;

/** One for all files of a worker: driven from elsewhere, each message would be read and written twice. */
let running: Promise<Browser> | undefined;

/**
 * Opens a page in a context of its own, so that nothing is remembered from the page before it. Nothing is kept for
 * use without a network either, which would fetch the whole site each time: `serviceWorkers: 'allow'` asks for it.
 */
export async function withPage<T>(options: BrowserContextOptions, use: (page: Page) => Promise<T>): Promise<T> {
  running ??= startAt(inject('browser'));
  const context = await (await running).newContext({ reducedMotion: 'reduce', serviceWorkers: 'block', ...options });
  context.setDefaultTimeout(PATIENCE);
  try {
    return await use(await context.newPage());
  } finally {
    await context.close();
  }
}

/** What the page complains of from now on, in its console or by an error. */
export function complaintsOf(page: Page): string[] {
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  return complaints;
}

/** Opens an address, waits until it can be used, and gathers what the page complains of. */
export async function open(page: Page, address: string): Promise<string[]> {
  const complaints = complaintsOf(page);
  await page.goto(address);
  await wakeIslands(page);
  return complaints;
}

export const PHONE: BrowserContextOptions = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

/** The field with the link to what is shown. */
export const linkOf = (page: Page) => page.getByRole('textbox', { name: /^Link to exactly/ });

/**
 * Brings each island into view and a pointer over it, so that those which wait for that wake up; waits until all have, and
 * have done what they do once they are painted: a link, or what this device keeps, is read then.
 */
export async function wakeIslands(page: Page): Promise<void> {
  const asleep = 'astro-island[ssr]:not([client="media"])';
  await page.evaluate(async (selector) => {
    for (const island of document.querySelectorAll(selector)) {
      (island.firstElementChild ?? island).scrollIntoView();
      island.dispatchEvent(new Event('pointerover'));
      await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    }
    scrollTo(0, 0);
  }, asleep);
  await page.waitForFunction((selector) => document.querySelector(selector) === null, asleep);
  await painted(page);
}

/** Waits until what was done is on the screen, and until the page has done what it does once it has been painted. */
export const painted = (page: Page): Promise<unknown> =>
  page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(() => setTimeout(done)))));
