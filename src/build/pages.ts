/** The pages of a build, for what reads or changes them once they are all there. */
import { readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

/** Shows `look` each page in turn, by its path ("shelf/papers/"); what it gives back is written in the page's place. */
export async function eachPage(
  dir: URL,
  pages: readonly { pathname: string }[],
  look: (html: string, pathname: string) => Promise<string | void> | string | void,
): Promise<void> {
  for (const { pathname } of pages) {
    const name = pathname === '404/' ? '404.html' : path.join(pathname, 'index.html');
    const file = path.join(fileURLToPath(dir), name);
    const html = await readFile(file, 'utf8');
    const changed = await look(html, pathname);
    if (changed !== undefined && changed !== html) await writeFile(file, changed);
  }
}
