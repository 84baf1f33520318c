// @ts-check
/**
 * Runs in the service worker, written into it as text. A page that is open while the site changes may still ask for
 * scripts and parts of the search index that the new site has no more: these are put aside before the new
 * worker takes over. Names that carry a hash never change what they hold, so old and new lie side by side.
 */

/**
 * @param {{ store: string, from: string, hashed: RegExp, current: readonly string[], most: number }} what `store`: name
 *   of the cache; `from`: another, besides that of the worker, out of which the new worker drops files; `hashed`:
 *   addresses whose content is fixed by their name; `current`: those that the new site holds; `most`: how many are put
 *   aside at most, the oldest going first
 */
export function keepEarlier({ store, from, hashed, current, most }) {
  const worker = /** @type {any} */ (self);
  const scope = worker.registration.scope;
  const needed = new Set(current.map((name) => new URL(name, scope).href));

  const putAside = async () => {
    const isOurs = (/** @type {string} */ name) =>
      name === from || (name.includes('-precache-') && name.endsWith(`-${scope}`));
    const names = (await caches.keys()).filter(isOurs);
    const aside = await caches.open(store);
    for (const name of names) {
      const cache = await caches.open(name);
      for (const request of await cache.keys()) {
        if (!hashed.test(request.url) || needed.has(request.url)) continue;
        const held = await cache.match(request);
        if (held) await aside.put(request, held);
      }
    }
    const all = await aside.keys();
    for (const request of all.slice(0, Math.max(0, all.length - most))) await aside.delete(request);
  };
  // no room to put anything aside is no reason to refuse the new text
  worker.addEventListener('install', (/** @type {any} */ event) => event.waitUntil(putAside().catch(() => undefined)));
}
