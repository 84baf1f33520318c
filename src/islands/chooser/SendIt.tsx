/** Sending the answer on: the link, the print, the code. */
import { useStore } from '@nanostores/preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { ChooserStore } from '../../stores/chooser';
import { QrCode } from '../parts/QrCode';

interface Props {
  readonly store: ChooserStore;
  /** path of the chooser's page */
  readonly address: string;
}

export function SendIt({ store, address }: Props) {
  const tail = useStore(store.$tail);
  const [said, say] = useState('');
  const field = useRef<HTMLInputElement>(null);
  const [origin, setOrigin] = useState('');
  useEffect(() => setOrigin(window.location.origin), []);
  const link = `${origin}${address}?${tail}`;

  const copy = async () => {
    try {
      await navigator.clipboard.writeText(link);
      say('The link is copied.');
    } catch {
      // No clipboard here (an old browser, or not a secure page): leave it selected for the hand to copy.
      field.current?.select();
      say('Copy the selected link.');
    }
  };
  return (
    <div class="send-it">
      <div class="button-row no-print">
        <button type="button" class="button" onClick={() => void copy()}>
          Copy the link
        </button>
        <button type="button" class="button-quiet" onClick={() => window.print()}>
          Print
        </button>
      </div>
      <div class="field no-print">
        <label class="field-label" for="ch-link">
          Link to exactly this answer
        </label>
        <input
          id="ch-link"
          ref={field}
          type="text"
          readOnly
          value={link}
          onFocus={(event) => event.currentTarget.select()}
        />
        <p class="field-hint" aria-live="polite">
          {said}
        </p>
      </div>
      {origin && (
        <div class="send-code">
          <QrCode text={link} />
          <p class="only-print link-text">{link}</p>
        </div>
      )}
    </div>
  );
}
