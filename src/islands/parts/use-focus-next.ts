/** For lists that grow and shrink: a row that goes takes the focus with it, unless it is handed on. */
import { useLayoutEffect, useRef } from 'preact/hooks';

/** Gives a function that names ids by preference; once the list is drawn anew, the first that is there gets the focus. */
export function useFocusNext(): (...ids: readonly string[]) => void {
  const wanted = useRef<readonly string[]>([]);
  useLayoutEffect(() => {
    if (wanted.current.length === 0) return;
    const found = wanted.current.map((id) => document.getElementById(id)).find((element) => element !== null);
    wanted.current = [];
    found?.focus();
  });
  return (...ids) => {
    wanted.current = ids;
  };
}
