/**
 * Browsers that guard what may become a script (Trusted Types) take the address of a worker from a policy only, and
 * markup from none on this site. Each policy knows one address.
 */
interface Policies {
  createPolicy(
    name: string,
    rules: { createScriptURL(asked: string): string },
  ): { createScriptURL(asked: string): string };
}

/**
 * Lets `address` alone be run as a worker. `default` serves code that is not ours and hands over plain text; both names
 * stand in the site's content security policy (astro.config.mjs). Gives back what the browser takes for the address.
 */
export function allowWorker(name: 'open-time' | 'default', address: string): string {
  const { trustedTypes } = window as unknown as { trustedTypes?: Policies };
  const whole = new URL(address, location.href).href;
  const policy = trustedTypes?.createPolicy(name, {
    createScriptURL: (asked) => {
      if (new URL(asked, location.href).href !== whole) throw new TypeError(`not a script of this site: ${asked}`);
      return whole;
    },
  });
  return policy?.createScriptURL(address) ?? whole;
}
