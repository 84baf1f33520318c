/**
 * Lets a reader search the whole site without a server: an index of the pages that say they may be searched
 * (`data-pagefind-body`), as static files under /pagefind/, of which the browser fetches some 85 kB once a search is made.
 */
import { readdir, rm } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { close, createIndex } from 'pagefind';

/** What comes with the index and this site does not use: ready-made interfaces, and other languages. */
const UNUSED = /-ui\.|-highlight\.|^wasm\.unknown\./;

export function searchIndex(): AstroIntegration {
  return {
    name: 'search-index',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        const folder = new URL('pagefind/', dir);
        const { index, errors } = await createIndex({ forceLanguage: 'en' });
        if (!index) throw new Error(`search index: ${errors.join('; ')}`);
        const { page_count: read, errors: unread } = await index.addDirectory({ path: fileURLToPath(dir) });
        if (unread.length > 0 || read === 0) throw new Error(`search index: ${unread.join('; ') || 'no page found'}`);
        const { errors: unwritten } = await index.writeFiles({ outputPath: fileURLToPath(folder) });
        if (unwritten.length > 0) throw new Error(`search index: ${unwritten.join('; ')}`);
        await close();
        for (const name of await readdir(folder)) if (UNUSED.test(name)) await rm(new URL(name, folder));
        logger.info(`read ${read} pages`);
      },
    },
  };
}
