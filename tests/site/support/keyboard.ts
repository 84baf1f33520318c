/** A way through a page with the Tab key, and what is seen and heard on it. */
import type { Page } from 'playwright-core';

/** One place where the focus has stood. */
export interface Stop {
  /** tag and id, name or words: to say in a message which one it is */
  readonly is: string;
  /** place in the order of the document */
  readonly place: number;
  readonly outlinePx: number;
  /** of the outline on what lies behind it, 1 to 21 */
  readonly contrast: number;
  /** what is stuck to an edge of the window and lies over it, or how it is out of sight */
  readonly hiddenBy: string;
  readonly foldedSummary: boolean;
}

/** Puts into the page what `stopHere` and `missed` ask of it. */
async function prepare(page: Page): Promise<void> {
  await page.evaluate(() => {
    const CAN_STAND =
      'a[href], button:not(:disabled), input:not(:disabled), select:not(:disabled), textarea:not(:disabled), summary, iframe, [tabindex="0"]';
    const isSeen = (element: Element) =>
      element.checkVisibility({ visibilityProperty: true }) && element.getClientRects().length > 0;
    const nameOf = (element: Element) => {
      const words = element.getAttribute('aria-label') ?? element.textContent ?? '';
      return `${element.localName}${element.id ? `#${element.id}` : ''} ${words.trim().slice(0, 40)}`.trim();
    };
    const luminance = (colour: readonly number[]) => {
      const [r = 0, g = 0, b = 0] = colour.map((part) => {
        const share = part / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const read = (colour: string) => (colour.match(/[\d.]+/g) ?? []).map(Number);
    const behind = (element: Element | null): number[] => {
      if (!element) return [255, 255, 255];
      const colour = read(getComputedStyle(element).backgroundColor);
      return colour.length === 3 || colour[3]! > 0 ? colour.slice(0, 3) : behind(element.parentElement);
    };
    const contrast = (a: number[], b: number[]) => {
      const [low = 0, high = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
      return (high + 0.05) / (low + 0.05);
    };
    const hiddenBy = (element: Element) => {
      const box = element.getBoundingClientRect();
      if (box.bottom <= 0 || box.top >= innerHeight) return 'the edge of the window';
      const stuck = [...document.querySelectorAll('.bench-strip, .run-steps, .new-text')].filter((one) => {
        const { position } = getComputedStyle(one);
        return (position === 'sticky' || position === 'fixed') && isSeen(one) && !one.contains(element);
      });
      const over = stuck.find((one) => {
        const { top, bottom } = one.getBoundingClientRect();
        const free = Math.max(top, innerHeight - bottom);
        // what is taller than the room that is left cannot help but reach under it
        return box.height < free && box.top < bottom - 0.5 && box.bottom > top + 0.5;
      });
      if (over) return nameOf(over);
      const top = document.elementFromPoint((box.left + box.right) / 2, (box.top + box.bottom) / 2);
      const beside = !top || element.contains(top) || top.contains(element) || element.closest('label')?.contains(top);
      return beside ? '' : nameOf(top);
    };
    const stood = new WeakSet<Element>();
    // what comes into view behind the focus (a fold was opened, something was fetched for it) is reached on the way back
    const seen = new WeakSet<Element>();
    const cameBehind = new WeakSet<Element>();
    const lookAround = (from: Element) => {
      for (const one of document.querySelectorAll(CAN_STAND)) {
        if (seen.has(one) || !isSeen(one)) continue;
        seen.add(one);
        const isBehind = (from.compareDocumentPosition(one) & Node.DOCUMENT_POSITION_PRECEDING) !== 0;
        if (isBehind && from !== document.body) cameBehind.add(one);
      }
    };
    lookAround(document.body);
    Object.assign(globalThis, {
      stopHere: () => {
        const element = document.activeElement;
        if (!element || element === document.body) return null;
        lookAround(element);
        // what is fetched for a fold that was opened may push on what has the focus; the next key brings it back
        element.scrollIntoView({ block: 'nearest' });
        stood.add(element);
        // one of several radio buttons stands for all
        if (element instanceof HTMLInputElement && element.type === 'radio' && element.name)
          document.getElementsByName(element.name).forEach((one) => stood.add(one));
        const { outlineStyle, outlineWidth, outlineColor } = getComputedStyle(element);
        return {
          is: nameOf(element),
          place: [...document.querySelectorAll('*')].indexOf(element),
          outlinePx: outlineStyle === 'none' ? 0 : parseFloat(outlineWidth),
          contrast: contrast(read(outlineColor).slice(0, 3), behind(element.parentElement)),
          hiddenBy: hiddenBy(element),
          foldedSummary: element.localName === 'summary' && !(element.parentElement as HTMLDetailsElement).open,
        };
      },
      missed: () =>
        [...document.querySelectorAll(CAN_STAND)]
          .filter((element) => isSeen(element) && seen.has(element) && !stood.has(element) && !cameBehind.has(element))
          .filter((element) => element.getAttribute('tabindex') !== '-1')
          .map(nameOf),
    });
  });
}

const stopHere = (page: Page): Promise<Stop | null> =>
  page.evaluate(() => (globalThis as unknown as { stopHere: () => Stop | null }).stopHere());

/** Where the next Tab starts from: a page that was scrolled by script would start where it was scrolled to. */
export const startFrom = (page: Page, end: 'top' | 'foot'): Promise<void> =>
  page.evaluate((where) => {
    const mark = document.createElement('span');
    mark.tabIndex = -1;
    if (where === 'top') document.body.prepend(mark);
    else document.body.append(mark);
    mark.focus();
    mark.remove();
  }, end);

export interface Walk {
  readonly stops: readonly Stop[];
  /** what can have the focus and never had it */
  readonly missed: readonly string[];
  /** whether the focus left the page at its end, and was not held in it */
  readonly out: boolean;
}

/** From the top of the page to its end by Tab, or from its end to the top, unfolding with Enter what is folded. */
export async function walk(page: Page, key: 'Tab' | 'Shift+Tab' = 'Tab', most = 400): Promise<Walk> {
  await prepare(page);
  await startFrom(page, key === 'Tab' ? 'top' : 'foot');
  const stops: Stop[] = [];
  let out = false;
  while (stops.length < most && !out) {
    await page.keyboard.press(key);
    const stop = await stopHere(page);
    const again = stop && stops.length > 0 && stop.place === stops[0]!.place;
    if (stop && !again) {
      stops.push(stop);
      if (stop.foldedSummary) await page.keyboard.press('Enter');
    } else out = true;
  }
  const missed = await page.evaluate(() => (globalThis as unknown as { missed: () => string[] }).missed());
  return { stops, missed, out };
}

/** Presses Tab until the focus stands on what the selector names. */
export async function reach(page: Page, selector: string, most = 300): Promise<void> {
  for (let steps = 0; steps < most; steps += 1) {
    if (await page.evaluate((asked) => document.activeElement?.matches(asked) ?? false, selector)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`${most} steps of Tab did not reach ${selector}`);
}

/** What has the focus: its id, or its words. */
export const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const element = document.activeElement;
    return element === null || element === document.body ? 'body' : element.id || (element.textContent ?? '').trim();
  });

/** Writes down from now on what is read out. */
export async function listen(page: Page): Promise<() => Promise<readonly string[]>> {
  await page.evaluate(() => {
    const heard: string[] = [];
    Object.assign(globalThis, { heard });
    const LIVE = '[aria-live="polite"], [aria-live="assertive"], [role="status"], [role="alert"]';
    const last = new Map<Element, string>();
    for (const region of document.querySelectorAll(LIVE)) last.set(region, region.textContent ?? '');
    new MutationObserver(() => {
      for (const region of document.querySelectorAll(LIVE)) {
        const words = region.textContent ?? '';
        if (words === (last.get(region) ?? '')) continue;
        last.set(region, words);
        if (words.trim() !== '') heard.push(words);
      }
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
  return () => page.evaluate(() => (globalThis as unknown as { heard: string[] }).heard);
}
