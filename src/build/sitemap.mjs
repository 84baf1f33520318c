// @ts-check
/** After the build: sitemap.xml, of every page that asks to be found. */
import { readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

/** @returns {import('astro').AstroIntegration} */
export function sitemap() {
  return {
    name: 'sitemap',
    hooks: {
      'astro:build:done': async ({ dir, pages, logger }) => {
        const root = fileURLToPath(dir);
        const addresses = [];
        for (const { pathname } of pages) {
          const file = pathname === '404/' ? '404.html' : path.join(pathname, 'index.html');
          const html = await readFile(path.join(root, file), 'utf8');
          // the page's own word for where it lives, so that the two cannot differ
          const canonical = /<link rel="canonical" href="([^"]+)"/.exec(html)?.[1];
          if (canonical && !/<meta name="robots" content="noindex/.test(html)) addresses.push(canonical);
        }
        const entries = addresses.sort().map((address) => `  <url><loc>${address}</loc></url>\n`);
        await writeFile(
          path.join(root, 'sitemap.xml'),
          `<?xml version="1.0" encoding="UTF-8"?>\n<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n${entries.join('')}</urlset>\n`,
        );
        logger.info(`${addresses.length} pages in sitemap.xml`);
      },
    },
  };
}
