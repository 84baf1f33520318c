/** The browser of the site tests, and how a page is opened in it. */
import type { Browser, BrowserContextOptions, CDPSession, Page } from 'playwright-core';
import { inject } from 'vitest';
import { startAt } from '../../tools/browser';

export const SITE = inject('site');
export const ORIGIN = new URL(SITE).origin;

/** However busy the machine: what is not there after this long never comes (see vitest.config.ts). */
const PATIENCE = 180_000;

/** One for all files of a worker: driven from elsewhere, each message would be read and written twice. */
let running: Promise<Browser> | undefined;

async function openPage(options: BrowserContextOptions): Promise<Page> {
  running ??= startAt(inject('browser'));
  const context = await (await running).newContext({ reducedMotion: 'reduce', serviceWorkers: 'block', ...options });
  context.setDefaultTimeout(PATIENCE);
  return context.newPage();
}

/**
 * Opens a page in a context of its own, so that nothing is remembered from the page before it. Nothing is kept for
 * use without a network either, which would fetch the whole site each time: `serviceWorkers: 'allow'` asks for it.
 */
export async function withPage<T>(options: BrowserContextOptions, use: (page: Page) => Promise<T>): Promise<T> {
  const page = await openPage(options);
  try {
    return await use(page);
  } finally {
    await page.context().close();
  }
}

/** What a test may have asked a page to tell it. */
const TOLD = ['console', 'pageerror', 'request', 'response', 'dialog'] as const;
interface Looked {
  readonly as: string;
  readonly page: Page;
  /** to ask of the browser what Playwright has no words for */
  readonly session: CDPSession;
}
/** Pages that wait to be looked at again, and what each was opened with; the one that has waited longest first. */
const idle: Looked[] = [];
const MOST_IDLE = 6;

/** Whatever is opened next finds nothing kept, and the page as it was opened. */
async function wipe({ page, session }: Looked, options: BrowserContextOptions): Promise<void> {
  for (const what of TOLD) page.removeAllListeners(what);
  await page.evaluate(() => {
    const clear = () => {
      localStorage.clear();
      sessionStorage.clear();
    };
    clear();
    // and once more when it goes, after all that it does itself then
    addEventListener('pagehide', clear);
    // nor is it laid out again for the size that the next one is to have
    document.documentElement.style.display = 'none';
  });
  await session.send('Storage.clearDataForOrigin', { origin: ORIGIN, storageTypes: 'all' });
  const { viewport, colorScheme = 'light', forcedColors = 'none', reducedMotion = 'reduce' } = options;
  await page.setViewportSize(viewport ?? { width: 1280, height: 720 });
  // as no test had asked for a medium: one that is asked for stands in the way of paper
  await page.emulateMedia({ media: null, colorScheme, forcedColors, reducedMotion });
}

async function opened(
  as: string,
  options: BrowserContextOptions,
  prepare?: (page: Page) => Promise<void>,
): Promise<Looked> {
  const page = await openPage(options);
  await prepare?.(page);
  return { as, page, session: await page.context().newCDPSession(page) };
}

/**
 * For tests that only look: as `withPage`, but in a page that others have looked at with the same options, wiped in
 * between. Its process, what it fetched and what it compiled are there already, which spares up to a third of the
 * processor's time. What types, keeps something, holds the clock or stands between the page and the network has a page
 * of its own. `prepare` is done once to each new page, and holds for whatever it opens; `as` tells such pages from others.
 */
export async function look<T>(
  options: BrowserContextOptions,
  use: (page: Page) => Promise<T>,
  { as = '', prepare }: { readonly as?: string; readonly prepare?: (page: Page) => Promise<void> } = {},
): Promise<T> {
  const kind = as + JSON.stringify(options);
  const at = idle.findIndex((one) => one.as === kind);
  const looked = at < 0 ? await opened(kind, options, prepare) : idle.splice(at, 1)[0]!;
  const { page } = looked;
  try {
    const found = await use(page);
    await wipe(looked, options);
    idle.push(looked);
    if (idle.length > MOST_IDLE) await idle.shift()!.page.context().close();
    return found;
  } catch (problem) {
    // nobody knows what state it is in
    await page.context().close();
    throw problem;
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
