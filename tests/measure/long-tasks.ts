/** Tasks that keep a slow phone from answering the thumb: over 50 ms, while someone types into a calculator. */
import type { Browser } from 'playwright-core';
import { onPhone } from './slow-phone';

export interface LongTasks {
  readonly page: string;
  /** while the page opens, before anything is typed */
  readonly opening: readonly number[];
  readonly typing: readonly number[];
  /** from the last key on: the search for what would change the answer, the code of the link */
  readonly after: readonly number[];
}

const KEYS = ['1', '8', 'Backspace', '4', '.', '5', 'Backspace', 'Backspace', 'Backspace', '9', '5'];
const FIELD = 'astro-island input[inputmode="decimal"]';
const REST = 4000;

const VISITS = 3;

async function visit(browser: Browser, origin: string, path: string): Promise<LongTasks> {
  return onPhone(browser, { network: false, processor: true }, async (page) => {
    await page.addInitScript(() => {
      const tasks: number[] = [];
      Object.assign(window, { longTasks: tasks });
      new PerformanceObserver((list) => {
        for (const { duration } of list.getEntries()) tasks.push(Math.round(duration));
      }).observe({ type: 'longtask', buffered: true });
    });
    const taken = async () => {
      await page.waitForTimeout(300);
      return page.evaluate(() => (window as unknown as { longTasks: number[] }).longTasks.splice(0));
    };
    await page.goto(origin + path);
    const field = page.locator(FIELD).first();
    await field.focus();
    // what stands below the answer may still be asleep
    await page.waitForFunction(
      (one) => document.querySelector(one)!.closest('astro-island')!.hasAttribute('ssr') === false,
      FIELD,
    );
    await page.waitForTimeout(REST);
    const opening = await taken();
    await field.fill('');
    for (const key of KEYS) {
      await field.press(key);
      await page.waitForTimeout(180);
    }
    const typing = await taken();
    await page.waitForTimeout(REST);
    return { page: path, opening, typing, after: await taken() };
  });
}

/** Other work on the machine makes tasks look longer than they are, never shorter: the quietest visit counts. */
export async function measureLongTasks(browser: Browser, origin: string, path: string): Promise<LongTasks> {
  const visits: LongTasks[] = [];
  for (let i = 0; i < VISITS; i += 1) visits.push(await visit(browser, origin, path));
  const longest = (one: LongTasks) => [...one.typing, ...one.after].reduce((sum, task) => sum + task, 0);
  return visits.toSorted((a, b) => longest(a) - longest(b))[0]!;
}
