// @ts-check
/** @type {import('prettier').Config} */
export default {
  printWidth: 120,
  singleQuote: true,
  proseWrap: 'preserve',
  plugins: ['prettier-plugin-astro'],
  overrides: [{ files: '*.astro', options: { parser: 'astro' } }],
};
