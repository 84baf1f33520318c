/**
 * `npm run test:looks`: photographs every page of the built site on a phone and on a desk, and compares the pictures
 * with those accepted last; it needs a build, and takes some minutes. Exit code 1 if a page differs, is new or is gone.
 * `npm run test:looks -- paper mix` looks only at pages whose address holds one of the words.
 * `npm run test:looks -- accept` takes what was photographed last for right (`accept paper`: of those pages only).
 * The pairs stand side by side in .cache/reports/looks.html.
 *
 * The pictures are not kept in the repository: those of 230 pages are some 80 MB, and letters are drawn a little
 * differently on every machine. So the order is: build and accept what you trust, change something, build, look again.
 */
import { copyFileSync, existsSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import pixelmatch from 'pixelmatch';
import { chromium, type Browser, type Frame, type Page } from 'playwright-core';
import sharp from 'sharp';
import { PAGES, PAGES_WITH_ISLANDS, type BuiltPage } from '../site/support/dist';
import { startBrowser } from '../tools/browser';
import { serve } from '../tools/serve.mjs';

const SIZES = [
  { name: 'phone', width: 390, height: 844 },
  { name: 'desk', width: 1280, height: 900 },
] as const;

/**
 * Tolerance. A pixel differs when its colour does by more than 2 % of the way from black to white, as the eye weighs it; a page
 * does when more than one pixel in 100 000 differs: a comma more, and not the edge of a letter. Two runs on one build differ in none.
 */
const COLOUR_TOLERANCE = 0.02;
const SHARE_TOLERANCE = 1e-5;

/** Pages show their own address, so it must not change from run to run. */
const PORT = 4398;
/** For what shows the date of today. */
const NOW = new Date('2026-03-02T10:00:00Z');

/** Of a picture that the browser takes at once, in pixels: it refuses those of more than some 16 000. */
const TALLEST = 8000;

const LOOKS = '.cache/looks';
const SEEN = path.join(LOOKS, 'seen');
const ACCEPTED = path.join(LOOKS, 'accepted');
const CHANGED = path.join(LOOKS, 'changed');
const REPORT = '.cache/reports/looks.html';

interface Finding {
  /** `phone/lessons-open-time.png` */
  readonly file: string;
  readonly kind: 'differs' | 'new' | 'gone';
  /** of the pixels, 0 to 1 */
  readonly share: number;
}

const [first, ...others] = process.argv.slice(2);
const accepts = first === 'accept';
const words = (accepts ? others : process.argv.slice(2)).map((word) => word.replaceAll('/', '-'));
const isAsked = (name: string) => words.length === 0 || words.some((word) => name.includes(word));

/** `lessons-open-time` for lessons/open-time/index.html, `home` for the first page. */
const nameOf = ({ file }: BuiltPage) => file.replace(/\/?index\.html$|\.html$/, '').replaceAll('/', '-') || 'home';

const pictures = (folder: string): readonly string[] =>
  SIZES.filter(({ name }) => existsSync(path.join(folder, name))).flatMap(({ name }) =>
    readdirSync(path.join(folder, name))
      .filter((file) => isAsked(file.replace(/\.png$/, '')))
      .map((file) => `${name}/${file}`),
  );

const makeFolders = (folder: string) =>
  SIZES.forEach(({ name }) => mkdirSync(path.join(folder, name), { recursive: true }));

/** One picture at a time: a browser that is asked for two may refuse one. */
let camera: Promise<unknown> = Promise.resolve();
function inTurn<T>(take: () => Promise<T>): Promise<T> {
  const taken = camera.then(take);
  camera = taken.catch(() => undefined);
  return taken;
}

/** The page from its top to its end, photographed in parts that the browser can draw at once. */
async function wholePage(tab: Page, width: number): Promise<Buffer> {
  const height = await tab.evaluate(() => document.documentElement.scrollHeight);
  const tops = Array.from({ length: Math.ceil(height / TALLEST) }, (_, i) => i * TALLEST);
  const parts: { input: Buffer; top: number; left: number }[] = [];
  for (const y of tops) {
    const clip = { x: 0, y, width, height: Math.min(TALLEST, height - y) };
    parts.push({ input: await tab.screenshot({ fullPage: true, clip, animations: 'disabled' }), top: y, left: 0 });
  }
  if (parts.length === 1) return parts[0]!.input;
  return sharp({ create: { width, height, channels: 3, background: 'white' } })
    .composite(parts)
    .png()
    .toBuffer();
}

/** Takes it again until two in a row are alike: a frame finds its height, a figure its place. */
async function settledPicture(tab: Page, width: number): Promise<Buffer> {
  let last = await inTurn(() => wholePage(tab, width));
  for (let tries = 0; tries < 10; tries += 1) {
    await tab.waitForTimeout(200);
    const next = await inTurn(() => wholePage(tab, width));
    if (next.equals(last)) return next;
    last = next;
  }
  throw new Error(`${tab.url()} does not come to rest.`);
}

/** The page and what it shows in frames, which else would be fetched only when somebody comes near them. */
async function shownFrames(tab: Page): Promise<readonly Frame[]> {
  await tab.evaluate(() => document.querySelectorAll('iframe').forEach((frame) => (frame.loading = 'eager')));
  const frames = tab.frames();
  await Promise.all(frames.map((frame) => frame.waitForLoadState('load')));
  return frames;
}

/** Islands that wake by themselves have woken, and the code of each link, which comes after a pause, is drawn. */
async function awake(frame: Frame): Promise<void> {
  await frame.waitForFunction(() => {
    const asleep = document.querySelector('astro-island[ssr][client="load"], astro-island[ssr][opts*="now"]');
    const coded = [...document.querySelectorAll('astro-island[opts*="now"] :is(.send-it, .handout-links)')];
    return (
      !asleep && coded.every((one) => one.querySelector('.qr')) && [...document.images].every((one) => one.complete)
    );
  });
}

/** The page at each size, once everything is here and at rest. */
async function photograph(browser: Browser, origin: string, page: BuiltPage): Promise<void> {
  // a context of its own, so that nothing is remembered from another page
  const context = await browser.newContext({
    colorScheme: 'light',
    reducedMotion: 'reduce',
    serviceWorkers: 'block',
    locale: 'en-GB',
    timezoneId: 'UTC',
  });
  // an island may fetch more once it has woken; a page without one has all when it has loaded
  const withIslands = PAGES_WITH_ISLANDS.includes(page) || page.html.includes('<iframe');
  const waitUntil = withIslands ? 'networkidle' : 'load';
  try {
    const tab = await context.newPage();
    await tab.clock.setFixedTime(NOW);
    for (const { name, width, height } of SIZES) {
      await tab.setViewportSize({ width, height });
      await tab.goto(origin + page.address, { waitUntil });
      for (const frame of await shownFrames(tab)) await awake(frame);
      await tab.evaluate(async () => {
        await document.fonts.ready;
        for (let i = 0; i < 3; i += 1) await new Promise((done) => requestAnimationFrame(done));
      });
      writeFileSync(
        path.join(SEEN, name, `${nameOf(page)}.png`),
        await (withIslands ? settledPicture(tab, width) : inTurn(() => wholePage(tab, width))),
      );
    }
  } finally {
    await context.close();
  }
}

/** Photographs them two at a time: more would only wait for each other on two cores. */
async function photographAll(pages: readonly BuiltPage[]): Promise<void> {
  pictures(SEEN).forEach((file) => rmSync(path.join(SEEN, file)));
  makeFolders(SEEN);
  const server = await serve({ port: PORT });
  const started = await startBrowser();
  try {
    const browser = await chromium.connect(started.wsEndpoint());
    const left = pages.values();
    const lane = async () => {
      for (const page of left) await photograph(browser, server.origin, page);
    };
    await Promise.all([lane(), lane()]);
  } finally {
    await started.close();
    await server.close();
  }
}

/** The pixels of a picture on a sheet of that size; what it does not fill is of a colour that no page has. */
async function pixels(file: string, width: number, height: number): Promise<Uint8Array> {
  const picture = sharp(file).ensureAlpha();
  const own = await picture.metadata();
  const more = { right: width - own.width, bottom: height - own.height };
  return picture
    .extend({ ...more, background: { r: 255, g: 0, b: 255, alpha: 1 } })
    .raw()
    .toBuffer();
}

/** The share of pixels that differ; a picture of them is kept if they are too many. */
async function compare(file: string): Promise<number> {
  const before = path.join(ACCEPTED, file);
  const after = path.join(SEEN, file);
  if (readFileSync(before).equals(readFileSync(after))) return 0;
  const sizes = await Promise.all([before, after].map((one) => sharp(one).metadata()));
  const width = Math.max(...sizes.map((one) => one.width));
  const height = Math.max(...sizes.map((one) => one.height));
  const marked = new Uint8Array(width * height * 4);
  const differing = pixelmatch(
    await pixels(before, width, height),
    await pixels(after, width, height),
    marked,
    width,
    height,
    {
      threshold: COLOUR_TOLERANCE,
      includeAA: true,
    },
  );
  const share = differing / (width * height);
  if (share > SHARE_TOLERANCE)
    await sharp(marked, { raw: { width, height, channels: 4 } })
      .png()
      .toFile(path.join(CHANGED, file));
  return share;
}

async function findAll(): Promise<readonly Finding[]> {
  rmSync(CHANGED, { recursive: true, force: true });
  makeFolders(CHANGED);
  const seen = pictures(SEEN);
  const accepted = pictures(ACCEPTED);
  const findings: Finding[] = [];
  for (const file of seen) {
    if (!accepted.includes(file)) findings.push({ file, kind: 'new', share: 1 });
    else {
      const share = await compare(file);
      if (share > SHARE_TOLERANCE) findings.push({ file, kind: 'differs', share });
    }
  }
  const gone = accepted.filter((file) => !seen.includes(file));
  return [...findings, ...gone.map((file) => ({ file, kind: 'gone' as const, share: 1 }))].sort(
    (a, b) => b.share - a.share,
  );
}

const inWords = ({ kind, share }: Finding) =>
  kind === 'differs' ? `${(share * 100).toPrecision(2)} % of the pixels differ` : kind;

/** @param findings only those with a picture to show are shown side by side */
function report(findings: readonly Finding[], count: number): string {
  const shown = (folder: string, file: string, title: string) =>
    existsSync(path.join(folder, file))
      ? `<figure><figcaption>${title}</figcaption><img src="../../${folder.split(path.sep).join('/')}/${file}" alt="" loading="lazy"></figure>`
      : '';
  const rows = findings.map(
    (one) =>
      `<h2>${one.file}: ${inWords(one)}</h2><div>${shown(ACCEPTED, one.file, 'accepted')}${shown(SEEN, one.file, 'now')}${shown(CHANGED, one.file, 'what differs')}</div>`,
  );
  return `<!doctype html><html lang="en"><meta charset="utf-8"><title>Looks</title>
<style>body { font: 1rem sans-serif } div { display: flex; gap: 1rem } figure { flex: 1; margin: 0 } img { max-width: 100%; border: 1px solid }</style>
<h1>${findings.length} of ${count} pictures differ from those accepted</h1>
${rows.join('\n')}
</html>\n`;
}

/** What was photographed last becomes what is right. */
function accept(): void {
  const seen = pictures(SEEN);
  if (seen.length === 0) throw new Error('Nothing has been photographed yet. Run: npm run test:looks');
  pictures(ACCEPTED).forEach((file) => rmSync(path.join(ACCEPTED, file)));
  makeFolders(ACCEPTED);
  for (const file of seen) copyFileSync(path.join(SEEN, file), path.join(ACCEPTED, file));
  console.log(`${seen.length} pictures accepted.`);
}

async function look(): Promise<void> {
  const pages = PAGES.filter((page) => isAsked(nameOf(page)));
  if (pages.length === 0) throw new Error(`No page has ${words.join(' or ')} in its address.`);
  await photographAll(pages);
  const findings = await findAll();
  mkdirSync(path.dirname(REPORT), { recursive: true });
  writeFileSync(REPORT, report(findings, pages.length * SIZES.length));
  for (const one of findings) console.log(`${one.file}: ${inWords(one)}`);
  console.log(`${pages.length} pages at ${SIZES.length} sizes, ${findings.length} pictures differ. See ${REPORT}`);
  if (findings.some(({ kind }) => kind === 'new')) console.log('To take them for right: npm run test:looks -- accept');
  process.exitCode = findings.length > 0 ? 1 : 0;
}

if (accepts) accept();
else await look();
