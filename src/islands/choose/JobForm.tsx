/** The form, folded to one line on a phone once there is a job, so that the answer comes first. */
import { useStore } from '@nanostores/preact';
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { jobInBrief } from '../../core/choose/job-words';
import type { ChoosePageStore } from '../../stores/choose/choose-page';

interface Props {
  readonly store: ChoosePageStore;
  readonly children: ComponentChildren;
}

/** As the page has it before it wakes (components/choose/fold-form.ts). */
const isFolded = () => document.querySelector('.job-form:not([open])') !== null;

/** Where the answer stands beside the form, the form stays open. */
export function foldOnPhone(): void {
  const form = document.querySelector<HTMLDetailsElement>('.job-form');
  if (form && window.matchMedia('(max-width: 55.99rem)').matches) form.open = false;
}

export function JobForm({ store, children }: Props) {
  const job = useStore(store.$job);
  const [open] = useState(() => typeof document === 'undefined' || !isFolded());
  return (
    <details class="job-form" open={open}>
      <summary>
        <span class="job-line">{jobInBrief(job, store.catalogue)}</span> <span class="job-change">change</span>
      </summary>
      {children}
    </details>
  );
}
