/** Tells search engines, in sitemap.xml, of every page that asks to be found (228 of 235). */
import { writeFile } from 'node:fs/promises';
import type { AstroIntegration } from 'astro';
import { eachPage } from './pages';

export function sitemap(): AstroIntegration {
  return {
    name: 'sitemap',
    hooks: {
      'astro:build:done': async ({ dir, pages, logger }) => {
        const addresses: string[] = [];
        await eachPage(dir, pages, (html) => {
          // the page's own word for where it lives, so that the two cannot differ
          const canonical = /<link rel="canonical" href="([^"]+)"/.exec(html)?.[1];
          if (canonical && !/<meta name="robots" content="noindex/.test(html)) addresses.push(canonical);
        });
        const entries = addresses.sort().map((address) => `  <url><loc>${address}</loc></url>\n`);
        await writeFile(
          new URL('sitemap.xml', dir),
          `<?xml version="1.0" encoding="UTF-8"?>\n<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n${entries.join('')}</urlset>\n`,
        );
        logger.info(`${addresses.length} pages in sitemap.xml`);
      },
    },
  };
}
