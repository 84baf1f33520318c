/** The built site as files: which pages there are, and where an address leads. */
import { existsSync, readFileSync, readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { Window } from 'happy-dom';
import { asBase } from '../../tools/serve.mjs';

/** `DIST` names another build than the usual one: the check of a sub-path has a folder of its own. */
export const DIST = path.resolve(process.env['DIST'] ?? 'dist');
export const BASE = asBase(process.env['BASE_PATH'] ?? '/');

export interface BuiltPage {
  /** from dist/, with forward slashes: `lessons/open-time/index.html` */
  readonly file: string;
  /** path part of its address: `/lessons/open-time/` */
  readonly address: string;
  readonly html: string;
}

const files: readonly BuiltPage[] = readdirSync(DIST, { recursive: true, encoding: 'utf8' })
  .map((file) => file.split(path.sep).join('/'))
  .filter((file) => file.endsWith('.html'))
  .sort()
  .map((file) => ({
    file,
    address: BASE + file.replace(/(^|\/)index\.html$/, '$1'),
    html: readFileSync(path.join(DIST, file), 'utf8'),
  }));

const sendsOn = ({ html }: BuiltPage) => /<meta[^>]+http-equiv="?refresh/i.test(html);

/** Every page a reader sees; addresses that only send the reader on are left out. */
export const PAGES = files.filter((page) => !sendsOn(page));

/** Families of pages made by one template from many records: every one is read as a file, a few are looked at. */
const FAMILIES = /^(answers|embed|shelf\/[a-z]+)\/[^/]+\/index\.html$/;
const LOOKED_AT_PER_FAMILY = 3;

/** `ALL_PAGES=1 npm run test:site -- pages` opens every page, which takes some minutes. */
export const EVERY_PAGE = process.env['ALL_PAGES'] === '1';

/** The pages to open in a browser: all, but of each family only the first, the last and some evenly between. */
export const LOOKED_AT = PAGES.filter((page) => {
  if (EVERY_PAGE) return true;
  const family = FAMILIES.exec(page.file)?.[1];
  if (family === undefined) return true;
  const kin = PAGES.filter(({ file }) => FAMILIES.exec(file)?.[1] === family);
  const step = Math.max(1, (kin.length - 1) / (LOOKED_AT_PER_FAMILY - 1));
  return Array.from({ length: LOOKED_AT_PER_FAMILY }, (_, i) => kin[Math.round(i * step)]).includes(page);
});

export const REDIRECTS = files.filter(sendsOn);
export const PAGES_WITH_ISLANDS = PAGES.filter(({ html }) => html.includes('<astro-island'));
export const LESSONS = PAGES.filter(({ file }) => /^lessons\/[^/]+\/index\.html$/.test(file));

/** The file that a static host sends for the path part of an address of this site, or undefined. */
export function fileAt(address: string): string | undefined {
  if (!address.startsWith(BASE)) return undefined;
  const asked = path.join(DIST, decodeURIComponent(address.slice(BASE.length)));
  const file = address.endsWith('/') ? path.join(asked, 'index.html') : asked;
  return existsSync(file) && statSync(file).isFile() ? file : undefined;
}

const parser = new new Window().DOMParser();

const read = (html: string) =>
  parser.parseFromString(html.replace(/(<style[^>]*>)[\s\S]*?(?=<\/style>)/g, '$1'), 'text/html');

/** A part of a page as a document: from where `begin` is found to the first `end` behind it. A whole page takes many times as long. */
export const partOf = ({ html }: BuiltPage, begin: RegExp, end: string) => {
  const at = html.search(begin);
  return read(at < 0 ? '' : html.slice(at, html.indexOf(end, at) + end.length));
};

/** The document of a page, read but not run, without its styles: reading those takes longer than all the rest. */
export const documentOf = ({ html }: BuiltPage) => read(html);

/** The same with nothing but its head, which takes a twentieth of the time. */
export const headOf = ({ html }: BuiltPage) => read(html.slice(0, html.indexOf('</head>')));

const NAMED: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'", nbsp: '\u00a0' };

/** Text of a page, with what stands for a character put back: by its number, or by one of the few names that our pages use. */
export const decoded = (text: string) =>
  text.replace(/&(?:#x([\da-f]+)|#(\d+)|(\w+));/gi, (all, hex?: string, decimal?: string, name?: string) =>
    hex || decimal ? String.fromCodePoint(parseInt(hex ?? decimal!, hex ? 16 : 10)) : (NAMED[name!] ?? all),
  );

export interface Tag {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
}

/** Every tag of a page with its attributes, read as text, which takes a thirtieth of the time: `html` holds pages to be valid. */
export function tagsOf({ html }: BuiltPage): readonly Tag[] {
  const markup = html
    .replace(/<!--[\s\S]*?-->/g, '')
    .replace(/(<(script|style|textarea)\b[^>]*>)[\s\S]*?(?=<\/\2>)/g, '$1');
  return [...markup.matchAll(/<([a-z][\w-]*)((?:"[^"]*"|'[^']*'|[^>"'])*)>/gi)].map(([, name = '', rest = '']) => ({
    name,
    attributes: new Map(
      [...rest.matchAll(/([^\s=/"']+)(?:\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"'>]+)))?/g)].map(
        ([, attribute = '', twice, once, bare]) => [attribute, decoded(twice ?? once ?? bare ?? '')],
      ),
    ),
  }));
}
