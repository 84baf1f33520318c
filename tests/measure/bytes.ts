/** What a first visit brings over the line, counted by the browser. */
import type { Browser } from 'playwright-core';
import { onPhone } from './slow-phone';

export interface Bytes {
  readonly page: string;
  readonly html: number;
  readonly css: number;
  readonly font: number;
  readonly script: number;
  readonly other: number;
  readonly whole: number;
  /** script besides, once the calculator has been used */
  readonly used: number;
}

const KINDS: Readonly<Record<string, 'html' | 'css' | 'font' | 'script'>> = {
  Document: 'html',
  Stylesheet: 'css',
  Font: 'font',
  Script: 'script',
  // a calculator that waits fetches its scripts so
  Fetch: 'script',
};

/** All that is sent, the heads of the answers (some 200 bytes each) with it. */
export async function measureBytes(browser: Browser, origin: string, paths: readonly string[]): Promise<Bytes[]> {
  const rows: Bytes[] = [];
  for (const path of paths) {
    const row = await onPhone(
      browser,
      { network: false, processor: false, keepsNothing: true },
      async (page, devtools) => {
        await devtools.send('Network.enable');
        const sums = { html: 0, css: 0, font: 0, script: 0, other: 0 };
        const kinds = new Map<string, keyof typeof sums>();
        devtools.on('Network.responseReceived', ({ requestId, type }) => kinds.set(requestId, KINDS[type] ?? 'other'));
        devtools.on('Network.loadingFinished', ({ requestId, encodedDataLength }) => {
          sums[kinds.get(requestId) ?? 'other'] += encodedDataLength;
        });
        await page.goto(origin + path, { waitUntil: 'networkidle' });
        const opened = { ...sums };
        await page.evaluate(() => document.querySelector('astro-island')?.dispatchEvent(new Event('pointerover')));
        await page.waitForTimeout(1500);
        const whole = Object.values(opened).reduce((total, one) => total + one, 0);
        return { ...opened, whole, used: sums.script };
      },
    );
    rows.push({ page: path, ...row });
  }
  return rows;
}
