/**
 * Keeps the whole site on the reader's device. Where the browser refuses to keep anything (a private window, an address
 * without https), every page works as it does without. Every page carries this, so it holds the least there can be:
 * what says that newer text has come (public/new-text.js) is fetched only then.
 */
interface Extras {
  readonly trustedTypes?: { createPolicy(name: string, rules: Policy): Policy };
  readonly navigator: Navigator & { readonly connection?: { readonly saveData?: boolean } };
}
interface Policy {
  createScriptURL(name: string): string;
}

export async function keepOffline(): Promise<void> {
  try {
    const { trustedTypes, navigator } = window as unknown as Extras;
    // Who asks their browser to spare data is not sent the whole site unasked.
    if (navigator.connection?.saveData) return;
    // Browsers that guard what may become a script take its address from a policy: this one knows our own folder.
    const ours: Policy = { createScriptURL: (name) => import.meta.env.BASE_URL + name };
    const policy = trustedTypes?.createPolicy('open-time', ours) ?? ours;
    const kept = await navigator.serviceWorker.register(policy.createScriptURL('sw.js'));
    const tell = () => {
      // Without one at work already, what is being fetched is what the page shows.
      if (!kept.active) return;
      document.body.append(
        Object.assign(document.createElement('script'), { src: policy.createScriptURL('new-text.js') }),
      );
    };
    kept.onupdatefound = tell;
    if (kept.waiting ?? kept.installing) tell();
  } catch {
    // Refused: nothing is kept, and nothing else changes.
  }
}
