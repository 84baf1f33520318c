/** What this browser lets a page keep. */

/** Reading the property alone throws where storage is forbidden. */
export function localStorageOrNone(): Storage | undefined {
  try {
    return typeof window === 'undefined' ? undefined : window.localStorage;
  } catch {
    return undefined;
  }
}

/** What lasts as long as the tab. */
export function sessionStorageOrNone(): Storage | undefined {
  try {
    return typeof window === 'undefined' ? undefined : window.sessionStorage;
  } catch {
    return undefined;
  }
}

/** Where a bench of one's own is kept, as one text (own-bench.ts). */
export const BENCH_KEY = 'open-time:bench';

/** The text as it is kept, which only `readBench` can judge; empty where there is none. */
export const keptBenchText = (): string => localStorageOrNone()?.getItem(BENCH_KEY) ?? '';
