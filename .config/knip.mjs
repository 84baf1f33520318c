// @ts-check
/**
 * Code of an Astro component for the unused-code check: its fence and scripts, and from its template
 * each `name.member` of a namespace import, which would else count as unused.
 * @param {string} text
 */
function codeOfComponent(text) {
  const [, fence = '', template = ''] = /^---\r?\n([\s\S]*?)\r?\n---([\s\S]*)$/.exec(text) ?? ['', '', text];
  const scripts = [...template.matchAll(/<script\b[^>]*>([\s\S]*?)<\/script>/g)].map(([, script = '']) => script);
  const namespaces = [...fence.matchAll(/import \* as (\w+) from/g)].map(([, name = '']) => name);
  const members = namespaces.flatMap((name) => template.match(new RegExp(`\\b${name}\\.\\w+`, 'g')) ?? []);
  return [fence, ...scripts, ...members.map((member) => `${member};`)].join('\n');
}

/** @type {import('knip').KnipConfig} */
export default {
  entry: [
    'src/pages/**/*.{astro,ts}',
    'content/**/*.mdx',
    // named by address (src/pages/fetched)
    'src/components/lesson/{answering,slide,word-panel}.ts',
    'tests/**/*.{test,bench}.{ts,tsx}',
    'tests/*/*.ts',
    'tests/{tools,measure}/*.mjs',
    '.config/*.{ts,mjs}',
  ],
  project: ['src/**/*.{ts,tsx,mjs,astro}', 'tests/**/*.{ts,tsx,mjs}', 'content/**/*.mdx'],
  compilers: { astro: codeOfComponent },
  // a shape may be named for its reader even when only its own file uses it
  ignoreExportsUsedInFile: true,
  // of the machine that tries the site behind a host, on demand
  ignoreBinaries: ['nginx'],
  // named to a program and never imported: by `astro check`, by prettier.mjs, and by the build's `minify`
  ignoreDependencies: ['@astrojs/check', 'prettier-plugin-astro', 'terser'],
  // its runner is a file of ours, which knip's own reading of Stryker's settings takes for a package
  stryker: false,
};
