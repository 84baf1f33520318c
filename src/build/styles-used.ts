/**
 * Makes a first visit of a lesson 1.2 to 1.8 kB smaller, and that of other pages 1.2 to 3.6: a page carries the rules that
 * something in it can match, and no others, in one `<style>`. A rule stays where every class and every kind of element that it
 * names stands in a tag of the page, or as a word in any script that the page may ever fetch; what a script puts
 * together ("verdict-" and a name) stands for all that begin so. tests/site/styles.test.ts looks in a browser.
 */
import { readFile, readdir } from 'node:fs/promises';
import path from 'node:path';
import { memoize } from '../core/base/memoize';

const STYLE = /<style>([\s\S]*?)<\/style>/g;
const TAG = /<[^>]*>/g;
const SCRIPT = /<script\b[^>]*>([\s\S]*?)<\/script>/g;
const WORD = /[\w-]+/g;
/** Scripts that pages ask for by an address put together when it is wanted. */
const ASKED_FOR = /^(?:fetched\/.*|[\w-]+)\.js$/;

/** For the pages of a build in `root`: the page with the styles that it has a use for. */
export async function stylesUsed(root: string): Promise<(html: string) => Promise<string>> {
  const files = (await readdir(root, { recursive: true })).map((file) => file.split(path.sep).join('/'));
  // the service worker names every script, and has no page of its own to change
  const scripts = files.filter((file) => file.endsWith('.js') && file !== 'sw.js');
  const byName = new Map(scripts.map((file) => [path.posix.basename(file), file]));
  const askedFor = scripts.filter((file) => ASKED_FOR.test(file));
  const read = memoize(async (file: string) => {
    const code = await readFile(path.join(root, file), 'utf8');
    return { words: new Set(code.match(WORD)), names: scriptsNamed(code) };
  });

  const scriptsNamed = (text: string): string[] =>
    [...text.matchAll(/[\w.-]+\.js\b/g)].flatMap(([name]) => byName.get(name) ?? []);

  return async (html) => {
    if (!html.includes('<style>')) return html;
    const fetched = new Set([...scriptsNamed(html), ...askedFor]);
    const words = new Set<string>();
    const take = (found: Iterable<string>) => {
      for (const word of found) words.add(word);
    };
    for (const [tag] of html.replace(STYLE, '').matchAll(TAG)) take(tag.match(WORD) ?? []);
    for (const [, code = ''] of html.matchAll(SCRIPT)) take(code.match(WORD) ?? []);
    for (const script of fetched) {
      const { words: more, names } = await read(script);
      take(more);
      for (const name of names) fetched.add(name);
    }
    const all = [...html.matchAll(STYLE)].map(([, text = '']) => text).join('');
    const used = withoutIdleMotion(
      rulesUsed(all, (selector) => namesIn(selector).every((name) => isKnown(name, words))),
    );
    let put = false;
    return html.replace(STYLE, () => {
      if (put) return '';
      put = true;
      return `<style>${used}</style>`;
    });
  };
}

/** A class may be put together from its beginning and a word that stands elsewhere. */
function isKnown(name: string, words: ReadonlySet<string>): boolean {
  if (words.has(name)) return true;
  for (let at = name.indexOf('-'); at > 0; at = name.indexOf('-', at + 1))
    if (words.has(name.slice(0, at + 1))) return true;
  return false;
}

/** Classes and kinds of element without which nothing matches: what stands in `:is()`, `:not()` and `[…]` is let pass. */
function namesIn(selector: string): readonly string[] {
  let bare = selector.replace(/\[[^\]]*\]/g, '');
  for (let before = ''; before !== bare;) {
    before = bare;
    bare = bare.replace(/\([^()]*\)/g, '');
  }
  return bare.replace(/::?[\w-]+|#[\w-]+/g, '').match(WORD) ?? [];
}

const GROUP = /^@(?:media|supports|container|layer)\b/;

function rulesUsed(css: string, isUsed: (selector: string) => boolean): string {
  return blocksOf(css)
    .map((block) => {
      const opens = block.indexOf('{');
      const head = block.slice(0, opens).trim();
      const body = block.slice(opens + 1, -1);
      if (GROUP.test(head)) {
        const inside = rulesUsed(body, isUsed);
        return inside && `${head}{${inside}}`;
      }
      // a font, the page of a print, a motion
      if (opens < 0 || head.startsWith('@')) return block;
      const selectors = splitAtCommas(head).filter(isUsed);
      return selectors.length > 0 ? `${selectors.join(',')}{${body}}` : '';
    })
    .join('');
}

/** Motions that no rule asks for any more. */
function withoutIdleMotion(css: string): string {
  const blocks = blocksOf(css);
  const nameOf = (block: string) => /^\s*@keyframes ([\w-]+)/.exec(block)?.[1];
  const words = new Set(blocks.flatMap((block) => (nameOf(block) ? [] : (block.match(WORD) ?? []))));
  const isIdle = (name: string | undefined) => name !== undefined && !words.has(name);
  return blocks.filter((block) => !isIdle(nameOf(block))).join('');
}

/** The rules of a style sheet that the build has minified, as text. */
function blocksOf(css: string): string[] {
  const blocks: string[] = [];
  let from = 0;
  let deep = 0;
  // strings are skipped whole: a brace in one opens nothing
  for (const { 0: sign, index } of css.matchAll(/"(?:[^"\\]|\\.)*"|'(?:[^'\\]|\\.)*'|[{};]/g)) {
    if (sign === '{') deep += 1;
    if (sign === '}') deep -= 1;
    if (deep > 0 || (sign !== '}' && sign !== ';')) continue;
    blocks.push(css.slice(from, index + 1));
    from = index + 1;
  }
  return blocks;
}

function splitAtCommas(selectors: string): string[] {
  const parts = [''];
  let deep = 0;
  for (const sign of selectors) {
    if (sign === '(' || sign === '[') deep += 1;
    if (sign === ')' || sign === ']') deep -= 1;
    if (sign === ',' && deep === 0) parts.push('');
    else parts[parts.length - 1] += sign;
  }
  return parts;
}
