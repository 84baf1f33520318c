/** A form, folded to its line on a phone where there is an answer to see first. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';

interface Props {
  /** what stands in the form, in a few words */
  readonly line: string;
  readonly children: ComponentChildren;
}

/** As the page has it before it wakes (components/FoldForm.astro). */
const isFolded = () => document.querySelector('.form-fold:not([open])') !== null;

export function FormFold({ line, children }: Props) {
  const [open] = useState(() => typeof document === 'undefined' || !isFolded());
  return (
    <details class="form-fold" open={open}>
      <summary>
        <span class="form-line">{line}</span> <span class="form-change">change</span>
      </summary>
      {children}
    </details>
  );
}
