// @ts-check
/**
 * Makes `client:use` known to the build (wake-on-use.mjs is what runs in the page), and after the build
 * writes into each page which scripts its islands stand on, so that they are asked for side by side and not
 * one after another.
 */
import { readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

/** @param {string} base @returns {import('astro').AstroIntegration} */
export function clientUse(base) {
  return {
    name: 'client-use',
    hooks: {
      'astro:config:setup': ({ addClientDirective }) =>
        addClientDirective({ name: 'use', entrypoint: fileURLToPath(new URL('./wake-on-use.mjs', import.meta.url)) }),
      'astro:build:done': async ({ dir, pages }) => {
        const scripts = scriptsIn(fileURLToPath(dir), base);
        for (const { pathname } of pages) {
          const file = path.join(fileURLToPath(dir), pathname, 'index.html');
          const html = await readFile(file, 'utf8').catch(() => '');
          if (html.includes('<astro-island')) await writeFile(file, await hinted(html, scripts));
        }
      },
    },
  };
}

/** Where a script is named in a page, and what it imports in turn, itself first.
 * @param {string} root @param {string} base */
function scriptsIn(root, base) {
  const inside = base.replace(/\/*$/, '/');
  /** @type {Map<string, Promise<readonly string[]>>} */
  const known = new Map();
  /** @param {string} address @returns {Promise<readonly string[]>} */
  const importsOf = (address) => {
    const found = known.get(address) ?? read(address);
    known.set(address, found);
    return found;
  };
  /** @param {string} address */
  const read = async (address) => {
    const code = await readFile(path.join(root, address.slice(inside.length)), 'utf8');
    return [...code.matchAll(/\b(?:import|from)\s*["'](\.{1,2}\/[^"']+)["']/g)].map(([, target = '']) =>
      path.posix.join(path.posix.dirname(address), target),
    );
  };
  /** @param {readonly string[]} addresses */
  return async (addresses) => {
    const all = new Set(addresses);
    for (const address of all) for (const next of await importsOf(address)) all.add(next);
    return [...all];
  };
}

/** An island that waits carries the list of its scripts; those of one that does not are asked for in the head.
 * @param {string} html @param {(addresses: readonly string[]) => Promise<readonly string[]>} scripts */
async function hinted(html, scripts) {
  /** @type {Set<string>} */
  const atOnce = new Set();
  let page = html;
  for (const [tag] of html.matchAll(/<astro-island [^>]*>/g)) {
    const roots = ['component-url', 'renderer-url'].flatMap((name) => tag.match(`${name}="([^"]+)"`)?.[1] ?? []);
    const needs = await scripts(roots);
    const waits = tag.includes('client="use"') && !tag.includes('&quot;value&quot;:&quot;now&quot;');
    if (waits)
      page = page.replace(tag, () => tag.replace('<astro-island ', `<astro-island data-needs="${needs.join(' ')}" `));
    else for (const need of needs) atOnce.add(need);
  }
  const links = [...atOnce].map((address) => `<link rel="modulepreload" href="${address}">`).join('');
  return page.replace('</head>', () => `${links}</head>`);
}
