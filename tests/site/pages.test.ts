/**
 * Every kind of built page (see LOOKED_AT), opened once in a real browser and looked at in both colour schemes, on a phone and
 * on a desk: accessible, quiet, self-contained, and within its width.
 */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { bringAxe, violations } from './support/axe';
import { complaintsOf, look, ORIGIN, SITE, wakeIslands, withPage } from './support/browser';
import { EVERY_PAGE, LOOKED_AT, type BuiltPage } from './support/dist';
import { tooSmall } from './support/targets';

const PHONE = { width: 390, height: 844 };
const DESK = { width: 1280, height: 900 };
/** the width that 1280 becomes at 400 % zoom: the narrowest at which a page must still reflow */
const NARROWEST = { width: 320, height: 640 };

interface Findings {
  readonly accessibility: readonly string[];
  readonly complaints: readonly string[];
  readonly strangers: readonly string[];
  readonly tooWide: readonly string[];
  readonly tooSmall: readonly string[];
  readonly nonsense: readonly string[];
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

/** Once for each page of the browser that others are then opened in. */
async function prepare(page: Page): Promise<void> {
  // a violation of the content security policy is an event of its own beside the console line
  await page.addInitScript(() => {
    addEventListener('securitypolicyviolation', (event) =>
      console.error(`policy: ${event.violatedDirective} ${event.blockedURI} ${event.sample}`),
    );
  });
  await bringAxe(page);
}

function lookAtAll(built: BuiltPage): Promise<Findings> {
  const visit = async (page: Page): Promise<Findings> => {
    const complaints = complaintsOf(page);
    const strangers: string[] = [];
    page.on('request', (request) => {
      const { protocol, origin } = new URL(request.url());
      if (protocol !== 'data:' && protocol !== 'blob:' && origin !== ORIGIN) strangers.push(request.url());
    });
    await page.goto(ORIGIN + built.address);
    await wakeIslands(page);

    const accessibility: string[] = [];
    const tooWide: string[] = [];
    const lookAt = async (size: typeof PHONE, colorScheme: 'dark' | 'light') => {
      await page.setViewportSize(size);
      await page.emulateMedia({ colorScheme });
      await settled(page);
      tooWide.push(...(await overflowing(page)));
    };
    // all rules once, on a phone in the light, and colours once in the dark; the rest when there is time for every page
    await lookAt(DESK, 'dark');
    accessibility.push(...(await violations(page, 'colours', 'desk, dark')));
    if (EVERY_PAGE) {
      await lookAt(DESK, 'light');
      accessibility.push(...(await violations(page, 'all', 'desk, light')));
      await lookAt(PHONE, 'dark');
      accessibility.push(...(await violations(page, 'colours', 'phone, dark')));
      await lookAt(NARROWEST, 'dark');
      accessibility.push(...(await violations(page, 'colours', 'narrowest, dark')));
    }
    // the narrowest page is laid out as the phone's is
    await lookAt(NARROWEST, 'light');
    if (EVERY_PAGE) accessibility.push(...(await violations(page, 'all', 'narrowest, light')));
    await lookAt(PHONE, 'light');
    accessibility.push(...(await violations(page, 'all', 'phone, light')));
    const shown = await nonsense(page);
    return { accessibility, complaints, strangers, tooWide, nonsense: shown, tooSmall: await tooSmall(page) };
  };
  return look({ viewport: DESK, colorScheme: 'light' }, visit, { as: 'rules and policy', prepare });
}

// The first test that asks for a page opens it; the others read what was found.
const looked = new Map<BuiltPage, Promise<Findings>>();
function findings(built: BuiltPage): Promise<Findings> {
  const found = looked.get(built) ?? lookAtAll(built);
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

describe('has every control, and every link that stands alone, where a thumb finds it', () => {
  test.for(each)('%s', async ([, page]) => {
    expect([...new Set((await findings(page)).tooSmall)]).toEqual([]);
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
