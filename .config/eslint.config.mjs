// @ts-check
import { fileURLToPath } from 'node:url';
import astro from 'eslint-plugin-astro';
import { defineConfig } from 'eslint/config';
import tseslint from 'typescript-eslint';

const root = fileURLToPath(new URL('../', import.meta.url));

export default defineConfig(
  { ignores: ['src/env.d.ts', 'dist/', '.astro/', '.cache/', 'coverage/'], basePath: root },
  tseslint.configs.recommended,
  astro.configs.recommended,
  {
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      eqeqeq: 'error',
      'no-console': 'error',
      'prefer-const': 'error',
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
    },
  },
  // a component's Props are read by those who use it
  {
    files: ['**/*.astro'],
    rules: {
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^(?:_|Props$)' }],
    },
  },
  // tools print, and read records before their shape is known
  { basePath: root, files: ['tests/**'], rules: { 'no-console': 'off', '@typescript-eslint/no-explicit-any': 'off' } },
);
