// @ts-check
/** Lints Astro components, which the linter of all other code (oxlint.json) reads only in part; the rules are the same. */
import { fileURLToPath } from 'node:url';
import astro from 'eslint-plugin-astro';
import { defineConfig, globalIgnores } from 'eslint/config';
import tseslint from 'typescript-eslint';

const root = fileURLToPath(new URL('../', import.meta.url));
// a component and the scripts in it
const COMPONENTS = ['**/*.astro', '**/*.astro/*.{js,ts}'];

export default defineConfig(globalIgnores(['dist/', '.astro/', '.cache/', 'coverage/'], 'what is built'), {
  basePath: root,
  files: COMPONENTS,
  extends: [tseslint.configs.recommended, astro.configs.recommended],
  linterOptions: { reportUnusedDisableDirectives: 'error' },
  rules: {
    eqeqeq: 'error',
    'no-console': 'error',
    'prefer-const': 'error',
    '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
    // a component's Props are read by those who use it
    '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^(?:_|Props$)' }],
  },
});
