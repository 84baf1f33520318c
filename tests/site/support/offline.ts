/** A visit to the built site whose server can be stopped, as when the network goes. */
import type { Page } from 'playwright-core';
import { serve } from '../../tools/serve.mjs';
import { withPage } from './browser';
import { BASE, DIST } from './dist';

export interface Visit {
  readonly page: Page;
  /** address of the home page */
  readonly site: string;
  readonly stop: () => Promise<void>;
  /** starts it again, at the same address, from another folder if one is named */
  readonly start: (root?: string) => Promise<void>;
}

/** Opens the home page once and waits until everything is kept. */
export async function withVisit<T>(use: (visit: Visit) => Promise<T>): Promise<T> {
  let server = await serve({ root: DIST, base: BASE });
  const port = Number(new URL(server.origin).port);
  try {
    return await withPage({ serviceWorkers: 'allow' }, async (page) => {
      await page.goto(server.url);
      await allKept(page);
      return use({
        page,
        site: server.url,
        stop: () => server.close(),
        start: async (root = DIST) => void (server = await serve({ root, base: BASE, port })),
      });
    });
  } finally {
    await server.close();
  }
}

/** The worker has fetched everything and answers for this page. */
const allKept = (page: Page) =>
  page.waitForFunction(
    async () =>
      (await navigator.serviceWorker.ready).active?.state === 'activated' && navigator.serviceWorker.controller,
  );
