// @ts-check
/**
 * Runs in the service worker, written into it as text. The calculators are kept at the first visit; of the rest of the
 * site what a reader opens is kept as they open it, with all that it needs, and everything once they ask for it. What
 * was kept is brought up to date before a newer worker takes over, so that a page and its scripts stay of one version.
 */

/**
 * @param {{ store: string, fallback: string, together: readonly (readonly string[])[], rest: readonly { url: string, revision: string | null }[] }} what
 *   `store`: name of the cache; `fallback`: page shown in the place of one that is not kept; `together`:
 *   pages of which each leads on to the others, and is of no use without them; `rest`: files that are kept
 *   as they are opened, with the revision of each, null where its name says it
 */
export function restOfSite({ store, fallback, together, rest }) {
  const worker = /** @type {any} */ (self);
  const scope = worker.registration.scope;
  /** How many are fetched at once, so that a page that is being read does not wait for them. */
  const AT_ONCE = 4;
  const WHOLE = new URL('the-whole-site-is-kept', scope).href;
  const revisions = new Map(rest.map(({ url, revision }) => [new URL(url, scope).href, revision]));

  const groups = together.map((group) => group.map((url) => new URL(url, scope).href));

  /** The file that a static host sends for an address. @param {string} address */
  const fileOf = (address) => {
    const { origin, pathname } = new URL(address);
    return origin + pathname.replace(/\/$/, '/index.html');
  };
  /** Under what a file is kept: what another revision holds is another thing. @param {string} file */
  const keyOf = (file) => {
    const revision = revisions.get(file);
    return revision ? `${file}?kept=${revision}` : file;
  };
  /** @param {string} key */
  const fileIn = (key) => key.replace(/\?kept=.*$/, '');

  /** Tells whether it is kept afterwards. @param {Cache} cache @param {string} file @param {Response} answer */
  const keep = async (cache, file, answer) => {
    if (!answer.ok || answer.redirected) return false;
    await cache.put(keyOf(file), answer);
    return true;
  };

  /** Fetches what is not kept yet. Without a network, or without room, it stays away. @param {string} file */
  const bring = async (file) => {
    try {
      const cache = await caches.open(store);
      if (await cache.match(keyOf(file))) return true;
      // by the address that pages name: some hosts send "…/index.html" on to it
      return await keep(cache, file, await fetch(file.replace(/\/index\.html$/, '/'), { cache: 'no-cache' }));
    } catch {
      return false;
    }
  };

  /** @param {Iterable<string>} files @param {(kept: boolean) => void} [told] */
  const bringAll = async (files, told = () => undefined) => {
    const left = [...files];
    const work = async () => {
      for (let file = left.pop(); file !== undefined; file = left.pop()) told(await bring(file));
    };
    await Promise.all(Array.from({ length: AT_ONCE }, work));
  };

  /** Scripts, styles and pictures that a text names, and those that they name in turn. @param {string} file */
  const neededBy = async (file) => {
    const cache = await caches.open(store);
    const found = new Set([file]);
    for (const one of found) {
      if (!/\.(?:html|js|css)$/.test(one) || !(await bring(one))) continue;
      const text = await (await cache.match(keyOf(one)))?.text();
      for (const [, name] of text?.matchAll(/["'(=]([\w./-]+\.(?:js|css|svg|json))\b/g) ?? []) {
        // a list of what a script may fetch names files from the folder of the site
        for (const from of [one, scope]) {
          const named = new URL(/** @type {string} */ (name), from).href;
          if (revisions.has(named)) found.add(named);
        }
      }
    }
    return found;
  };
  /** @param {string} file */
  const keepPage = async (file) => {
    try {
      const mates = groups.find((group) => group.includes(file)) ?? [file];
      for (const page of mates) await bringAll(await neededBy(page));
    } catch {
      // a page that could not be kept is fetched the next time
    }
  };

  /** @param {string} page */
  const inCore = (page) => caches.match(new URL(page, scope).href, { ignoreSearch: true });

  /** Before this worker takes over: what is kept, as it now is, and the pages that are open. */
  const prepare = async () => {
    const cache = await caches.open(store);
    const kept = new Set((await cache.keys()).map(({ url }) => fileIn(url)));
    const whole = await cache.match(WHOLE);
    await bringAll(whole ? revisions.keys() : [...kept].filter((file) => revisions.has(file)));
    const open = await worker.clients.matchAll({ type: 'window', includeUncontrolled: true });
    for (const { url } of open) if (url.startsWith(scope) && revisions.has(fileOf(url))) await keepPage(fileOf(url));
  };
  /** What is kept of an earlier version, where this one is kept too or has no such file. */
  const tidy = async () => {
    const cache = await caches.open(store);
    for (const { url } of await cache.keys()) {
      const file = fileIn(url);
      if (url === WHOLE || url === keyOf(file)) continue;
      if (!revisions.has(file) || (await cache.match(keyOf(file)))) await cache.delete(url);
    }
  };

  const count = async () => {
    const cache = await caches.open(store);
    const keys = new Set((await cache.keys()).map(({ url }) => url));
    const kept = [...revisions.keys()].filter((file) => keys.has(keyOf(file)));
    const pages = kept.filter((file) => file.endsWith('/index.html')).map((file) => file.replace(/index\.html$/, ''));
    return { kept: kept.length, of: revisions.size, pages };
  };
  /** @param {(told: object) => void} tell */
  const keepWhole = async (tell) => {
    const cache = await caches.open(store);
    await cache.put(WHOLE, new Response(''));
    const before = await count();
    const { of } = before;
    let { kept } = before;
    const keys = new Set((await cache.keys()).map(({ url }) => url));
    const missing = [...revisions.keys()].filter((file) => !keys.has(keyOf(file)));
    await bringAll(missing, (done) => {
      if (done) kept += 1;
      tell({ kept, of });
    });
    tell({ ...(await count()), ended: true });
  };

  worker.addEventListener('install', (/** @type {any} */ event) => event.waitUntil(prepare().catch(() => undefined)));
  worker.addEventListener('activate', (/** @type {any} */ event) => event.waitUntil(tidy().catch(() => undefined)));
  worker.addEventListener('message', (/** @type {any} */ event) => {
    const [port] = event.ports;
    const tell = (/** @type {object} */ told) => port?.postMessage(told);
    const failed = () => tell({ failed: true });
    if (event.data?.type === 'KEEP_WHOLE') event.waitUntil(keepWhole(tell).catch(failed));
    if (event.data?.type === 'WHAT_IS_KEPT') event.waitUntil(count().then(tell, failed));
  });

  return {
    /** @param {string} address */
    holds: (address) => revisions.has(fileOf(address)),
    /** @param {Request} request @param {any} event */
    answer: async (request, event) => {
      const file = fileOf(request.url);
      const cache = await caches.open(store);
      const kept = await cache.match(keyOf(file));
      if (kept) return kept;
      try {
        const answer = await fetch(request);
        const copy = answer.clone();
        event.waitUntil(
          keep(cache, file, copy).then(
            (done) => (done && file.endsWith('.html') ? keepPage(file) : undefined),
            () => undefined,
          ),
        );
        return answer;
      } catch (reason) {
        // of an earlier version is better than nothing
        const earlier = await cache.match(file, { ignoreSearch: true });
        const instead = earlier ?? (request.mode === 'navigate' ? await inCore(fallback) : undefined);
        if (instead) return instead;
        throw reason;
      }
    },
  };
}
