/** Keeps the address of the page in step with a calculator. The only place that writes the address. */
import type { ReadableAtom } from 'nanostores';

/** Browsers refuse more than about a hundred changes of address in half a minute. */
const PAUSE = 300;

/**
 * Reads the link once, then writes every later change with `replaceState`, after a pause in the typing.
 * Returns a function that stops it.
 */
export function syncAddress(load: (tail: string) => void, $tail: ReadableAtom<string>): () => void {
  load(window.location.search);
  let timer: ReturnType<typeof setTimeout> | undefined;
  const stop = $tail.listen((tail) => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      const address = `${window.location.pathname}?${tail}${window.location.hash}`;
      try {
        window.history.replaceState(window.history.state, '', address);
      } catch {
        // A sandboxed frame may not change its address; the link button still gives it.
      }
    }, PAUSE);
  });
  return () => {
    clearTimeout(timer);
    stop();
  };
}
