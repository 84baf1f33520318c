/** One server and one browser for all site tests; the tests reach both through `inject`. */
import { existsSync } from 'node:fs';
import type { TestProject } from 'vitest/node';
import { startBrowser } from './browser';
import { serve } from './serve.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** address of the home page, with its closing slash */
    site: string;
    /** where the running browser is reached */
    browser: string;
  }
}

export default async function setup(project: TestProject) {
  const root = process.env['DIST'] ?? 'dist';
  if (!existsSync(`${root}/index.html`)) throw new Error(`There is no built site in ${root}/. Run: npm run build`);
  const browser = await startBrowser();
  const server = await serve({ root, base: process.env['BASE_PATH'] ?? '/' });
  project.provide('site', server.url);
  project.provide('browser', browser.wsEndpoint());
  return async () => {
    await browser.close();
    await server.close();
  };
}
