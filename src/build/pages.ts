/**
 * What the 348 pages gain once all are built, in one pass: the first line of each file named below says what that is.
 */
import { readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { scriptHints } from './client-use';
import { withOwnHashes } from './own-hashes';
import { writeSearchIndex } from './search-index';
import { foundAt, sitemapOf } from './sitemap';
import { stylesApart } from './styles-apart';

export function finishPages(base: string): AstroIntegration {
  return {
    name: 'finish-pages',
    hooks: {
      'astro:build:done': async ({ dir, pages }) => {
        const root = fileURLToPath(dir);
        const hinted = scriptHints(root, base);
        const sheets = new Map<string, string>();
        const finished = new Map<string, string>();
        for (const { pathname } of pages.toSorted((a, b) => (a.pathname < b.pathname ? -1 : 1))) {
          const file = pathname === '404/' ? '404.html' : `${pathname}index.html`;
          const built = await readFile(path.join(root, file), 'utf8');
          // the hashes last, of what is left in the page
          finished.set(file, withOwnHashes(stylesApart(await hinted(built), pathname, base, sheets)));
        }
        for (const [file, text] of [...finished, ...sheets]) await writeFile(path.join(root, file), text);
        const addresses = [...finished.values()].flatMap((html) => foundAt(html) ?? []);
        await writeFile(path.join(root, 'sitemap.xml'), sitemapOf(addresses));
        await writeSearchIndex(finished, new URL('pagefind/', dir));
      },
    },
  };
}
