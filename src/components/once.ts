/** Remembers for the whole build what was worked out: pages and lessons ask for the same few things over and over. */
export function once<K, T>(nameOf: (asked: K) => string, work: (asked: K) => T): (asked: K) => T {
  const known = new Map<string, { readonly gave: T }>();
  return (asked) => {
    const name = nameOf(asked);
    const found = known.get(name) ?? { gave: work(asked) };
    known.set(name, found);
    return found.gave;
  };
}
