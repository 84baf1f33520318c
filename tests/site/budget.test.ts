/** What a page makes a phone fetch and run stays small, and comes from this site alone. */
import { existsSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { ORIGIN, wakeIslands, withPage } from './support/browser';
import { charactersOf, facesIn } from './support/fonts';
import { BASE, DIST, PAGES, PAGES_WITH_ISLANDS, fileAt, type BuiltPage } from './support/dist';

/**
 * What is counted, in bytes as sent with brotli:
 * - to open: what the page asks for unasked. Its inline scripts, the scripts it names (of a calculator that waits
 *   those that all of them stand on), and for each island that wakes at once its script with all that it imports;
 * - once used: that, and the same for islands that wait for a first sign of use (`client:use`).
 * - at rest: that, and what follows the answer: the steps from it, how a class is glued, the code of its link.
 * What any other `import()` names is in none: it is fetched for one thing that somebody asks for.
 * Each limit is a third of a percent or more above what there is: the letters that the build puts into the names of files
 * alone make one file 40 bytes lighter or heavier, and a page some 0.1 kB.
 */
const LIMITS = {
  // each has in it the clocks' buttons, the way back without loss, and where a bench of one's own comes in: 0.4 to 1.7 kB
  // a lesson with the chooser has its whole model (tasks, methods and an ensemble of constants), and its questions;
  // 0.1 kB of it spare half of the work of an answer, whose first places are worked out alone; and what is said of weaves
  // and of plastic is 0.2 kB
  lesson: { toOpen: 3_100, onceUsed: 42_900, atRest: 42_900 },
  // the lesson on testing lets three swatches re-weigh the model
  // and says how far the constants may lie off: a table of 2 kB
  // of twice as many sets, without which it learns little more than half as much: 1 kB
  // and what does not hang on the sheet is worked out once for a version, so that the turns of weighing are shorter: 0.4 kB
  testing: { toOpen: 3_100, onceUsed: 49_900, atRest: 49_900 },
  // the job that was said in one room is known in the others: some 4 kB in each
  calculator: { toOpen: 21_300, onceUsed: 50_800, atRest: 54_300 },
  // these keep time and show what is kept here, so they do not wait to be used
  // what a link leaves out is never shown as measured: 0.3 kB, and 0.1 kB where it is a bench
  // and a bench that was damaged where it is kept is not offered: 0.1 kB
  measure: { toOpen: 50_400, onceUsed: 50_400, atRest: 53_900 },
  bench: { toOpen: 50_700, onceUsed: 50_700, atRest: 54_100 },
  // the answer first; what stands below it once the answer is another, or when somebody reaches for it
  // what can hurt stands apart, so that lessons are sent none of it, and so does the clock: 0.3 kB at rest
  // the answer names what does about as well: 0.1 kB
  // and what would change the answer is looked for by first places alone: 0.2 kB
  // and a link says what its sender saw with swatches that are not here: 0.3 kB
  chooser: { toOpen: 21_300, onceUsed: 64_900, atRest: 71_700 },
  // what to try next is worked out with the model, which is fetched when it is asked
  // and its form folds to a line on a phone, so that a link opens at the answer: 0.4 kB
  // and it ends in its next steps, whose figures are fetched when one of them is meant: 0.2 kB
  // and it says what of its link it could not read, where it would else open another plan without a word: 0.1 kB
  planner: { toOpen: 13_400, onceUsed: 40_900, atRest: 40_900 },
  // a trial under way is read from the device, with how its swatches were spread: 0.4 kB
  // and the way to hand it in
  trials: { toOpen: 31_900, onceUsed: 31_900, atRest: 31_900 },
  // the workshop sheet is the mix, the coverage, the project and the cutting plan in one; then the chooser follows
  // and the student's sheet says what can hurt: 0.1 kB
  // and its small files come while the line is idle, since six at a time they kept its first answer waiting
  // and it says what to buy in round figures, and knows what a kit has cut already: 0.3 kB
  workshop: { toOpen: 44_600, onceUsed: 89_200, atRest: 113_900 },
};
/** A page as a first visitor gets it: itself, styles, font and the scripts to open it. The heads of the answers are 0.4 kB more. */
const VISIT_LIMIT = 34_800;
const CHOOSER_VISIT_LIMIT = 50_800;
const CLASS_VISIT_LIMIT = 75_800;
const CSS_LIMIT = 7_600;

const brotli = (content: string) => brotliCompressSync(content).length;
const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0);
const kindOf = ({ address }: BuiltPage): keyof typeof LIMITS =>
  address.includes('/lessons/testing')
    ? 'testing'
    : address.includes('/lessons/')
      ? 'lesson'
      : address.endsWith('/trials/plan/')
        ? 'planner'
        : /\/trials\/(?:cards|run|read|published|)\/?$/.test(address)
          ? 'trials'
          : address.endsWith('/paper/')
            ? 'measure'
            : address.endsWith('/bench/')
              ? 'bench'
              : address.endsWith('/workshop/')
                ? 'workshop'
                : address.endsWith('/choose/')
                  ? 'chooser'
                  : 'calculator';

function fileOf(address: string): string {
  const file = fileAt(address);
  if (file === undefined) throw new Error(`${address} is not in dist/`);
  return file;
}
const contentOf = (address: string): Buffer => readFileSync(fileOf(address));

/** Static imports in a built module; `import()` is left out, for what it names is not loaded unasked. */
function importsOf(address: string): string[] {
  const code = contentOf(address).toString('utf8');
  return [...code.matchAll(/\b(?:import|from)\s*["'](\.{1,2}\/[^"']+)["']/g)].map(([, target = '']) =>
    path.posix.join(path.posix.dirname(address), target),
  );
}

/** Scripts with all that they import. */
function withImports(addresses: readonly string[]): Set<string> {
  const found = new Set(addresses);
  for (const address of found) for (const next of importsOf(address)) found.add(next);
  return found;
}

/** What follows an answer, where the script names it: the code of its link, where one goes from it, how a class is glued. */
const LATER = /\b(?:code|choose-to-all|class-laying)\.[\w-]+\.js\b/g;
function laterThan(scripts: ReadonlySet<string>): Set<string> {
  const named = [...scripts].flatMap((address) =>
    [...contentOf(address).toString('utf8').matchAll(LATER)].map(([name]) =>
      path.posix.join(path.posix.dirname(address), name),
    ),
  );
  return withImports(named);
}

/** Tags of one name in a page as it was built, and what stands in them; read as text, for there are many pages. */
const tags = ({ html }: BuiltPage, name: string) => html.match(new RegExp(`<${name}\\b[^>]*>`, 'g')) ?? [];
const elements = ({ html }: BuiltPage, name: string) =>
  [...html.matchAll(new RegExp(`<${name}\\b([^>]*)>([\\s\\S]*?)</${name}>`, 'g'))].map(([, tag = '', text = '']) => ({
    tag,
    text,
  }));
const valueOf = (tag: string, name: string) => new RegExp(`\\b${name}="([^"]*)"`).exec(tag)?.[1];
const linksTo = (page: BuiltPage, rel: string) =>
  tags(page, 'link').flatMap((tag) => (valueOf(tag, 'rel') === rel ? (valueOf(tag, 'href') ?? []) : []));

/** Does the island wait for a first sign of use before it asks for its script? */
const waits = (island: string) => valueOf(island, 'client') === 'use' && !/&quot;value&quot;:&quot;now/.test(island);

/** Addresses of the scripts that a page loads: to open, or once each of its islands has been used. */
function scriptsOf(page: BuiltPage, used: boolean): Set<string> {
  const islands = tags(page, 'astro-island').filter((island) => used || !waits(island));
  const roots = [
    ...elements(page, 'script').map(({ tag }) => valueOf(tag, 'src')),
    ...linksTo(page, 'modulepreload'),
    ...islands.flatMap((island) =>
      ['component-url', 'renderer-url', 'before-hydration-url'].map((name) => valueOf(island, name)),
    ),
  ];
  return withImports(roots.filter((address): address is string => Boolean(address)));
}

/** Fonts that the styles of a page name for characters that stand in its text. */
function fontsOf(page: BuiltPage): string[] {
  const sheets = linksTo(page, 'stylesheet').map((address) => ({
    at: path.posix.dirname(address),
    text: contentOf(address).toString('utf8'),
  }));
  const styles = elements(page, 'style').map(({ text }) => ({ at: BASE, text }));
  const characters = charactersOf(page);
  const named = [...sheets, ...styles].flatMap((sheet) =>
    facesIn(sheet.text)
      .filter(({ holds }) => characters.some(holds))
      .map(({ url }) => path.posix.resolve(sheet.at, url)),
  );
  return [...new Set(named)];
}

/** What was squeezed at build is what is sent; what is too small for that is sent as it is. */
const sentOf = (file: string): number => statSync(existsSync(`${file}.br`) ? `${file}.br` : file).size;

const weights = new Map<string, number>();
function weightOf(address: string): number {
  const weight = weights.get(address) ?? sentOf(fileOf(address));
  weights.set(address, weight);
  return weight;
}

/** The same styles and scripts stand in hundreds of pages. */
const textWeights = new Map<string, number>();
function textWeightOf(text: string): number {
  const weight = textWeights.get(text) ?? brotli(text);
  textWeights.set(text, weight);
  return weight;
}

function weigh(page: BuiltPage) {
  // what a search engine reads of a lesson is data: nothing runs it
  const inline = elements(page, 'script').filter(({ tag }) => !/\bsrc=|ld\+json/.test(tag));
  const inlineWeight = sum(inline.map(({ text }) => textWeightOf(text)));
  const scripts = (used: boolean) => inlineWeight + sum([...scriptsOf(page, used)].map(weightOf));
  const sheets = linksTo(page, 'stylesheet').map(weightOf);
  const styles = elements(page, 'style').map(({ text }) => textWeightOf(text));
  // a font is squeezed already, and is sent as it is
  const fonts = fontsOf(page).map((address) => contentOf(address).length);
  const size = { html: sentOf(path.join(DIST, page.file)), css: sum([...sheets, ...styles]), font: sum(fonts) };
  const toOpen = scripts(false);
  // inline scripts and styles are part of the page, which is weighed as a whole
  const visit = size.html + sum(sheets) + size.font + toOpen - inlineWeight;
  const onceUsed = scripts(true);
  const used = scriptsOf(page, true);
  const later = [...laterThan(used)].filter((address) => !used.has(address));
  const atRest = onceUsed + sum(later.map(weightOf));
  return { ...size, toOpen, onceUsed, atRest, visit };
}

const WEIGHED = PAGES.map((page) => ({ page, ...weigh(page) }));
const WITH_ISLANDS = WEIGHED.filter(({ page }) => PAGES_WITH_ISLANDS.includes(page));
const IN_LESSONS = WEIGHED.filter(({ page }) => page.address.includes('/lessons/'));
const kB = (bytes: number) => (bytes / 1000).toFixed(1).padStart(6);

test('the site has pages with calculators', () => {
  expect(WITH_ISLANDS.length).toBeGreaterThan(0);
  const rows = WITH_ISLANDS.map(({ page, html, css, font, toOpen, onceUsed, atRest, visit }) =>
    [
      kB(html),
      kB(css),
      kB(font),
      `${kB(toOpen)} `,
      `${kB(onceUsed)}  `,
      `${kB(atRest)} `,
      `${kB(visit)}  `,
      page.address,
    ].join(' '),
  );
  console.log(
    ['kB as sent with brotli', '  HTML    CSS   font to open once used at rest  visit  page', ...rows].join('\n'),
  );
});

describe('script, to open and once used, keeps to its limits', () => {
  test.for(WITH_ISLANDS.map((row) => [row.page.address, row] as const))(
    '%s',
    ([, { page, toOpen, onceUsed, atRest }]) => {
      const limits = LIMITS[kindOf(page)];
      expect(toOpen).toBeLessThanOrEqual(limits.toOpen);
      expect(onceUsed).toBeLessThanOrEqual(limits.onceUsed);
      expect(atRest).toBeLessThanOrEqual(limits.atRest);
    },
  );
});

test(`a first visit of a lesson is at most ${VISIT_LIMIT / 1e3} kB, its font included`, () => {
  expect(IN_LESSONS.length).toBeGreaterThan(0);
  const heavy = IN_LESSONS.filter(({ visit }) => visit > VISIT_LIMIT);
  expect(heavy.map(({ page, visit }) => `${page.address}: ${visit} bytes`)).toEqual([]);
});

test(`a first visit of the chooser is at most ${CHOOSER_VISIT_LIMIT / 1e3} kB and one of the class ${CLASS_VISIT_LIMIT / 1e3} kB, the font included`, () => {
  const limits = { chooser: CHOOSER_VISIT_LIMIT, workshop: CLASS_VISIT_LIMIT };
  for (const [kind, limit] of Object.entries(limits)) {
    const asked = WEIGHED.filter(({ page }) => kindOf(page) === kind);
    expect(asked.length, kind).toBeGreaterThan(0);
    const heavy = asked.filter(({ visit }) => visit > limit);
    expect(heavy.map(({ page, visit }) => `${page.address}: ${visit} bytes`)).toEqual([]);
  }
});

test(`styles of every page are at most ${CSS_LIMIT / 1e3} kB`, () => {
  const heavy = WEIGHED.filter(({ css }) => css > CSS_LIMIT);
  expect(heavy.map(({ page, css }) => `${page.address}: ${css} bytes`)).toEqual([]);
});

/** What a browser asks for on the way through a page. */
async function asked(page: BuiltPage, use: boolean) {
  return withPage({}, async (tab) => {
    const all = { scripts: new Set<string>(), others: new Set<string>(), fonts: new Set<string>() };
    tab.on('request', (request) => {
      const { origin, pathname, protocol } = new URL(request.url());
      if (request.resourceType() === 'script') all.scripts.add(pathname);
      if (request.resourceType() === 'font') all.fonts.add(pathname);
      if (origin !== ORIGIN && protocol !== 'data:' && protocol !== 'blob:') all.others.add(request.url());
    });
    await tab.goto(ORIGIN + page.address, { waitUntil: 'networkidle' });
    await tab.evaluate(() => scrollTo(0, document.body.scrollHeight));
    if (use) await wakeIslands(tab);
    return all;
  });
}

describe('the count names all that a browser asks for, and nobody else is asked for anything', () => {
  const heaviest = WITH_ISLANDS.filter(({ page }) => kindOf(page) === 'lesson').toSorted(
    (a, b) => b.onceUsed - a.onceUsed,
  )[0]!.page;
  const calculators = PAGES_WITH_ISLANDS.filter(({ file }) => /^\w+\/index\.html$/.test(file));
  const cases = [
    { page: heaviest, use: false, name: `${heaviest.address}, not used` },
    ...[heaviest, ...calculators].map((page) => ({ page, use: true, name: page.address })),
  ];
  test.for(cases)('$name', async ({ page, use }) => {
    const { scripts, others, fonts } = await asked(page, use);
    const counted = scriptsOf(page, use);
    const known = [...counted, ...laterThan(counted)];
    expect([...scripts].filter((address) => !known.includes(address))).toEqual([]);
    expect([...others]).toEqual([]);
    expect([...fonts].filter((address) => !fontsOf(page).includes(address))).toEqual([]);
    if (use) expect(scripts.size).toBeGreaterThan(0);
  });
});
