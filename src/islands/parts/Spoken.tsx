/** Says the answer to those who listen, once the typing has paused; never every keystroke. */
import { useEffect, useRef, useState } from 'preact/hooks';

export function Spoken({ text }: { readonly text: string }) {
  const [said, say] = useState('');
  // The answer that the page opened with is read in its place; only a change is announced.
  const opened = useRef<string | null>(text);
  useEffect(() => {
    if (text === opened.current) return;
    opened.current = null;
    const timer = setTimeout(() => say(text), 900);
    return () => clearTimeout(timer);
  }, [text]);
  return (
    <p class="visually-hidden" aria-live="polite">
      {said}
    </p>
  );
}
