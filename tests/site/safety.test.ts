/**
 * What keeps a page from harm, and what it must not do: the policy in every page, no markup or style that it forbids, and
 * nothing that leaves for anywhere while a calculator is used. What comes in from files is in trials.test.ts, links in fuzz.test.ts.
 */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { trialWith } from '../core/support/trial';
import { ORIGIN, SITE, wakeIslands, withPage } from './support/browser';
import { DIST, PAGES, PAGES_WITH_ISLANDS, REDIRECTS } from './support/dist';

const OPEN = trialWith(() => undefined, { id: 't-open', name: 'An open trial' });
const ALL = [...PAGES, ...REDIRECTS];
const failing = (bad: (html: string) => unknown) => ALL.filter(({ html }) => bad(html)).map(({ address }) => address);
/** The page without what is only text in it. */
const markup = (html: string) => html.replace(/<(script|style|textarea)\b[^>]*>[\s\S]*?<\/\1>/g, '<$1></$1>');

describe('every page as it was built', () => {
  const policyOf = (html: string) =>
    /<meta http-equiv="content-security-policy" content="([^"]*)"/.exec(html)?.[1]?.replaceAll('&#39;', "'") ?? '';

  test('carries the policy, before anything that it is to hold', () => {
    expect(failing((html) => policyOf(html) === '')).toEqual([]);
    expect(
      failing((html) => {
        const policy = html.indexOf('http-equiv="content-security-policy"');
        return [/<script(?! type="application\/ld\+json")/, /<style/, /<link[^>]*rel="stylesheet"/].some((one) => {
          const at = html.search(one);
          return at >= 0 && at < policy;
        });
      }),
    ).toEqual([]);
  });
  test('whose scripts and styles are named one by one, and where text cannot become markup', () => {
    const lax = ["'unsafe-inline'", "'unsafe-eval'", "'unsafe-hashes'", "'strict-dynamic'", ' * ', ' http:', ' https:'];
    for (const word of lax)
      expect(
        failing((html) => `${policyOf(html)} `.includes(word)),
        word,
      ).toEqual([]);
    const asked = [
      ...["default-src 'self'", "object-src 'none'", "base-uri 'self'", "form-action 'self'"],
      ...["require-trusted-types-for 'script'", 'trusted-types open-time default', "script-src 'self' 'sha256-"],
    ];
    for (const word of asked)
      expect(
        failing((html) => !policyOf(html).includes(word)),
        word,
      ).toEqual([]);
  });
  test('allows the scripts and styles that stand in it, and none besides', () => {
    const inline = /<(script|style)\b(?![^>]*(?:\ssrc=|ld\+json))[^>]*>([\s\S]*?)<\/\1>/g;
    const hashesOf = (html: string) =>
      [...html.matchAll(inline)].map(([, , text = '']) => createHash('sha256').update(text).digest('base64'));
    const allowed = (html: string) => [...policyOf(html).matchAll(/'sha256-([^']+)'/g)].map(([, hash]) => hash);
    const wrong = PAGES.filter(({ html }) => {
      const [own, named] = [new Set(hashesOf(html)), new Set(allowed(html))];
      return own.size !== named.size || [...own].some((hash) => !named.has(hash));
    });
    expect(wrong.map(({ address }) => address)).toEqual([]);
  });
  test('has no style, no handler and no script in an attribute', () => {
    expect(failing((html) => /<[a-z][^>]*\sstyle=/i.test(markup(html)))).toEqual([]);
    expect(failing((html) => /<[a-z][^>]*\son[a-z]+=/i.test(markup(html)))).toEqual([]);
    expect(failing((html) => /(?:href|src|action)="\s*(?:javascript|data:text|vbscript):/i.test(html))).toEqual([]);
  });
  test('opens other sites without telling them where from', () => {
    const loose = /<a\b(?=[^>]*target="_blank")(?![^>]*rel="[^"]*noopener)/;
    expect(failing((html) => loose.test(html))).toEqual([]);
  });
});

test('no built script runs text as code; markup is written in the two places of the renderer that nothing here reaches', () => {
  const worker = readFileSync(path.join(DIST, 'sw.js'), 'utf8');
  const scripts = [...worker.matchAll(/\{url:"(_astro\/[^"]+\.js)"/g)].map(([, name = '']) => name);
  expect(scripts.length).toBeGreaterThan(20);
  const found = scripts.flatMap((name) => {
    const code = readFileSync(path.join(DIST, name), 'utf8');
    const sinks = code.match(
      /\binnerHTML\s*=[^=]|\bouterHTML\s*=[^=]|insertAdjacentHTML|document\.write|\beval\(|new Function|DOMParser|srcdoc|setTimeout\("/g,
    );
    return (sinks ?? []).map((sink) => `${name.replace(/\..*/, '')}: ${sink.slice(0, 10)}`);
  });
  // Preact writes what dangerouslySetInnerHTML is given (nothing in src gives any: tests/house), and its bridge to
  // Astro empties an island that was never rendered (client:only, which no page has).
  expect([...new Set(found)]).toEqual(['_astro/wake-island: innerHTML=']);
  expect(failing((html) => /<astro-island[^>]*client="only"/.test(html))).toEqual([]);
});

test('a browser that knows Trusted Types refuses text as markup, and any worker but ours', async () => {
  await withPage({}, async (page) => {
    await page.goto(`${SITE}search/?q=gampi`);
    await page.waitForSelector('.found a');
    const refused = await page.evaluate(() => {
      const tried: [string, () => unknown][] = [
        ['markup', () => (document.createElement('p').innerHTML = '<b>x</b>')],
        ['a worker', () => new Worker('elsewhere.js')],
        [
          'another policy',
          () =>
            (
              window as unknown as { trustedTypes: { createPolicy(n: string, r: object): void } }
            ).trustedTypes.createPolicy('other', {}),
        ],
      ];
      return tried.flatMap(([name, run]) => {
        try {
          run();
          return [];
        } catch {
          return [name];
        }
      });
    });
    expect(refused).toEqual(['markup', 'a worker', 'another policy']);
  });
});

/** Whatever a page asks for, from whichever of its parts. */
function listen(page: Page): string[] {
  const told: string[] = [];
  page.on('request', (request) => {
    const { protocol, origin } = new URL(request.url());
    const own = protocol === 'data:' || protocol === 'blob:' || origin === ORIGIN;
    if (!own || request.method() !== 'GET') told.push(`${request.method()} ${request.url()}`);
  });
  page.on('websocket', (socket) => told.push(socket.url()));
  page.on('pageerror', (error) => told.push(String(error)));
  page.on('console', (message) => message.type() === 'error' && told.push(message.text()));
  return told;
}

/** Fills what can be filled, opens what can be opened, presses what can be pressed: the first so many of each. */
const useAll = (page: Page): Promise<number> =>
  page.evaluate(async () => {
    const MOST = 40;
    const turn = () => new Promise((done) => setTimeout(done));
    const all = <T extends Element>(selector: string) =>
      [...document.querySelectorAll<T>(`main ${selector}`)].filter((one) => one.checkVisibility()).slice(0, MOST);
    let done = 0;
    const after = async (act: () => unknown) => {
      act();
      done += 1;
      await turn();
      await turn();
    };
    for (const folded of all<HTMLElement>('details:not([open]) > summary')) await after(() => folded.click());
    for (const select of all<HTMLSelectElement>('select'))
      await after(() => {
        select.selectedIndex = select.options.length - 1;
        select.dispatchEvent(new Event('change', { bubbles: true }));
      });
    for (const field of all<HTMLInputElement>('input:not([readonly], [type="file"]), textarea:not([readonly])'))
      await after(() => {
        if (field.type === 'checkbox' || field.type === 'radio') return field.click();
        field.value = field.type === 'date' ? '2026-03-01' : '<b>23</b>';
        field.dispatchEvent(new Event('input', { bubbles: true }));
        field.dispatchEvent(new Event('change', { bubbles: true }));
      });
    // A form that is sent would leave the page, and so would drawing a plan; both have tests of their own.
    for (const button of all<HTMLButtonElement>('button[type="button"]:not([disabled])'))
      await after(() => !/^(?:Draw|Start afresh|Take)/.test(button.textContent ?? '') && button.click());
    return done;
  });

describe.concurrent('nothing leaves for anywhere while a page is used', () => {
  const used = PAGES_WITH_ISLANDS.filter(({ file }) => !/^(?:lessons|embed)\//.test(file)).concat(
    PAGES.filter(({ file }) => ['search/index.html', 'shelf/papers/index.html', 'embed/index.html'].includes(file)),
  );
  test.for(used.map(({ address }) => address))('%s', async (address, { expect }) => {
    await withPage({}, async (page) => {
      await page.addInitScript(() => (window.print = () => undefined));
      const told = listen(page);
      await page.clock.install();
      await page.goto(`${SITE}404.html`);
      await page.evaluate(([key, text]) => localStorage.setItem(key, text), [
        `open-time:trial:${OPEN.id}`,
        JSON.stringify(OPEN),
      ] as const);
      await page.goto(`${ORIGIN}${address}?trial=${OPEN.id}`);
      await wakeIslands(page);
      // what this device holds is shown a moment after waking
      await page.locator('main :is(button, input, select, summary):visible').first().waitFor();
      expect(await useAll(page)).toBeGreaterThan(0);
      // what waits for a pause: the address, the code of the link, what is said to those who listen
      await page.clock.runFor(3000);
      expect(told).toEqual([]);
      expect(await page.context().cookies()).toEqual([]);
    });
  });
});

const TRIAL_PAGES = ['trials/', 'trials/plan/', 'trials/run/', 'trials/read/', 'trials/cards/', 'choose/'];

test('whatever lies in the storage, the pages open, and delete none of it', async () => {
  await withPage({}, async (page) => {
    const told = listen(page);
    await page.goto(`${SITE}404.html`);
    const put = await page.evaluate(() => {
      const broken = ['', 'null', '{', '[]', '{"version":1}', '"x"', '1e999', '<img src=x onerror=alert(1)>', '\u0000'];
      const names = ['trial:', 'undo:', 'plan', 'who', 'blind', 'evidence'];
      for (const [i, text] of broken.entries())
        for (const name of names) localStorage.setItem(`open-time:${name}${name.endsWith(':') ? `t-${i}` : ''}`, text);
      localStorage.setItem('open-time:plan', broken[Math.floor(broken.length / 2)]!);
      return localStorage.length;
    });
    for (const name of TRIAL_PAGES) {
      await page.goto(`${SITE}${name}?trial=t-4`);
      await wakeIslands(page);
      expect(await page.locator('main').innerText(), name).not.toMatch(/\bNaN\b|undefined|Infinity|\[object/);
    }
    expect(await page.evaluate(() => localStorage.length)).toBe(put);
    expect(told).toEqual([]);
  });
});

test('a clock that is put back, or far ahead, shows no impossible time', async () => {
  await withPage({}, async (page) => {
    const told = listen(page);
    await page.clock.install({ time: new Date('2026-03-01T10:00:00Z') });
    await page.goto(`${SITE}trials/plan/`);
    await wakeIslands(page);
    await page.getByRole('button', { name: 'Draw the order and begin' }).click();
    await page.waitForURL(/trials\/run/);
    await page.clock.runFor(500);
    await page.getByRole('button', { name: /start the clock/ }).click();
    for (const time of [
      '2026-03-01T09:00:00Z',
      '1970-01-01T00:00:00Z',
      '2026-03-01T10:00:05Z',
      '2038-01-20T00:00:00Z',
    ]) {
      await page.clock.setSystemTime(new Date(time));
      await page.clock.runFor(1000);
      const text = await page.locator('.run-clock').innerText();
      expect(text, time).not.toMatch(/NaN|Invalid|-\d/);
      expect(text, time).toMatch(/\d/);
    }
    expect(told).toEqual([]);
  });
});

describe.concurrent('away and back', () => {
  const linked = PAGES_WITH_ISLANDS.filter(
    ({ file, html }) => !file.startsWith('embed/') && html.includes('Link to exactly'),
  );
  test.for(linked.map(({ address }) => address))('%s holds what its link says', async (address, { expect }) => {
    await withPage({}, async (page) => {
      const told = listen(page);
      await page.goto(ORIGIN + address);
      await wakeIslands(page);
      const link = page.getByRole('textbox', { name: /^Link to exactly/ });
      const fields = page.locator('.bench-inputs input[inputmode="decimal"]:visible');
      // a form that opens empty has an example, whose link may take a moment
      const example = page.getByRole('button', { name: 'Show an example' });
      if ((await example.count()) > 0) {
        const opened = await link.inputValue();
        await example.click();
        await expect.poll(() => link.inputValue()).not.toBe(opened);
      }
      await fields.first().waitFor();
      // a field with several readings holds no one number to be changed
      const values = await fields.evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value));
      const field = fields.nth(values.findIndex((value) => !/\s/.test(value.trim())));
      const before = await link.inputValue();
      await field.fill(String((Number((await field.inputValue()).replace(',', '.')) || 50) + 1));
      await expect.poll(() => link.inputValue()).not.toBe(before);
      const after = await link.inputValue();
      await page.waitForFunction((asked) => location.href === asked, after);
      await page.goto(SITE);
      await page.goBack();
      await wakeIslands(page);
      await expect.poll(() => link.inputValue()).toBe(after);
      await page.goForward();
      expect(page.url()).toBe(SITE);
      expect(told).toEqual([]);
    });
  });
});
