/** One server for all site tests, and a browser that starts; the tests learn of both through `inject`. */
import { existsSync } from 'node:fs';
import type { TestProject } from 'vitest/node';
import { findBrowser } from './browser';
import { serve } from './serve.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** address of the home page, with its closing slash */
    site: string;
    /** the program of the browser */
    browser: string;
  }
}

export default async function setup(project: TestProject) {
  const root = process.env['DIST'] ?? 'dist';
  if (!existsSync(`${root}/index.html`)) throw new Error(`There is no built site in ${root}/. Run: npm run build`);
  const browser = await findBrowser();
  const server = await serve({ root, base: process.env['BASE_PATH'] ?? '/' });
  project.provide('site', server.url);
  project.provide('browser', browser);
  return () => server.close();
}
