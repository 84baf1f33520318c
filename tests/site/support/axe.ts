/** The rules of axe, asked of a page as it stands in the browser. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Page } from 'playwright-core';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const ALL: RunOptions = {
  runOnly: { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] },
  rules: { 'target-size': { enabled: true } },
  resultTypes: ['violations'],
  preload: false,
};
/** The rules that look at colours; the others find in the dark what they found in the light. */
const COLOURS: RunOptions = { ...ALL, runOnly: ['color-contrast', 'link-in-text-block'], rules: {} };

/** Puts the rules into a page, and into whatever it opens from then on: a browser compiles a script that it knows but once. */
export const bringAxe = (page: Page): Promise<unknown> => page.addInitScript({ content: AXE });

/** What the rules say against a page as it stands: all of them, or those of colours alone. */
export async function violations(page: Page, asked: 'all' | 'colours', where: string): Promise<string[]> {
  const found = await page.evaluate(
    (options) => (globalThis as unknown as { axe: { run(o: RunOptions): Promise<AxeResults> } }).axe.run(options),
    asked === 'all' ? ALL : COLOURS,
  );
  return found.violations.flatMap(({ id, help, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${where}: ${id} (${help}) at ${target.join(' ')}\n${failureSummary}`),
  );
}
