// @ts-check
/** Formats Astro components; all else is formatted by oxfmt.json, which says the same. */
/** @type {import('prettier').Config} */
export default {
  printWidth: 120,
  singleQuote: true,
  proseWrap: 'preserve',
  plugins: ['prettier-plugin-astro'],
  overrides: [{ files: '*.astro', options: { parser: 'astro' } }],
};
