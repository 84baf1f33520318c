/** A page as a slow phone has it: slow 4G (1.6 Mbit/s down, 150 ms round trip) and a processor slowed fourfold. */
import { chromium, type Browser, type BrowserContext, type CDPSession, type Page } from 'playwright-core';
import { startBrowser } from '../tools/browser';

const SLOW_4G = { offline: false, latency: 150, downloadThroughput: 1_600_000 / 8, uploadThroughput: 750_000 / 8 };
export const SLOWER = 4;

export async function openBrowser(): Promise<{ browser: Browser; close: () => Promise<void> }> {
  const server = await startBrowser();
  const browser = await chromium.connect(server.wsEndpoint());
  return { browser, close: () => server.close() };
}

interface Wish {
  readonly network: boolean;
  readonly processor: boolean;
  /** nothing is kept for use without a network, which would fetch the whole site beside the page */
  readonly keepsNothing?: boolean;
}

/** Opens a fresh phone and hands over its page; nothing is cached from before. */
export async function onPhone<T>(
  browser: Browser,
  { network, processor, keepsNothing }: Wish,
  use: (page: Page, devtools: CDPSession) => Promise<T>,
): Promise<T> {
  const context: BrowserContext = await browser.newContext({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
    deviceScaleFactor: 2,
    serviceWorkers: keepsNothing ? 'block' : 'allow',
  });
  try {
    const page = await context.newPage();
    const devtools = await context.newCDPSession(page);
    if (network) {
      await devtools.send('Network.enable');
      await devtools.send('Network.emulateNetworkConditions', SLOW_4G);
    }
    if (processor) await devtools.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
    return await use(page, devtools);
  } finally {
    await context.close();
  }
}

export const median = (numbers: readonly number[]): number =>
  numbers.toSorted((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? Number.NaN;
