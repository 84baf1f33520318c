/**
 * How soon a page that was just opened answers: a change is typed at its first paint, as by somebody who knows the page,
 * and the time counts from asking for the page. Other sites' pages can be measured in the same run.
 */
import type { Browser } from 'playwright-core';
import { median, onPhone } from './slow-phone';

export interface Target {
  readonly name: string;
  readonly url: string;
  /** what is typed into, and where the answer stands */
  readonly field: string;
  readonly answer: string;
  /** for a page that forgets what is typed before its script has come: it is typed again until it is noticed */
  readonly forgets?: boolean;
}

export interface FirstChange {
  readonly name: string;
  /** ms from asking for the page */
  readonly painted: number;
  /** ms from asking for the page until what was typed has altered the answer */
  readonly answered: number;
  /** tasks over 50 ms until then */
  readonly long: readonly number[];
  /** bytes over the line, heads of the answers included: while nothing is touched, and once the answer has changed */
  readonly visit: number;
  readonly script: number;
  readonly used: number;
}

/** Runs in the page, before anything of it. */
function typeAtFirstPaint([field, answer, forgets]: readonly [string, string, boolean]) {
  const told = { painted: 0, answered: 0, long: [] as number[] };
  Object.assign(window, { firstChange: told });
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) if (!told.answered) told.long.push(Math.round(duration));
  }).observe({ type: 'longtask', buffered: true });
  let before: string | null = null;
  const type = () => {
    const input = document.querySelector<HTMLInputElement>(field)!;
    for (const sign of ['pointerdown', 'focusin']) input.dispatchEvent(new Event(sign, { bubbles: true }));
    input.value = String(Math.round(Number(input.defaultValue || 60) * 0.5));
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
  };
  const look = () => {
    const shown = document.querySelector(answer);
    const [paint] = performance.getEntriesByName('first-contentful-paint');
    if (before === null) {
      if (paint && shown && document.querySelector(field)) {
        told.painted = paint.startTime;
        before = shown.textContent;
        type();
      }
    } else if (shown && shown.textContent !== before) {
      told.answered = performance.now();
      return;
    } else if (forgets) type();
    setTimeout(look, 4);
  };
  setTimeout(look);
}

async function once(browser: Browser, target: Target, touch: boolean) {
  return onPhone(browser, { network: true, processor: true, keepsNothing: true }, async (page, devtools) => {
    await page.addInitScript('globalThis.__name = (one) => one');
    const sent = { all: 0, script: 0 };
    const scripts = new Set<string>();
    devtools.on('Network.responseReceived', ({ requestId, type }) => {
      if (type === 'Script') scripts.add(requestId);
    });
    devtools.on('Network.loadingFinished', ({ requestId, encodedDataLength }) => {
      sent.all += encodedDataLength;
      if (scripts.has(requestId)) sent.script += encodedDataLength;
    });
    if (touch)
      await page.addInitScript(typeAtFirstPaint, [target.field, target.answer, target.forgets ?? false] as const);
    await page.goto(target.url, { waitUntil: 'networkidle' });
    if (touch)
      await page.waitForFunction(() => (window as never as { firstChange: FirstChange }).firstChange.answered > 0);
    const told = touch
      ? await page.evaluate(() => (window as never as { firstChange: FirstChange }).firstChange)
      : undefined;
    return { ...sent, ...told };
  });
}

/** The median of `runs` visits to each, turn by turn, so that whatever else the machine does falls on all alike. */
export async function measureFirstChange(
  browser: Browser,
  targets: readonly Target[],
  runs: number,
): Promise<readonly FirstChange[]> {
  const visits = targets.map(() => [] as Awaited<ReturnType<typeof once>>[]);
  const still: Awaited<ReturnType<typeof once>>[] = [];
  for (const target of targets) still.push(await once(browser, target, false));
  for (let run = 0; run < runs; run += 1)
    for (const [i, target] of targets.entries()) visits[i]!.push(await once(browser, target, true));
  return targets.map(({ name }, i) => {
    const middle = (key: 'painted' | 'answered') => Math.round(median(visits[i]!.map((one) => one[key] ?? Number.NaN)));
    const quietest = visits[i]!.toSorted((a, b) => a.answered! - b.answered!)[0]!;
    return {
      name,
      painted: middle('painted'),
      answered: middle('answered'),
      long: quietest.long ?? [],
      visit: still[i]!.all,
      script: still[i]!.script,
      used: visits[i]![0]!.all,
    };
  });
}
