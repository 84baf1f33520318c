/**
 * Lets a returning reader fetch no script and no font anew, and keeps the site from being framed or its types guessed: writes
 * `_headers`, in the form that several static hosts read (a path, then its headers, indented). For any other host it is
 * a list to copy. No two rules name the same header for one path, because hosts differ in which of them wins.
 */
import { readdir, writeFile } from 'node:fs/promises';
import type { AstroIntegration } from 'astro';

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

const FOLDERS: Readonly<Record<string, readonly string[]>> = {
  _astro: [FOREVER],
  embed: [ASK_FIRST, ANY_FRAME],
  fonts: [A_DAY],
  icons: [A_DAY],
  pagefind: [ASK_FIRST],
  share: [A_DAY],
};
const FILES = ['', 'index.html', '404.html', 'sw.js', 'new-text.js', 'manifest.webmanifest', 'feed.xml', 'sitemap.xml'];

export function headers(base: string): AstroIntegration {
  return {
    name: 'headers',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const entries = await readdir(dir, { withFileTypes: true });
        const folders = entries.filter((entry) => entry.isDirectory()).map(({ name }) => name);
        const rules = [
          [`${base}*`, ...EVERYWHERE],
          ...FILES.map((name) => [base + name, ASK_FIRST, OWN_FRAMES]),
          ...folders.sort().map((name) => [`${base}${name}/*`, ...(FOLDERS[name] ?? [ASK_FIRST, OWN_FRAMES])]),
        ];
        const lines = rules.map(([place, ...said]) => `${place}\n${said.map((line) => `  ${line}\n`).join('')}`);
        await writeFile(new URL('_headers', dir), lines.join('\n'));
      },
    },
  };
}
