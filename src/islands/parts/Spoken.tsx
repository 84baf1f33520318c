/** Says the answer to those who listen, once the typing has paused; never every keystroke. */
import { useEffect, useRef, useState } from 'preact/hooks';

export function Spoken({ text }: { readonly text: string }) {
  const [said, say] = useState('');
  const first = useRef(true);
  useEffect(() => {
    // The answer that the page opened with is read in its place; only a change is announced.
    if (first.current) {
      first.current = false;
      return;
    }
    const timer = setTimeout(() => say(text), 900);
    return () => clearTimeout(timer);
  }, [text]);
  return (
    <p class="visually-hidden" aria-live="polite">
      {said}
    </p>
  );
}
