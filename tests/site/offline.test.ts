/** After one visit the site works without a network, and a change of the site breaks no page that is open. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { complaintsOf, SITE, wakeIslands, withPage } from './support/browser';
import { BASE, DIST, PAGES, PAGES_WITH_ISLANDS, documentOf } from './support/dist';
import { withVisit } from './support/offline';

const inDist = (name: string) => readFileSync(path.join(DIST, name), 'utf8');
/** Every calculator on its own page; in a lesson and in a frame the same ones stand again, and one of each is tried. */
const CALCULATORS = PAGES_WITH_ISLANDS.filter(({ html }) => html.includes('bench-answer'))
  .map(({ address }) => address.slice(BASE.length))
  .filter((name, _, all) => {
    const kind = /^(?:lessons|embed)\//.exec(name)?.[0];
    return kind === undefined || name === all.find((one) => one.startsWith(kind));
  });
const ASKED = '.bench-inputs input[inputmode="decimal"]:visible';

/** What is typed for another answer, where the first field of a page does not do, or 123 is none of its numbers. */
const TYPED: Readonly<Record<string, readonly [field: string, value: string]>> = {
  'choose/': ['#ch-grammage', '300'],
  // not what was typed on the page before it, which it knows
  'embed/choose/': ['#ch-grammage', '30'],
  'mix/': ['#mix-need', '345'],
  'paper/': ['#know-grams', '27.5'],
  'flat/': ['#warp-width', '312'],
  'workshop/': ['#class-people', '17'],
  'trials/plan/': ['#plan-replicates', '11'],
};

/** Types another number, and waits until the answer is another. Gives back the way to undo it. */
async function computesAnew(page: Page): Promise<() => Promise<void>> {
  const [asked, value] = TYPED[new URL(page.url()).pathname.slice(BASE.length)] ?? [ASKED, '123'];
  const field = page.locator(asked).first();
  // the answer to this form: a page may hold others
  const bench = page.locator('.bench').filter({ has: page.locator(asked) });
  const answer = () => bench.first().locator('.bench-answer').innerText();
  const before = await answer();
  const was = await field.inputValue();
  await field.fill(value);
  await expect.poll(answer, { message: `${page.url()} answers the same, whatever is typed` }).not.toBe(before);
  expect(await page.locator('main').innerText()).not.toMatch(/NaN|undefined|Infinity/);
  return () => field.fill(was);
}

test('the server stopped after one visit: every page is there, every calculator computes, the search finds', async () => {
  await withVisit(async ({ page, site, stop }) => {
    const complaints: string[] = [];
    page.on('pageerror', (error) => complaints.push(String(error)));
    await stop();
    await expect(fetch(site)).rejects.toThrow();

    // the page of the first visit itself, and every other
    const missing = await page.evaluate(
      async (addresses) => {
        const got = await Promise.all(
          addresses.map((one) =>
            fetch(one).then(
              ({ ok }) => ok,
              () => false,
            ),
          ),
        );
        return addresses.filter((_, i) => !got[i]);
      },
      PAGES.filter(({ file }) => file !== '404.html').map(({ address }) => address),
    );
    expect(missing).toEqual([]);
    await page.goto(`${site}lessons/open-time/`);
    await wakeIslands(page);
    expect(await page.locator('h1').innerText()).toBe(
      documentOf(PAGES.find(({ file }) => file === 'lessons/open-time/index.html')!).querySelector('h1')?.textContent,
    );

    expect(CALCULATORS.length).toBeGreaterThan(3);
    for (const name of CALCULATORS) {
      await page.goto(site + name);
      await wakeIslands(page);
      if ((await page.locator(ASKED).count()) > 0) await computesAnew(page);
    }

    await page.goto(`${site}search/?q=gampi`);
    await page.waitForSelector('.found a');
    const found = await page.$$eval('.found a', (links) => links.map((link) => (link as HTMLAnchorElement).pathname));
    expect(found).toContain(`${BASE}shelf/papers/gampi/`);

    await page.goto(`${site}no-such-page/`);
    expect(await page.locator('h1').innerText()).toBe(
      documentOf(PAGES.find(({ file }) => file === '404.html')!).querySelector('h1')?.textContent,
    );
    // a link typed without its last stroke, and one with what its sender saw
    await page.goto(`${site}choose?v=1&paper=gampi`);
    expect(page.url()).toContain(`${site}choose/?v=1`);
    expect(complaints).toEqual([]);
  });
});

/** Writes a file of a build anew; what was squeezed of the old one goes. */
function rewrite(file: string, text: string): void {
  writeFileSync(file, text);
  for (const ending of ['.br', '.gz']) rmSync(file + ending, { force: true });
}

/** Takes a file out of what the worker of a build keeps, or says that it holds something else. */
const inWorker = (root: string, name: string, revision?: string) => {
  const file = path.join(root, 'sw.js');
  const worker = readFileSync(file, 'utf8');
  const entry = new RegExp(`\\{url:"${name.replaceAll('.', '\\.')}",revision:[^}]*\\},?`);
  expect(worker).toMatch(entry);
  const changed = worker.replace(entry, revision === undefined ? '' : `{url:"${name}",revision:"${revision}"},`);
  rewrite(
    file,
    changed.replaceAll(`"${name}",`, (all) => (revision === undefined ? '' : all)),
  );
};

test('the site changes: the open pages go on, a notice says so, and pressing it shows the new', async () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'open-time-'));
  const newer = path.join(folder, 'dist');
  try {
    cpSync(DIST, newer, { recursive: true });
    // a page says something else, and a script that is fetched late is no more
    const home = path.join(newer, 'index.html');
    rewrite(home, readFileSync(home, 'utf8').replace(/<h1[^>]*>[^<]*/, '<h1>Changed since'));
    inWorker(newer, 'index.html', 'changed');
    const late = /_astro\/files\.[\w-]+\.js/.exec(inDist('sw.js'))?.[0];
    if (!late) throw new Error('no script is fetched late any more: name another');
    inWorker(newer, late);
    rmSync(path.join(newer, late));

    await withVisit(async ({ page, site, stop, start }) => {
      const complaints: string[] = [];
      page.on('pageerror', (error) => complaints.push(String(error)));
      await page.goto(`${site}trials/plan/`);
      await wakeIslands(page);
      const undo = await computesAnew(page);
      const typed = () => page.locator(ASKED).evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value));
      const typedBefore = await typed();
      const beside = await page.context().newPage();
      await beside.goto(site);
      const before = await beside.locator('h1').innerText();

      await stop();
      await start(newer);
      await beside.reload();
      await beside.getByRole('button', { name: 'Show it' }).waitFor();
      // what is open stays as it was, also when it is opened again, until the reader asks
      await beside.reload();
      expect(await beside.locator('h1').innerText()).toBe(before);
      await beside.getByRole('button', { name: 'Show it' }).click();
      await beside.waitForFunction(() => document.querySelector('h1')?.textContent === 'Changed since');
      expect(await beside.getByRole('button', { name: 'Show it' }).count()).toBe(0);

      // the other page was not read again, what was typed is there, and the script that is gone still comes
      expect(await typed()).toEqual(typedBefore);
      await undo();
      await stop();
      await page.getByRole('button', { name: /^Draw/ }).click();
      await page.waitForURL(/trials\/run/);
      expect(complaints).toEqual([]);
      await beside.goto(`${site}lessons/`);
      expect(await beside.locator('h1').count()).toBe(1);
    });
  } finally {
    rmSync(folder, { recursive: true });
  }
});

describe('where the browser keeps nothing', () => {
  const WAYS = {
    'there is no such thing': () => Object.defineProperty(navigator, 'serviceWorker', { get: () => undefined }),
    'asking is an offence': () =>
      Object.defineProperty(navigator, 'serviceWorker', {
        get: () => {
          throw new DOMException('no', 'SecurityError');
        },
      }),
    'it is refused': () =>
      Object.defineProperty(navigator.serviceWorker, 'register', { value: () => Promise.reject(new Error('no')) }),
  };
  test.for(Object.entries(WAYS))('%s: the calculator works, and nothing complains', async ([, way]) => {
    await withPage({ serviceWorkers: 'allow' }, async (page) => {
      const complaints = complaintsOf(page);
      await page.addInitScript(way);
      await page.goto(`${SITE}choose/`);
      await wakeIslands(page);
      await computesAnew(page);
      expect(complaints).toEqual([]);
    });
  });
});

describe('it can be put among the programs of a phone', () => {
  const manifest = JSON.parse(inDist('manifest.webmanifest')) as {
    name: string;
    start_url: string;
    scope: string;
    icons: { src: string; sizes: string; purpose: string }[];
  };
  test('under its own name and path', () => {
    expect(manifest).toMatchObject({ start_url: BASE, scope: BASE, display: 'standalone' });
    expect(documentOf(PAGES.find(({ file }) => file === 'index.html')!).title).toContain(manifest.name);
  });
  test('with icons of the sizes it names', async () => {
    const sizes = manifest.icons.map(({ sizes, purpose }) => `${sizes} ${purpose}`);
    // what Chromium asks of an installable page: 192 and 512 px (its own documentation, from memory)
    expect(sizes).toEqual(['192x192 any', '512x512 any', '512x512 maskable']);
    for (const { src, sizes } of manifest.icons) {
      const { width, height } = await sharp(path.join(DIST, src.slice(BASE.length))).metadata();
      expect(`${width}x${height}`).toBe(sizes);
    }
  });
});

test('the page about what is kept names the amount that the worker keeps', () => {
  const kept = new Set([...inDist('sw.js').matchAll(/\{url:"([^"]+)"/g)].map(([, name = '']) => name));
  const bytes = [...kept].reduce((sum, name) => sum + readFileSync(path.join(DIST, name)).length, 0);
  const told = documentOf(PAGES.find(({ file }) => file === 'privacy/index.html')!).querySelector('[data-kept]');
  const [, megabytes, files] = /^([\d.]+) MB in (\d+) files$/.exec(told?.textContent ?? '') ?? [];
  expect(Number(files)).toBe(kept.size);
  expect(Math.abs(Number(megabytes) - bytes / 1e6)).toBeLessThan(0.06);
});
