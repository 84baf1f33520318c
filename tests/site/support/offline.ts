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

/** Opens a page once, the home page if no other is named, and waits until what a first visit keeps is kept. */
export async function withVisit<T>(use: (visit: Visit) => Promise<T>, first = ''): Promise<T> {
  let server = await serve({ root: DIST, base: BASE });
  const port = Number(new URL(server.origin).port);
  try {
    return await withPage({ serviceWorkers: 'allow' }, async (page) => {
      await page.goto(server.url + first);
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

/** The worker has fetched what it keeps unasked and answers for this page. */
const allKept = (page: Page) =>
  page.waitForFunction(
    async () =>
      (await navigator.serviceWorker.ready).active?.state === 'activated' && navigator.serviceWorker.controller,
  );
