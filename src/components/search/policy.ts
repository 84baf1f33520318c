/**
 * Browsers that guard what may become a script (Trusted Types) take the address of a worker from a policy only. The
 * search library hands over plain text, so the policy is the one that such text falls to; it knows one address. Its
 * name stands in the site's content security policy (astro.config.mjs).
 */
interface Policies {
  createPolicy(name: 'default', rules: { createScriptURL(asked: string): string }): unknown;
}

/** Lets `address` alone be run as a worker. May be called once in a page. */
export function allowWorker(address: string): void {
  const { trustedTypes } = window as unknown as { trustedTypes?: Policies };
  const whole = new URL(address, location.href).href;
  trustedTypes?.createPolicy('default', {
    createScriptURL: (asked) => {
      if (new URL(asked, location.href).href !== whole) throw new TypeError(`not a script of this site: ${asked}`);
      return whole;
    },
  });
}
