/** Lighthouse on a phone, page by page: the four scores, and both reports kept. */
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import lighthouse from 'lighthouse';
import { startBrowserAt } from '../tools/browser';

export interface Scores {
  readonly page: string;
  readonly scores: Readonly<Record<string, number>>;
  /** what kept a score below 100 */
  readonly missed: readonly string[];
}

const REPORTS = '.cache/reports/lighthouse';
const PORT = 9333;
export const CATEGORIES = ['performance', 'accessibility', 'best-practices', 'seo'] as const;

export async function runLighthouse(origin: string, paths: readonly string[]): Promise<Scores[]> {
  mkdirSync(REPORTS, { recursive: true });
  const browser = await startBrowserAt(PORT);
  try {
    const rows: Scores[] = [];
    for (const page of paths) {
      const result = await lighthouse(origin + page, {
        port: PORT,
        output: ['html', 'json'],
        onlyCategories: [...CATEGORIES],
        logLevel: 'error',
      });
      if (!result) throw new Error(`no report on ${page}`);
      const name = page === '/' ? 'home' : page.replace(/^\/|\/$/g, '').replaceAll('/', '-');
      const [html = '', json = ''] = result.report as string[];
      writeFileSync(path.join(REPORTS, `${name}.html`), html);
      writeFileSync(path.join(REPORTS, `${name}.json`), json);
      const { categories, audits } = result.lhr;
      const missed = Object.values(categories)
        .flatMap(({ auditRefs }) => auditRefs)
        .filter(({ weight, id }) => weight > 0 && (audits[id]?.score ?? 1) < 0.9)
        .map(({ id }) => `${id} ${audits[id]?.displayValue ?? ''}`.trim());
      const scores = Object.fromEntries(
        Object.entries(categories).map(([key, { score }]) => [key, Math.round((score ?? 0) * 100)]),
      );
      rows.push({ page, scores, missed: [...new Set(missed)] });
      console.log(page, JSON.stringify(scores), missed.join('; '));
    }
    return rows;
  } finally {
    await browser.close();
  }
}
