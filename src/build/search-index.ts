/**
 * Lets a reader search the whole site without a server: an index of the pages that say they may be searched
 * (`data-pagefind-body`), as static files under /pagefind/, of which the browser fetches some 85 kB once a search is made.
 */
import { readdir, rm } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { close, createIndex } from 'pagefind';

/** What comes with the index and this site does not use: ready-made interfaces, and other languages. */
const UNUSED = /-ui\.|-highlight\.|^wasm\.unknown\./;

/** What is chosen from is not what the page says. */
const CHOICES = /<(select|datalist)\b[\s\S]*?<\/\1>/g;
const CELL_BEFORE_CELL = /<\/t[dh]>(?=\s*<t[dh]\b)/g;
const LAST_CELL = /<\/t[dh]>(?=\s*<\/tr>)/g;
const END_OF_BLOCK = /<\/(?:caption|dd|div|dt|figcaption|h[1-6]|label|legend|li|p|section|summary|td|th|tr)>/g;

/** A page as its text is to be read for the search: the build leaves no space between tags, so cells and blocks would run together. */
export const readable = (html: string): string =>
  html.replace(CHOICES, ' ').replace(CELL_BEFORE_CELL, ' ·$&').replace(LAST_CELL, ';$&').replace(END_OF_BLOCK, ' $&');

/** Writes the index of these pages, by file, into `folder`. */
export async function writeSearchIndex(pages: ReadonlyMap<string, string>, folder: URL): Promise<void> {
  const check = (errors: readonly string[]) => {
    if (errors.length > 0) throw new Error(`search index: ${errors.join('; ')}`);
  };
  const { index, errors } = await createIndex({ forceLanguage: 'en' });
  check(errors);
  const searched = [...pages].filter(([, html]) => html.includes('data-pagefind-body'));
  if (searched.length === 0) throw new Error('search index: no page found');
  for (const [sourcePath, html] of searched)
    check((await index!.addHTMLFile({ sourcePath, content: readable(html) })).errors);
  check((await index!.writeFiles({ outputPath: fileURLToPath(folder) })).errors);
  await close();
  for (const name of await readdir(folder)) if (UNUSED.test(name)) await rm(new URL(name, folder));
}
