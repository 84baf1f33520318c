// @ts-check
/**
 * After the build: an index of the pages that say they may be searched (`data-pagefind-body`), as static files
 * under /pagefind/. The reader's browser fetches from it only once a search is made.
 */
import { readdir, rm } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { close, createIndex } from 'pagefind';

/** @returns {import('astro').AstroIntegration} */
export function searchIndex() {
  return {
    name: 'search-index',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        const { index, errors } = await createIndex({ forceLanguage: 'en' });
        if (!index) throw new Error(`search index: ${errors.join('; ')}`);
        const { page_count: read, errors: unread } = await index.addDirectory({ path: fileURLToPath(dir) });
        if (unread.length > 0 || read === 0) throw new Error(`search index: ${unread.join('; ') || 'no page found'}`);
        const { errors: unwritten } = await index.writeFiles({ outputPath: fileURLToPath(new URL('pagefind/', dir)) });
        if (unwritten.length > 0) throw new Error(`search index: ${unwritten.join('; ')}`);
        await close();
        for (const file of await unused(new URL('pagefind/', dir))) await rm(file);
        logger.info(`read ${read} pages`);
      },
    },
  };
}

/** What comes with the index and this site does not use: ready-made interfaces, and other languages. @param {URL} folder */
async function unused(folder) {
  const files = await readdir(folder);
  return files.filter((name) => /-ui\.|-highlight\.|^wasm\.unknown\./.test(name)).map((name) => new URL(name, folder));
}
