/**
 * Starts the Chromium that drives the built site: the one that comes with the npm packages, else the
 * one CHROME_PATH names, else one that is installed.
 */
import { existsSync, statfsSync } from 'node:fs';
import path from 'node:path';
import bundled from '@sparticuz/chromium';
import { chromium, type Browser, type BrowserServer } from 'playwright-core';

// The bundled package's own default switches turn web security off, so they are not used.
const SWITCHES = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
];

/** Where processes share memory on Linux, and how much of it two dozen pages may want, bytes. */
const SHARED = '/dev/shm';
const ENOUGH = 1e9;

/**
 * Playwright has the browser's processes share what they paint in files on the disk, since some containers have little
 * shared memory. Where there is enough, a page takes a twelfth less of the processor without that.
 */
function sharesMemory(): boolean {
  if (!existsSync(SHARED)) return false;
  const { bavail, bsize } = statfsSync(SHARED);
  return bavail * bsize > ENOUGH;
}

const launched = (executablePath: string, more: readonly string[] = []) => ({
  executablePath,
  args: [...SWITCHES, ...more],
  headless: true,
  ...(sharesMemory() && { ignoreDefaultArgs: ['--disable-dev-shm-usage'] }),
});

const NAMES = ['google-chrome', 'google-chrome-stable', 'chromium', 'chromium-browser', 'chrome', 'msedge'];
const USUAL_PLACES = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

function installed(): string | undefined {
  const folders = (process.env['PATH'] ?? '').split(path.delimiter).filter(Boolean);
  const onPath = folders.flatMap((folder) =>
    NAMES.flatMap((name) => [path.join(folder, name), path.join(folder, `${name}.exe`)]),
  );
  return [...onPath, ...USUAL_PLACES].find((file) => existsSync(file));
}

/** Each way to find a browser, in the order in which they are tried. */
const WAYS: readonly (readonly [string, () => string | undefined | Promise<string>])[] = [
  ['the browser in the npm package', () => bundled.executablePath()],
  ['CHROME_PATH', () => process.env['CHROME_PATH']],
  ['an installed Chrome or Chromium', installed],
];

/** The first of them for which `use` does not throw. */
async function withFirst<T>(use: (executablePath: string) => Promise<T>): Promise<T> {
  const tried: string[] = [];
  for (const [name, find] of WAYS) {
    try {
      const executablePath = await find();
      if (!executablePath) tried.push(`${name}: none`);
      else return await use(executablePath);
    } catch (problem) {
      tried.push(`${name}: ${String(problem).split('\n')[0]}`);
    }
  }
  throw new Error(
    `No browser could be started for the site tests.\n  ${tried.join('\n  ')}\n` +
      'Install Chrome or Chromium, or set CHROME_PATH to the full path of one, and run the tests again.',
  );
}

/** Where a browser that starts is found: for a process of its own that drives one by `startAt`. */
export const findBrowser = (): Promise<string> =>
  withFirst(async (executablePath) => {
    await (await startAt(executablePath)).close();
    return executablePath;
  });

/** Driven from the process that starts it: no message goes by way of another. It ends with that process. */
export const startAt = (executablePath: string): Promise<Browser> => chromium.launch(launched(executablePath));

export const startBrowser = (): Promise<BrowserServer> =>
  withFirst((executablePath) => chromium.launchServer(launched(executablePath)));

/** For a program that speaks to the browser by itself, on a port. */
export const startBrowserAt = (port: number): Promise<Browser> =>
  withFirst((executablePath) => chromium.launch(launched(executablePath, [`--remote-debugging-port=${port}`])));
