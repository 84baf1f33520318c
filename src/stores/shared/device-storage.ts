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
