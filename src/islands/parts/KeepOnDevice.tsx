/** The section that keeps something on this device, once it is known what is kept there already. */
import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { localStorageOrNone } from '../../stores/shared/device-storage';

interface KeepSectionProps<Own> {
  readonly open: (storage: Storage | undefined) => Own;
  /** until when it is known without that, and what keeping it does */
  readonly about: string;
  readonly children: (own: Own) => ComponentChildren;
}

export function KeepSection<Own>({ open, about, children }: KeepSectionProps<Own>) {
  const [own, setOwn] = useState<{ readonly opened: Own } | undefined>(undefined);
  useEffect(() => setOwn({ opened: open(localStorageOrNone()) }), []);
  return (
    <section aria-label="Keep it">
      <h2>Keep it</h2>
      <p>{about}</p>
      {own && children(own.opened)}
    </section>
  );
}

interface KeepRowProps {
  /** "paper"; the button has the id "keep-paper" */
  readonly thing: string;
  readonly disabled: boolean;
  readonly onKeep: () => void;
  /** what came of it */
  readonly said: string;
  /** false where this browser keeps nothing */
  readonly kept: boolean;
  /** beside the button */
  readonly beside?: ComponentChildren;
}

export function KeepRow({ thing, disabled, onKeep, said, kept, beside }: KeepRowProps) {
  return (
    <>
      <div class="button-row">
        <button type="button" id={`keep-${thing}`} class="button" disabled={disabled} onClick={onKeep}>
          Keep this {thing} on this device
        </button>
        {beside}
      </div>
      <p class="field-hint" aria-live="polite">
        {said}
      </p>
      {!kept && (
        <p class="field-hint">
          This browser does not let the page keep anything. The link below holds the {thing} all the same.
        </p>
      )}
    </>
  );
}
