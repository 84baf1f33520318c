/**
 * Makes each page a kilobyte smaller as it is sent, and its policy tighter: Astro names in every page the hash of each
 * script and style of the whole site, some forty that nothing can squeeze. A page here allows the few that stand in it:
 * scripts only where Astro names them, and its styles, some of which (a component's in a lesson) Astro does not name.
 */
import { createHash } from 'node:crypto';

const POLICY = /<meta http-equiv="content-security-policy"[^>]*>/;
const SCRIPT = /<script\b[^>]*>([\s\S]*?)<\/script>/g;
const STYLE = /<style\b[^>]*>([\s\S]*?)<\/style>/g;
const HASH = / 'sha256-([^']+)'/g;

const hashesIn = (html: string, elements: RegExp): ReadonlySet<string> =>
  new Set([...html.matchAll(elements)].map(([, text = '']) => createHash('sha256').update(text).digest('base64')));

export function withOwnHashes(html: string): string {
  const scripts = hashesIn(html, SCRIPT);
  const styles = [...hashesIn(html, STYLE)].map((hash) => ` 'sha256-${hash}'`).join('');
  const allowed = (policy: string) => policy.replace(HASH, (said, hash: string) => (scripts.has(hash) ? said : ''));
  return html.replace(POLICY, (policy) => allowed(policy).replace("style-src 'self'", (said) => said + styles));
}
