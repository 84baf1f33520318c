// @ts-check
/**
 * After the build: the pages that are made from records, some two hundred, name their styles instead of carrying
 * them. A page that carries its styles is painted one answer of the host sooner, and so do all that a reader is
 * likely to begin at; two hundred times six kilobytes would be a third of what is kept for use without a network.
 */
import { createHash } from 'node:crypto';
import { readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const FROM_RECORDS = /^(?:answers|shelf\/[a-z]+)\/[^/]+\/$/;
const STYLE = /<style>([\s\S]*?)<\/style>/g;
/** Less than this is not worth a file, characters. */
const LEAST = 2000;

/** @param {string} base @returns {import('astro').AstroIntegration} */
export function stylesApart(base) {
  return {
    name: 'styles-apart',
    hooks: {
      'astro:build:done': async ({ dir, pages, logger }) => {
        const root = fileURLToPath(dir);
        /** @type {Set<string>} */
        const written = new Set();
        const made = pages.filter(({ pathname }) => FROM_RECORDS.test(pathname));
        for (const { pathname } of made) {
          const file = path.join(root, pathname, 'index.html');
          const html = await readFile(file, 'utf8');
          const styles = [...html.matchAll(STYLE)].filter(([, text = '']) => text.length >= LEAST);
          let page = html;
          for (const [tag, text = ''] of styles) {
            const name = `_astro/styles.${createHash('sha256').update(text).digest('hex').slice(0, 8)}.css`;
            if (!written.has(name)) await writeFile(path.join(root, name), text);
            written.add(name);
            page = page.replace(tag, () => `<link rel="stylesheet" href="${base}${name}">`);
          }
          if (page !== html) await writeFile(file, page);
        }
        logger.info(`${made.length} pages name ${written.size} files of styles`);
      },
    },
  };
}
