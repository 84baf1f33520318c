// @ts-check
/**
 * After the build: `_headers`, in the form that several static hosts read (a path, then its headers, indented). What it
 * says holds for any other host too, as a list to copy. No two rules name the same header for one path, because
 * hosts differ in which of them wins.
 */
import { readdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const EVERYWHERE = [
  'X-Content-Type-Options: nosniff',
  'Referrer-Policy: same-origin',
  'Permissions-Policy: camera=(), geolocation=(), microphone=(), payment=(), usb=()',
  'Cross-Origin-Opener-Policy: same-origin',
];
/** Never changes under its name. */
const FOREVER = 'Cache-Control: public, max-age=31536000, immutable';
/** Kept, but asked after each time whether it has changed. */
const ASK_FIRST = 'Cache-Control: no-cache';
/** Pictures and fonts: a day late does no harm. */
const A_DAY = 'Cache-Control: public, max-age=86400';

// The policy in the page cannot say who may frame it: a header can. The framed calculators are for anyone's page.
const OWN_FRAMES = "Content-Security-Policy: frame-ancestors 'self'";
const ANY_FRAME = 'Content-Security-Policy: frame-ancestors *';

/** @type {Readonly<Record<string, readonly string[]>>} */
const FOLDERS = {
  _astro: [FOREVER],
  embed: [ASK_FIRST, ANY_FRAME],
  fonts: [A_DAY],
  icons: [A_DAY],
  pagefind: [ASK_FIRST],
  share: [A_DAY],
};
const FILES = ['', 'index.html', '404.html', 'sw.js', 'new-text.js', 'manifest.webmanifest', 'feed.xml', 'sitemap.xml'];

/** @returns {import('astro').AstroIntegration} */
export function headers() {
  let base = '/';
  return {
    name: 'headers',
    hooks: {
      'astro:config:done': ({ config }) => void (base = `${config.base.replace(/\/$/, '')}/`),
      'astro:build:done': async ({ dir }) => {
        const root = fileURLToPath(dir);
        const entries = await readdir(root, { withFileTypes: true });
        const folders = entries.filter((entry) => entry.isDirectory()).map(({ name }) => name);
        const rules = [
          [`${base}*`, ...EVERYWHERE],
          ...FILES.map((name) => [base + name, ASK_FIRST, OWN_FRAMES]),
          ...folders.sort().map((name) => [`${base}${name}/*`, ...(FOLDERS[name] ?? [ASK_FIRST, OWN_FRAMES])]),
        ];
        await writeFile(
          path.join(root, '_headers'),
          rules.map(([place, ...lines]) => `${place}\n${lines.map((line) => `  ${line}\n`).join('')}`).join('\n'),
        );
      },
    },
  };
}
