/**
 * A lesson opens with 3 kB of script instead of 43: `client:use` fetches an island's script when it is first used. The
 * scripts that it stands on are written into the page, so that they are asked for side by side and not one after
 * another, which saves two answers of the host, 300 ms on a slow phone. (`islands/parts/wake-on-use` runs in the page.)
 */
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { memoize } from '../core/base/memoize';

const ON_USE = fileURLToPath(new URL('../islands/parts/wake-on-use.mjs', import.meta.url));
const WAKES = fileURLToPath(new URL('../islands/parts/wake-island.mjs', import.meta.url));

export function clientUse(): AstroIntegration {
  return {
    name: 'client-use',
    hooks: {
      'astro:config:setup': ({ addClientDirective, updateConfig }) => {
        addClientDirective({ name: 'use', entrypoint: ON_USE });
        updateConfig({ vite: { plugins: [plainImports()] } });
      },
      'astro:build:setup': ({ target, updateConfig }) => {
        if (target === 'client') updateConfig({ plugins: [wakesInBase()] });
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

/** What wakes an island stands in the file that every calculator has; it would else be one more to ask for, after the other. */
function wakesInBase() {
  return {
    name: 'wakes-in-base',
    buildStart(this: { emitFile(chunk: { type: 'chunk'; id: string; preserveSignature: 'allow-extension' }): string }) {
      this.emitFile({ type: 'chunk', id: WAKES, preserveSignature: 'allow-extension' });
    },
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

/** Hints for the pages of a build in `root`: an island that waits carries the list of its scripts; those of one that does not are asked for in the head. */
export function scriptHints(root: string, base: string): (html: string) => Promise<string> {
  const importsOf = memoize(async (address: string) => {
    const code = await readFile(path.join(root, address.slice(base.length)), 'utf8');
    return [...code.matchAll(/\b(?:import|from)\s*["'](\.{1,2}\/[^"']+)["']/g)].map(([, target = '']) =>
      path.posix.join(path.posix.dirname(address), target),
    );
  });
  return async (html) => {
    const atOnce = new Set<string>();
    const beforeUse = new Set<string>();
    let page = html;
    for (const [tag] of html.matchAll(/<astro-island [^>]*>/g)) {
      const roots = ['component-url', 'renderer-url'].flatMap((name) => tag.match(`${name}="([^"]+)"`)?.[1] ?? []);
      const needs = new Set(roots);
      for (const address of needs) for (const next of await importsOf(address)) needs.add(next);
      const waits = tag.includes('client="use"') && !tag.includes('&quot;value&quot;:&quot;now&quot;');
      if (waits) page = page.replace(tag, () => tag.replace(' ', ` data-needs="${[...needs].join(' ')}" `));
      else for (const need of needs) atOnce.add(need);
      if (!tag.includes('&quot;value&quot;:&quot;known&quot;')) continue;
      const early = /component-url="[^"]*\/Class\./.test(tag) ? BEFORE_CLASS : BEFORE_USE;
      for (const need of needs) if (early.test(need)) beforeUse.add(need);
    }
    const asked = (all: ReadonlySet<string>, how: string) =>
      [...all].map((address) => `<link rel="modulepreload" href="${address}"${how}>`).join('');
    const links = asked(atOnce, '') + asked(beforeUse, ' fetchpriority="low"');
    return page.replace('</head>', () => `${links}</head>`);
  };
}
