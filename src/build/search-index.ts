/**
 * Lets a reader search the whole site without a server: an index of the pages that say they may be searched
 * (`data-pagefind-body`), as static files under /pagefind/, of which the browser fetches some 85 kB once a search is made.
 */
import { readdir, readFile, rm } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { close, createIndex } from 'pagefind';

/** What comes with the index and this site does not use: ready-made interfaces, and other languages. */
const UNUSED = /-ui\.|-highlight\.|^wasm\.unknown\./;

const PAGE = /^(.*\/)?index\.html$/;
/** What is chosen from is not what the page says. */
const CHOICES = /<(select|datalist)\b[\s\S]*?<\/\1>/g;
const CELL_BEFORE_CELL = /<\/t[dh]>(?=\s*<t[dh]\b)/g;
const LAST_CELL = /<\/t[dh]>(?=\s*<\/tr>)/g;
const END_OF_BLOCK = /<\/(?:caption|dd|div|dt|figcaption|h[1-6]|label|legend|li|p|section|summary|td|th|tr)>/g;

/** A page as its text is to be read for the search: the build leaves no space between tags, so cells and blocks would run together. */
export const readable = (html: string): string =>
  html.replace(CHOICES, ' ').replace(CELL_BEFORE_CELL, ' ·$&').replace(LAST_CELL, ';$&').replace(END_OF_BLOCK, ' $&');

export function searchIndex(): AstroIntegration {
  return {
    name: 'search-index',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        const folder = new URL('pagefind/', dir);
        const { index, errors } = await createIndex({ forceLanguage: 'en' });
        if (!index) throw new Error(`search index: ${errors.join('; ')}`);
        let read = 0;
        for (const name of (await readdir(dir, { recursive: true })).sort()) {
          const file = name.replaceAll('\\', '/');
          if (!PAGE.test(file)) continue;
          const html = await readFile(new URL(file, dir), 'utf8');
          if (!html.includes('data-pagefind-body')) continue;
          const { errors: unread } = await index.addHTMLFile({ sourcePath: file, content: readable(html) });
          if (unread.length > 0) throw new Error(`search index: ${file}: ${unread.join('; ')}`);
          read += 1;
        }
        if (read === 0) throw new Error('search index: no page found');
        const { errors: unwritten } = await index.writeFiles({ outputPath: fileURLToPath(folder) });
        if (unwritten.length > 0) throw new Error(`search index: ${unwritten.join('; ')}`);
        await close();
        for (const name of await readdir(folder)) if (UNUSED.test(name)) await rm(new URL(name, folder));
        logger.info(`read ${read} pages`);
      },
    },
  };
}
