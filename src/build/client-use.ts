/**
 * A lesson opens with 2 kB of script instead of 27: `client:use` fetches an island's script when it is first used. The
 * scripts that it stands on are written into the page, so that they are asked for side by side and not one after
 * another, which saves two answers of the host, 300 ms on a slow phone. (`islands/parts/wake-on-use` runs in the page.)
 */
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { memoize } from '../core/base/memoize';
import { eachPage } from './pages';

export function clientUse(base: string): AstroIntegration {
  return {
    name: 'client-use',
    hooks: {
      'astro:config:setup': ({ addClientDirective, updateConfig }) => {
        addClientDirective({
          name: 'use',
          entrypoint: fileURLToPath(new URL('../islands/parts/wake-on-use.mjs', import.meta.url)),
        });
        updateConfig({ vite: { plugins: [plainImports()] } });
      },
      'astro:build:setup': ({ target, updateConfig }) => {
        // what wakes an island stands in the file that every calculator has
        if (target === 'client') updateConfig({ plugins: [wakesInBase()] });
      },
      'astro:build:done': async ({ dir, pages }) => {
        const scripts = scriptsIn(fileURLToPath(dir), base);
        await eachPage(dir, pages, (html) => (html.includes('<astro-island') ? hinted(html, scripts) : undefined));
      },
    },
  };
}

/** No script here brings a style or a preload with it, so nothing has to stand around its import(): half a kB of each page. */
function plainImports() {
  return {
    name: 'plain-imports',
    enforce: 'pre' as const,
    load: (id: string) =>
      id === '\0vite/preload-helper.js' ? 'export const __vitePreload = (load) => load();' : undefined,
  };
}

const WAKES = fileURLToPath(new URL('../islands/parts/wake-island.mjs', import.meta.url));

/** Otherwise it would stand in a file of its own that only names the other: one more to ask for, and one after the other. */
function wakesInBase() {
  return {
    name: 'wakes-in-base',
    buildStart(this: { emitFile(chunk: { type: 'chunk'; id: string; preserveSignature: 'allow-extension' }): string }) {
      this.emitFile({ type: 'chunk', id: WAKES, preserveSignature: 'allow-extension' });
    },
  };
}

type Scripts = (addresses: readonly string[]) => Promise<readonly string[]>;

/** Of scripts named in a page: themselves, and what they import in turn. */
function scriptsIn(root: string, base: string): Scripts {
  const importsOf = memoize(async (address: string) => {
    const code = await readFile(path.join(root, address.slice(base.length)), 'utf8');
    return [...code.matchAll(/\b(?:import|from)\s*["'](\.{1,2}\/[^"']+)["']/g)].map(([, target = '']) =>
      path.posix.join(path.posix.dirname(address), target),
    );
  });
  return async (addresses) => {
    const all = new Set(addresses);
    for (const address of all) for (const next of await importsOf(address)) all.add(next);
    return [...all];
  };
}

/**
 * What comes to a calculator's own page while the line has nothing else to do: what every calculator stands on. The
 * class stands on most of the others, and their small files too come ahead: a host that speaks HTTP/1.1 would send
 * them six at a time, and each further six are 150 ms.
 */
const BEFORE_USE = /\/(?:records|wake-island)\.[\w-]+\.js$/;
const BEFORE_CLASS =
  /\/(?:records|wake-island|plan|lengths|own-papers?|fold|frame|rounding|send|sizes|cover-to-mix)\.[\w-]+\.js$/;

/** An island that waits carries the list of its scripts; those of one that does not are asked for in the head. */
async function hinted(html: string, scripts: Scripts): Promise<string> {
  const atOnce = new Set<string>();
  const beforeUse = new Set<string>();
  let page = html;
  for (const [tag] of html.matchAll(/<astro-island [^>]*>/g)) {
    const roots = ['component-url', 'renderer-url'].flatMap((name) => tag.match(`${name}="([^"]+)"`)?.[1] ?? []);
    const needs = await scripts(roots);
    const waits = tag.includes('client="use"') && !tag.includes('&quot;value&quot;:&quot;now&quot;');
    if (waits)
      page = page.replace(tag, () => tag.replace('<astro-island ', `<astro-island data-needs="${needs.join(' ')}" `));
    else for (const need of needs) atOnce.add(need);
    if (!tag.includes('&quot;value&quot;:&quot;known&quot;')) continue;
    const early = /component-url="[^"]*\/Class\./.test(tag) ? BEFORE_CLASS : BEFORE_USE;
    for (const need of needs) if (early.test(need)) beforeUse.add(need);
  }
  const asked = (all: ReadonlySet<string>, how: string) =>
    [...all].map((address) => `<link rel="modulepreload" href="${address}"${how}>`).join('');
  const links = asked(atOnce, '') + asked(beforeUse, ' fetchpriority="low"');
  return page.replace('</head>', () => `${links}</head>`);
}
