/** How long until a page's answer is painted, and until it can be changed, on a slow phone. */
import type { Browser, Page } from 'playwright-core';
import { median, onPhone } from './slow-phone';

export interface Ready {
  readonly page: string;
  /** ms from asking for the page */
  readonly painted: number;
  /** ms from asking for the page until the calculator is awake; for one that waits for use, from the touch */
  readonly changeable: number;
  /** ms from the first change, made at once or when the calculator is awake, to the new answer */
  readonly answered: number;
  readonly waits: boolean;
}

const RUNS = 5;
const WEIGHT = 'astro-island input[inputmode="decimal"]';
const ANSWER = '.bench-answer';

/** Notes when the answer was first painted: the frame after it stood in the page with all styles read. */
const WATCH = `
  (() => {
    const look = () => {
      const answer = document.querySelector('${ANSWER}');
      const paint = performance.getEntriesByName('first-contentful-paint')[0];
      if (answer && paint && answer.getBoundingClientRect().height > 0) {
        requestAnimationFrame(() => setTimeout(() => (window.paintedAt = performance.now())));
        return;
      }
      requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
    new MutationObserver(() => {
      if (!window.awakeAt && document.querySelector('astro-island') && !document.querySelector('astro-island[ssr]'))
        window.awakeAt = performance.now();
    }).observe(document, { subtree: true, childList: true, attributes: true, attributeFilter: ['ssr'] });
  })();`;

interface Noted {
  readonly paintedAt: number;
  readonly awakeAt?: number;
}

const noted = (page: Page): Promise<Noted> =>
  page.evaluate('({ paintedAt: window.paintedAt, awakeAt: window.awakeAt })');

async function once(browser: Browser, url: string): Promise<Omit<Ready, 'page'>> {
  return onPhone(browser, { network: true, processor: true, keepsNothing: true }, async (page) => {
    await page.addInitScript(WATCH);
    // what the transpiler writes around functions that have a name
    await page.addInitScript('globalThis.__name = (one) => one');
    await page.goto(url, { waitUntil: 'commit' });
    await page.waitForFunction(() => 'paintedAt' in window, undefined, { polling: 50 });
    const waits = await page.evaluate(
      () => !/"value":"now"/.test(document.querySelector('astro-island')!.getAttribute('opts')!),
    );
    if (!waits) await page.waitForFunction(() => 'awakeAt' in window, undefined, { polling: 50 });
    else await page.waitForTimeout(1500);
    await page.locator(WEIGHT).first().scrollIntoViewIfNeeded();
    // one change, as a hand makes it, timed inside the page
    const { answered, woken } = await page.evaluate(
      ([field, answer]) =>
        new Promise<{ answered: number; woken: number }>((resolve) => {
          const input = document.querySelector<HTMLInputElement>(field!)!;
          const shown = document.querySelector(answer!)!;
          const before = shown.textContent;
          const began = performance.now();
          let woken = 0;
          const look = () => {
            if (!woken && !input.closest('astro-island')!.hasAttribute('ssr')) woken = performance.now() - began;
            if (shown.textContent !== before) resolve({ answered: performance.now() - began, woken });
            else setTimeout(look, 4);
          };
          input.dispatchEvent(new PointerEvent('pointerdown', { bubbles: true }));
          input.focus();
          input.value = String(Number(input.value || 60) * 0.4);
          input.dispatchEvent(new InputEvent('input', { bubbles: true }));
          look();
        }),
      [WEIGHT, ANSWER] as const,
    );
    const { paintedAt, awakeAt } = await noted(page);
    return { painted: paintedAt, changeable: waits ? woken : awakeAt!, answered, waits };
  });
}

/** The median of five visits, each with nothing cached. */
export async function measureReady(browser: Browser, origin: string, paths: readonly string[]): Promise<Ready[]> {
  const rows: Ready[] = [];
  for (const path of paths) {
    const runs: Omit<Ready, 'page'>[] = [];
    for (let run = 0; run < RUNS; run += 1) runs.push(await once(browser, origin + path));
    const middle = (key: 'painted' | 'changeable' | 'answered') => Math.round(median(runs.map((one) => one[key])));
    rows.push({
      page: path,
      painted: middle('painted'),
      changeable: middle('changeable'),
      answered: middle('answered'),
      waits: runs[0]!.waits,
    });
  }
  return rows;
}
