/**
 * Keeps the calculators and what is opened on the reader's device. Where the browser refuses to keep anything (a private window, an address
 * without https), every page works as it does without. Every page carries this, so it holds the least there can be:
 * what says that newer text has come (public/new-text.js) is fetched only then.
 */
interface Extras {
  readonly trustedTypes?: {
    createPolicy(name: string, rules: { createScriptURL(): string }): { createScriptURL(asked: string): string };
  };
  readonly connection?: { readonly saveData?: boolean };
}

const WORKER = `${import.meta.env.BASE_URL}sw.js`;
const NOTICE = `${import.meta.env.BASE_URL}new-text.js`;

export const keepOffline = async (): Promise<void> => {
  try {
    // Who asks their browser to spare data is sent nothing unasked.
    if ((navigator as Extras).connection?.saveData) return;
    // Browsers that guard what may become a script take its address from a policy: this one knows one address.
    const kept = await navigator.serviceWorker.register(
      (window as unknown as Extras).trustedTypes
        ?.createPolicy('open-time', { createScriptURL: () => WORKER })
        .createScriptURL('') ?? WORKER,
    );
    // Without one at work already, what is being fetched is what the page shows.
    const tell = () => kept.active && import(/* @vite-ignore */ NOTICE);
    kept.onupdatefound = tell;
    if (kept.waiting ?? kept.installing) await tell();
  } catch {
    // Refused: nothing is kept, and nothing else changes.
  }
};
