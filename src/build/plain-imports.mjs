// @ts-check
/**
 * Vite wraps each `import()` in a helper that fetches styles and further scripts beside it. Here all styles stand in
 * the page (`inlineStylesheets`), and what is fetched late is one or two files: the helper would only be half a
 * kilobyte more to fetch.
 */
const HELPER = '\0vite/preload-helper.js';

/** @returns {import('vite').Plugin} */
export const plainImports = () => ({
  name: 'plain-imports',
  enforce: 'pre',
  load: (id) => (id === HELPER ? 'export const __vitePreload = (load) => load();' : undefined),
});
