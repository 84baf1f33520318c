/**
 * Every kind of built page (see LOOKED_AT), opened once in a real browser and looked at in both colour schemes, on a phone and
 * on a desk: accessible, quiet, self-contained, and within its width.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { complaintsOf, ORIGIN, SITE, wakeIslands, withPage } from './support/browser';
import { EVERY_PAGE, LOOKED_AT, type BuiltPage } from './support/dist';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const RULES: RunOptions = {
  runOnly: { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] },
  rules: { 'target-size': { enabled: true } },
  resultTypes: ['violations'],
  preload: false,
};

const PHONE = { width: 390, height: 844 };
const DESK = { width: 1280, height: 900 };
/** the width that 1280 becomes at 400 % zoom: the narrowest at which a page must still reflow */
const NARROWEST = { width: 320, height: 640 };

interface Findings {
  readonly accessibility: readonly string[];
  readonly complaints: readonly string[];
  readonly strangers: readonly string[];
  readonly tooWide: readonly string[];
  readonly nonsense: readonly string[];
}

/** The rules that look at colours; the others find in the dark what they found in the light. */
const COLOUR_RULES: RunOptions = { ...RULES, runOnly: ['color-contrast', 'link-in-text-block'], rules: {} };

async function runAxe(page: Page, rules: RunOptions, where: string): Promise<string[]> {
  const { violations } = await page.evaluate(
    (options) => (globalThis as unknown as { axe: { run(o: RunOptions): Promise<AxeResults> } }).axe.run(options),
    rules,
  );
  return violations.flatMap(({ id, help, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${where}: ${id} (${help}) at ${target.join(' ')}\n${failureSummary}`),
  );
}

/** New colours and widths reach the screen over a few frames; looking sooner finds the old ones. */
function settled(page: Page): Promise<void> {
  return page.evaluate(async () => {
    const frame = () => new Promise((done) => requestAnimationFrame(done));
    let still = 0;
    for (let frames = 0; still < 2 && frames < 120; frames += 1) {
      await frame();
      still = document.getAnimations().some(({ playState }) => playState === 'running') ? 0 : still + 1;
    }
  });
}

/** What sticks out of the page sideways; boxes that scroll by themselves are allowed. */
function overflowing(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const width = document.documentElement.clientWidth;
    const widest = Math.max(document.documentElement.scrollWidth, document.body.scrollWidth);
    if (widest <= width) return [];
    // what is placed absolutely is held by the box it is placed in, not by every box around it
    const holderOf = (element: Element): Element | null =>
      element instanceof HTMLElement && getComputedStyle(element).position === 'absolute'
        ? element.offsetParent
        : element.parentElement;
    const held = (element: Element): boolean => {
      const holder = holderOf(element);
      if (holder === null || holder === document.body) return false;
      return getComputedStyle(holder).overflowX !== 'visible' || held(holder);
    };
    const guilty = [...document.body.querySelectorAll('*')]
      .filter((element) => element.getBoundingClientRect().right > width + 0.5 && !held(element))
      .slice(0, 4)
      .map((element) => `${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''}`);
    return [`${widest} px wide in a window of ${width}: ${guilty.join(', ')}`];
  });
}

/** Text, labels, drawings and field values in which a failed computation shows. */
function nonsense(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const bad = /\b(?:NaN|undefined|Infinity)\b|\[object \w+\]|∞/;
    const shown = [document.title];
    // one text at a time: run together, the end of one paragraph hides in the beginning of the next
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let text = texts.nextNode(); text !== null; text = texts.nextNode()) {
      if (!text.parentElement?.closest('script, style, template, code')) shown.push(text.nodeValue ?? '');
    }
    for (const element of document.body.querySelectorAll('*')) {
      if ('value' in element && typeof element.value === 'string') shown.push(element.value);
      if (element.localName.startsWith('astro-')) continue;
      shown.push(...[...element.attributes].map(({ value }) => value));
    }
    return shown.filter((text) => bad.test(text)).map((text) => text.slice(0, 200));
  });
}

function look(built: BuiltPage): Promise<Findings> {
  return withPage({ viewport: DESK, colorScheme: 'light' }, async (page) => {
    const complaints = complaintsOf(page);
    const strangers: string[] = [];
    page.on('request', (request) => {
      const { protocol, origin } = new URL(request.url());
      if (protocol !== 'data:' && protocol !== 'blob:' && origin !== ORIGIN) strangers.push(request.url());
    });
    // a violation of the content security policy is an event of its own beside the console line
    await page.addInitScript(() => {
      addEventListener('securitypolicyviolation', (event) =>
        console.error(`policy: ${event.violatedDirective} ${event.blockedURI} ${event.sample}`),
      );
    });

    await page.goto(ORIGIN + built.address);
    await wakeIslands(page);
    await page.evaluate(AXE);

    const accessibility: string[] = [];
    const tooWide: string[] = [];
    for (const [place, size] of Object.entries({ desk: DESK, phone: PHONE })) {
      await page.setViewportSize(size);
      await page.emulateMedia({ colorScheme: 'light' });
      await settled(page);
      // all rules once, on a phone in the light, and colours once in the dark; the rest when there is time for every page
      if (EVERY_PAGE || size === PHONE) accessibility.push(...(await runAxe(page, RULES, `${place}, light`)));
      await page.emulateMedia({ colorScheme: 'dark' });
      await settled(page);
      if (EVERY_PAGE || size === DESK) accessibility.push(...(await runAxe(page, COLOUR_RULES, `${place}, dark`)));
      tooWide.push(...(await overflowing(page)));
    }
    await page.setViewportSize(NARROWEST);
    await settled(page);
    // the narrowest page is laid out as the phone's is; it gets a look of its own when there is time for every page
    if (EVERY_PAGE) {
      accessibility.push(...(await runAxe(page, COLOUR_RULES, 'narrowest, dark')));
      await page.emulateMedia({ colorScheme: 'light' });
      await settled(page);
      accessibility.push(...(await runAxe(page, RULES, 'narrowest, light')));
    }
    tooWide.push(...(await overflowing(page)));
    return { accessibility, complaints, strangers, tooWide, nonsense: await nonsense(page) };
  });
}

// The first test that asks for a page opens it; the others read what was found.
const looked = new Map<BuiltPage, Promise<Findings>>();
function findings(built: BuiltPage): Promise<Findings> {
  const found = looked.get(built) ?? look(built);
  looked.set(built, found);
  return found;
}

const each = LOOKED_AT.map((page) => [page.address, page] as const);

describe.concurrent('has no accessibility violation, in light and dark', () => {
  test.for(each)('%s', async ([, page], { expect }) => {
    expect((await findings(page)).accessibility).toEqual([]);
  });
});

describe('raises no error in the console and breaks no content security policy', () => {
  test.for(each)('%s', async ([, page]) => {
    expect((await findings(page)).complaints).toEqual([]);
  });
});

describe('asks nothing of another site', () => {
  test.for(each)('%s', async ([, page]) => {
    expect((await findings(page)).strangers).toEqual([]);
  });
});

describe('fits its width down to 320 px', () => {
  test.for(each)('%s', async ([, page]) => {
    expect((await findings(page)).tooWide).toEqual([]);
  });
});

describe('shows no failed computation', () => {
  test.for(each)('%s', async ([, page]) => {
    expect((await findings(page)).nonsense).toEqual([]);
  });
});

test('an unknown address answers 404 with a page that leads back', async () => {
  await withPage({}, async (page) => {
    const response = await page.goto(`${SITE}no-such-page/`);
    expect(response?.status()).toBe(404);
    expect(await page.locator('h1').count()).toBe(1);
    expect(await page.locator('main a[href]').count()).toBeGreaterThan(0);
  });
});
