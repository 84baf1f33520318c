/**
 * After one visit the calculators work without a network, what is opened after that does too, and all of the site once it
 * is asked for; a change of the site breaks no page that is open.
 */
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { brotliCompressSync } from 'node:zlib';
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
/** Calculators with a page of their own at the top are kept unasked. */
const OF_FIRST_VISIT = /^(?:\w+\/)?$/;
const ASKED = '.bench-inputs input[inputmode="decimal"]:visible';

/** Bytes that a first visit may send besides the page itself, calculators and font: what there is, and a little. */
const MOST_SENT = 405_000;

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

/** Those of these addresses that cannot be had. */
const missingOf = (page: Page, addresses: readonly string[]) =>
  page.evaluate(async (all) => {
    const got = await Promise.all(
      all.map((one) =>
        fetch(one).then(
          ({ ok }) => ok,
          () => false,
        ),
      ),
    );
    return all.filter((_, i) => !got[i]);
  }, addresses);
const EVERY_PAGE = PAGES.filter(({ file }) => file !== '404.html').map(({ address }) => address);
const titleOf = (file: string) =>
  documentOf(PAGES.find((page) => page.file === file)!).querySelector('h1')?.textContent;
const heading = (page: Page) => page.locator('h1').innerText();
/** What the worker keeps unasked, and all that it may keep: each with its size. */
const keptBy = (worker: string) => {
  const named = (text: string) => [...new Set([...text.matchAll(/\{url:"([^"]+)"/g)].map(([, name = '']) => name))];
  const rest = new Set(named(/\brest:\[([^\]]*)\]/.exec(worker)?.[1] ?? ''));
  expect(rest.size).toBeGreaterThan(300);
  const all = named(worker).map((name) => ({ name, bytes: readFileSync(path.join(DIST, name)).length }));
  return { whole: all, core: all.filter(({ name }) => !rest.has(name)) };
};
const bytesOf = (files: readonly { readonly bytes: number }[]) => files.reduce((sum, { bytes }) => sum + bytes, 0);

const isKept = (page: Page, name: string) =>
  page.evaluate(async (file) => {
    const keys = await Promise.all((await caches.keys()).map(async (one) => (await caches.open(one)).keys()));
    return keys.flat().some(({ url }) => url.includes(file));
  }, name);

const sizeOnDevice = (page: Page) =>
  page.evaluate(async () => {
    let bytes = 0;
    for (const name of await caches.keys()) {
      const cache = await caches.open(name);
      for (const request of await cache.keys()) bytes += (await (await cache.match(request))!.blob()).size;
    }
    return bytes;
  });

test('the server stopped after one visit: every calculator computes, and what is not kept says so', async () => {
  await withVisit(async ({ page, site, stop }) => {
    const complaints: string[] = [];
    page.on('pageerror', (error) => complaints.push(String(error)));
    const all = bytesOf(keptBy(inDist('sw.js')).whole);
    const kept = await sizeOnDevice(page);
    console.log(`kept after one visit: ${(kept / 1e6).toFixed(2)} MB of ${(all / 1e6).toFixed(1)} MB`);
    expect(kept).toBeLessThan(all / 6);
    await stop();
    await expect(fetch(site)).rejects.toThrow();
    const own = CALCULATORS.filter((name) => OF_FIRST_VISIT.test(name));
    expect(own.length).toBeGreaterThan(8);
    for (const name of own) {
      await page.goto(site + name);
      await wakeIslands(page);
      if ((await page.locator(ASKED).count()) > 0) await computesAnew(page);
    }
    await page.goto(`${site}lessons/open-time/`);
    expect(await heading(page)).toBe(titleOf('without-a-network/index.html'));
    expect(page.url()).toBe(`${site}lessons/open-time/`);
    await page.getByText('The page you asked for is not kept on this device').waitFor();
    await page.goto(`${site}no-such-page/`);
    expect(await heading(page)).toBe(titleOf('404.html'));
    // a link typed without its last stroke, and one with what its sender saw
    await page.goto(`${site}choose?v=1&paper=gampi`);
    expect(page.url()).toContain(`${site}choose/?v=1`);
    expect(complaints).toEqual([]);
  });
});

test('the lesson of a first visit, and one that is opened later, are kept with their calculators', async () => {
  await withVisit(async ({ page, site, stop }) => {
    await page.goto(`${site}lessons/choosing/`);
    for (const name of ['lessons/open-time/index.html', 'lessons/choosing/index.html', '_astro/ChooseBrief.'])
      await expect.poll(() => isKept(page, name)).toBe(true);
    await stop();
    for (const name of ['open-time', 'choosing']) {
      await page.goto(`${site}lessons/${name}/`);
      await wakeIslands(page);
      expect(await heading(page)).toBe(titleOf(`lessons/${name}/index.html`));
      await computesAnew(page);
    }
    await page.goto(`${site}without-a-network/`);
    await page.getByRole('link', { name: 'lessons / choosing' }).waitFor();
  }, 'lessons/open-time/');
});

test('asked to keep the whole site, the device has every page, every calculator computes, the search finds', async () => {
  await withVisit(async ({ page, site, stop }) => {
    const complaints: string[] = [];
    page.on('pageerror', (error) => complaints.push(String(error)));
    await page.goto(`${site}without-a-network/`);
    await page.getByRole('button', { name: 'Keep the whole site' }).click();
    await page.getByText('This device has kept the whole site.').waitFor();
    await stop();
    await expect(fetch(site)).rejects.toThrow();
    expect(await missingOf(page, EVERY_PAGE)).toEqual([]);
    await page.goto(`${site}lessons/open-time/`);
    await wakeIslands(page);
    expect(await heading(page)).toBe(titleOf('lessons/open-time/index.html'));

    // those of a first visit are kept by the same worker as before, and were used without a network above: one stands for them
    const more = CALCULATORS.filter((name) => name === 'choose/' || !OF_FIRST_VISIT.test(name));
    expect(more.length).toBeGreaterThan(3);
    for (const name of more) {
      await page.goto(site + name);
      await wakeIslands(page);
      if ((await page.locator(ASKED).count()) > 0) await computesAnew(page);
    }

    await page.goto(`${site}search/?q=gampi`);
    await page.waitForSelector('.found a');
    const found = await page.$$eval('.found a', (links) => links.map((link) => (link as HTMLAnchorElement).pathname));
    expect(found).toContain(`${BASE}shelf/papers/gampi/`);

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
    const lesson = 'lessons/grain/index.html';
    const grain = path.join(newer, lesson);
    rewrite(grain, readFileSync(grain, 'utf8').replace(/<h1[^>]*>[^<]*/, '<h1>Another grain'));
    inWorker(newer, lesson, 'changed');
    const late = /_astro\/files\.[\w-]+\.js/.exec(inDist('sw.js'))?.[0];
    if (!late) throw new Error('no script is fetched late any more: name another');
    inWorker(newer, late);
    rmSync(path.join(newer, late));

    await withVisit(async ({ page, site, stop, start }) => {
      const complaints: string[] = [];
      page.on('pageerror', (error) => complaints.push(String(error)));
      await page.goto(`${site}lessons/grain/`);
      await expect.poll(() => isKept(page, lesson)).toBe(true);
      await page.goto(`${site}trials/plan/`);
      await wakeIslands(page);
      const undo = await computesAnew(page);
      // kept with its page, since it may be asked for at any time
      for (const name of [late, 'trials/run/index.html']) await expect.poll(() => isKept(page, name)).toBe(true);
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
      expect(await heading(page)).not.toBe(titleOf('without-a-network/index.html'));
      expect(complaints).toEqual([]);
      // the lesson that was opened before was brought up to date; one that was not is not there
      await beside.goto(`${site}lessons/grain/`);
      expect(await heading(beside)).toBe('Another grain');
      await beside.goto(`${site}lessons/sizing/`);
      expect(await heading(beside)).toBe(titleOf('without-a-network/index.html'));
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

/** As a host sends it that squeezes: what was squeezed at build, or the same here. */
const sentOf = (files: readonly { readonly name: string; readonly bytes: number }[]) =>
  files.reduce((sum, { name, bytes }) => {
    const file = path.join(DIST, name);
    if (existsSync(`${file}.br`)) return sum + statSync(`${file}.br`).size;
    return sum + (/\.(?:html|js|svg)$/.test(name) ? brotliCompressSync(readFileSync(file)).length : bytes);
  }, 0);

test('the pages about what is kept name the amounts: at first, and of the whole', () => {
  const { core, whole } = keptBy(inDist('sw.js'));
  for (const file of ['privacy/index.html', 'without-a-network/index.html'])
    for (const [of, files] of Object.entries({ core, whole })) {
      const told = documentOf(PAGES.find((page) => page.file === file)!).querySelector(`[data-amount="${of}"]`);
      const [kept, sent] = [...(told?.textContent ?? '').matchAll(/([\d.]+) MB/g)].map(([, figure]) => Number(figure));
      // in round figures; and some hosts squeeze better than others
      const [keptMB, sentMB] = [bytesOf(files) / 1e6, sentOf(files) / 1e6];
      expect(Math.abs(kept! / keptMB - 1), `${file}, ${of}: it keeps ${keptMB} MB`).toBeLessThan(0.1);
      expect(Math.abs(sent! / sentMB - 1), `${file}, ${of}: ${sentMB} MB are sent`).toBeLessThan(0.25);
    }
  expect(bytesOf(core)).toBeLessThan(bytesOf(whole) / 6);
});

test('what a first visit keeps is some 400 kB over the network', () => {
  const { core } = keptBy(inDist('sw.js'));
  const sent = sentOf(core);
  console.log(`sent for a first visit: ${(sent / 1e3).toFixed(0)} kB in ${core.length} files`);
  expect(sent).toBeLessThan(MOST_SENT);
});
