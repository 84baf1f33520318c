/** How long a slow phone takes to learn from the swatches that it keeps, and how long it keeps the thumb waiting by it. */
import type { Browser } from 'playwright-core';
import { STANDARD_QUESTIONS } from '../../src/core/trial/design';
import { TRIAL_VERSION, type Outcome, type Trial } from '../../src/core/trial/record';
import { readCatalogue } from '../tools/read-content';
import { onPhone } from './slow-phone';

export interface Learnt {
  /** swatches that were weighed, as the page says */
  readonly swatches: number;
  /** ms from the arrival of the last script that it needs to the answer with them on the page */
  readonly answered: number;
  /** ms of every task over 50 in that time, that in which the answer is drawn among them, and of those after it */
  readonly before: readonly number[];
  readonly after: readonly number[];
}

const GLUES = ['pva', 'pva-mc-1-1', 'methylcellulose-2-5', 'wheat-starch-paste-12'];
const PAPERS = 12;

/** 48 swatches, no two alike: the dearest there can be. */
function trial(): Trial {
  const papers = [...readCatalogue().papers.values()].slice(0, PAPERS);
  const outcomes: readonly Outcome[] = ['pass', 'pass', 'fail'];
  return {
    version: TRIAL_VERSION,
    id: 'measured',
    name: 'Forty-eight swatches',
    by: 'Ada',
    createdAt: '2026-03-01T09:00:00Z',
    substrate: 'binders-board',
    papers: papers.map(({ id, name }, i) => ({ id: `paper-${i + 1}`, name, family: id })),
    glues: GLUES.map((record, i) => ({ id: `glue-${i + 1}`, name: record, record })),
    holds: [40],
    replicates: 1,
    questions: STANDARD_QUESTIONS.filter(({ kind }) => kind === 'lift' || kind === 'spread' || kind === 'board'),
    widthMm: 50,
    heightMm: 70,
    seed: 11,
    conditions: { celsius: 20, humidity: 50 },
    swatches: papers.flatMap((_, i) =>
      GLUES.map((_glue, k) => ({
        number: i * GLUES.length + k + 1,
        paper: `paper-${i + 1}`,
        glue: `glue-${k + 1}`,
        hold: 40,
        block: 1,
        outcomes: { spread: 'pass' as const, board: 'pass' as const, lift: outcomes[(i + k) % outcomes.length]! },
        judgedAt: '2026-03-01T10:00:00Z',
      })),
    ),
  };
}

const KEY = 'open-time:trial:measured';

interface Noted {
  readonly tasks: readonly { readonly from: number; readonly to: number }[];
  readonly answeredAt: number;
}

/** One visit to the chooser of a phone that keeps those swatches. */
async function visit(browser: Browser, origin: string): Promise<Learnt> {
  return onPhone(browser, { network: false, processor: true, keepsNothing: true }, async (page) => {
    await page.goto(`${origin}/404.html`);
    await page.evaluate(([key, text]) => localStorage.setItem(key, text), [KEY, JSON.stringify(trial())] as const);
    await page.addInitScript(() => {
      const tasks: { from: number; to: number }[] = [];
      const noted = { tasks, answeredAt: 0 };
      Object.assign(window, { noted });
      new PerformanceObserver((list) => {
        for (const { startTime, duration } of list.getEntries())
          tasks.push({ from: startTime, to: startTime + duration });
      }).observe({ type: 'longtask', buffered: true });
      new MutationObserver(() => {
        if (noted.answeredAt === 0 && document.querySelector('.taught')) noted.answeredAt = performance.now();
      }).observe(document, { subtree: true, childList: true });
    });
    await page.goto(`${origin}/choose/`);
    await page.locator('.taught li').first().waitFor({ state: 'attached', timeout: 60_000 });
    // the last of the tasks is told when it has ended
    await page.waitForTimeout(500);
    const told = (await page.locator('.taught > p').first().textContent()) ?? '';
    const { tasks, answeredAt } = await page.evaluate(() => (window as unknown as { noted: Noted }).noted);
    const arrived = await page.evaluate(
      () =>
        performance
          .getEntriesByType('resource')
          .filter(({ name }) => name.includes('/reweigh.'))
          .map((one) => (one as PerformanceResourceTiming).responseEnd)[0]!,
    );
    return {
      swatches: Number(/your (\d+) swatches/.exec(told)?.[1]),
      answered: Math.round(answeredAt - arrived),
      before: longAmong(tasks.filter(({ to, from }) => to > arrived && from < answeredAt)),
      after: longAmong(tasks.filter(({ from }) => from >= answeredAt)),
    };
  });
}

const longAmong = (tasks: Noted['tasks']): readonly number[] => tasks.map(({ from, to }) => Math.round(to - from));

/** So many visits, each with nothing cached. */
export async function measureLearning(browser: Browser, origin: string, runs: number): Promise<Learnt[]> {
  const visits: Learnt[] = [];
  for (let run = 0; run < runs; run += 1) visits.push(await visit(browser, origin));
  return visits;
}
