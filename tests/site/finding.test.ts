/** Finding things: the search, the shelf's order, the feed, the map of the site, what its pages say to machines; and frames. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { Window } from 'happy-dom';
import { describe, expect, test } from 'vitest';
import { SITE, withPage } from './support/browser';
import { BASE, DIST, LESSONS, PAGES, documentOf, headOf, fileAt } from './support/dist';

const read = (name: string) => readFileSync(path.join(DIST, name), 'utf8');
const xml = (name: string) => new new Window().DOMParser().parseFromString(read(name), 'application/xml');
const asksNotToBeFound = (html: string) => html.includes('<meta name="robots" content="noindex"');

describe('the search', () => {
  test('fetches nothing before a word is typed, then finds the page of a paper, and breaks no policy', async () => {
    await withPage({}, async (page) => {
      const fetched: string[] = [];
      const refused: string[] = [];
      page.on('request', (request) => fetched.push(new URL(request.url()).pathname));
      page.on('console', (message) => message.type() === 'error' && refused.push(message.text()));
      await page.goto(`${SITE}search/`);
      expect(fetched.filter((address) => address.includes('/pagefind/'))).toEqual([]);
      await page.fill('#q', 'gampi');
      await page.waitForFunction(() => /found for/.test(document.querySelector('[role="status"]')?.textContent ?? ''));
      await page.waitForSelector('.found a');
      const found = await page.$$eval('.found a', (links) => links.map((link) => (link as HTMLAnchorElement).pathname));
      expect(found).toContain(`${BASE}shelf/papers/gampi/`);
      await page.selectOption('#kind', 'Answers');
      await page.waitForFunction(() => {
        const links = [...document.querySelectorAll<HTMLAnchorElement>('.found a')];
        return links.length > 0 && links.every((link) => link.pathname.includes('/answers/'));
      });
      expect(refused).toEqual([]);
    });
  });

  test('is ready to be typed into for who comes by a link of the site, and finds first what says the word', async () => {
    await withPage({}, async (page) => {
      await page.goto(SITE);
      await page.click('.site-search');
      await page.waitForFunction(() => document.activeElement?.id === 'q');
      await page.keyboard.type('cmc');
      // between two keys a slow machine may have searched for the first of them
      await page.getByRole('status').getByText('found for “cmc”').waitFor();
      await page.waitForSelector('.found li');
      const [first] = await page.$$eval('.found li', (all) => all.map((one) => one.textContent ?? ''));
      expect(first).toMatch(/carboxymethylcellulose/i);
    });
  });

  test('keeps the cells of a table apart in what it shows of a page', async () => {
    await withPage({}, async (page) => {
      await page.goto(`${SITE}search/?q=${encodeURIComponent('square steps')}`);
      await page.waitForSelector('.found li');
      const [first] = await page.$$eval('.found li p', (all) => all.map((one) => one.textContent ?? ''));
      expect(first).toMatch(/steps of 0\.1 g · \d/);
    });
  });

  test('takes its question from the address, and says so when nothing is found', async () => {
    await withPage({}, async (page) => {
      await page.goto(`${SITE}search/?q=ozzyq`);
      await page.waitForFunction(() =>
        /Nothing found/.test(document.querySelector('[role="status"]')?.textContent ?? ''),
      );
      expect(await page.inputValue('#q')).toBe('ozzyq');
    });
  });
});

describe('the shelf', () => {
  test('shows the papers that say a word, and puts them in the order asked for', async () => {
    await withPage({}, async (page) => {
      await page.goto(`${SITE}shelf/papers/`);
      const names = () =>
        page.$$eval('#papers-table tbody:not([hidden]) .record-name', (all) =>
          all.map((one) => one.textContent?.trim()),
        );
      const all = await names();
      await page.fill('#papers-table-words', 'lokta');
      expect(await names()).toEqual(['Lokta, light', 'Lokta, heavy']);
      expect(await page.locator('.record-family:not([hidden]) h2').allInnerTexts()).toEqual([
        'Thin papers of long fibre',
        'Heavier papers of long fibre',
      ]);
      await page.fill('#papers-table-words', '');
      await page.selectOption('#papers-table-order', '0 down');
      const heaviestFirst = await names();
      expect(heaviestFirst).toHaveLength(all.length);
      const grammages = await page.$$eval('#papers-table tbody:not([hidden])', (records) =>
        records.map((record) => Number(record.querySelector('td')?.dataset['value'])),
      );
      expect(grammages).toEqual(grammages.toSorted((a, b) => b - a));
      expect(heaviestFirst).not.toEqual(all);
    });
  });

  test('is a plain table without script', async () => {
    await withPage({ javaScriptEnabled: false }, async (page) => {
      await page.goto(`${SITE}shelf/papers/`);
      expect(await page.locator('.record-tools').first().isVisible()).toBe(false);
      expect(await page.locator('#papers-lokta-light').isVisible()).toBe(true);
    });
  });
});

test('a framed calculator is as high as what is in it, and follows when that grows', async () => {
  await withPage({ viewport: { width: 600, height: 900 } }, async (page) => {
    await page.goto(`${SITE}embed/`);
    const sample = page.locator('.embed-sample');
    await sample.scrollIntoViewIfNeeded();
    const inner = await (await sample.elementHandle())!.contentFrame();
    await inner!.waitForSelector('.bench');
    const agree = () =>
      page.waitForFunction(() => {
        const frame = document.querySelector<HTMLIFrameElement>('.embed-sample')!;
        const body = frame.contentDocument?.body.getBoundingClientRect().height ?? 0;
        return body > 300 && Math.abs(Number(frame.height) - body) <= 1;
      });
    await agree();
    const before = Number(await sample.getAttribute('height'));
    await inner!.evaluate(() => {
      const more = document.createElement('p');
      more.textContent = 'more '.repeat(400);
      document.body.append(more);
    });
    await page.waitForFunction(
      (was) => Number(document.querySelector<HTMLIFrameElement>('.embed-sample')!.height) > was,
      before,
    );
    await agree();
  });
});

describe('for machines', () => {
  test('the map of the site names every page that asks to be found, once', () => {
    const named = [...xml('sitemap.xml').querySelectorAll('loc')].map((one) => new URL(one.textContent).pathname);
    const pages = PAGES.filter(({ html }) => !asksNotToBeFound(html)).map(({ address }) => address);
    expect(named.sort()).toEqual([...pages].sort());
    expect(read('robots.txt')).toMatch(/^Sitemap: https?:\/\/\S+\/sitemap\.xml$/m);
  });

  test('the feed has every lesson, with a date', () => {
    const entries = [...xml('feed.xml').querySelectorAll('entry')];
    const links = entries.map((entry) => new URL(entry.querySelector('link')?.getAttribute('href') ?? '').pathname);
    expect([...links].sort()).toEqual(LESSONS.map(({ address }) => address).sort());
    for (const entry of entries) {
      expect(entry.querySelector('title')?.textContent).not.toBe('');
      expect(entry.querySelector('updated')?.textContent).toMatch(
        /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:Z|[+-]\d\d:\d\d)$/,
      );
    }
  });

  test('every page has a title of its own, a description and a picture that exists', () => {
    const heads = PAGES.filter(({ html }) => !asksNotToBeFound(html)).map((page) => {
      const document = headOf(page);
      const meta = (name: string) =>
        document.querySelector(`meta[name="${name}"], meta[property="${name}"]`)?.getAttribute('content') ?? '';
      return {
        address: page.address,
        title: document.title,
        description: meta('description'),
        image: meta('og:image'),
      };
    });
    const titles = heads.map(({ title }) => title);
    expect(titles.filter((title, i) => titles.indexOf(title) !== i)).toEqual([]);
    expect(heads.filter(({ description }) => description.length < 40).map(({ address }) => address)).toEqual([]);
    const pictures = new Set(heads.map(({ image }) => new URL(image).pathname));
    expect([...pictures].filter((address) => fileAt(address) === undefined)).toEqual([]);
    // one for each lesson, one for each answer made ahead, and one for all else
    const answers = PAGES.filter(({ file }) => /^answers\/.+\/index\.html$/.test(file));
    expect(answers.length).toBeGreaterThan(100);
    expect(pictures.size).toBe(LESSONS.length + answers.length + 1);
  });

  test('every lesson describes itself as a learning resource', () => {
    for (const lesson of LESSONS) {
      const document = documentOf(lesson);
      const data = document.querySelector('script[type="application/ld+json"]')?.textContent ?? '';
      const facts = JSON.parse(data) as Record<string, unknown>;
      expect(facts).toMatchObject({
        '@context': 'https://schema.org',
        '@type': 'LearningResource',
        inLanguage: 'en-GB',
      });
      expect(new URL(String(facts['url'])).pathname).toBe(lesson.address);
      expect(facts['name']).toBe(document.querySelector('h1')?.textContent);
      expect(facts['timeRequired']).toMatch(/^PT\d+M$/);
    }
  });
});
