/** Sending an answer on: the link, the print, the code. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { nextTurn } from '../../stores/shared/precompute';
import { QrCode } from './QrCode';

interface Props {
  /** of the field with the link */
  readonly id: string;
  /** path of the calculator's page */
  readonly address: string;
  readonly tail: string;
}

export function SendLink({ id, address, tail }: Props) {
  const [said, say] = useState('');
  const field = useRef<HTMLInputElement>(null);
  const [origin, setOrigin] = useState('');
  const [today, setToday] = useState('');
  useEffect(() => {
    setOrigin(window.location.origin);
    // the first date that a page writes takes a slow phone 40 ms: not in the task in which the answer is drawn
    void nextTurn().then(() => setToday(new Date().toLocaleDateString('en-GB', { dateStyle: 'long' })));
  }, []);
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
    <section class="send-it" aria-label="Send it" data-pagefind-ignore>
      <div>
        <h2>Send it</h2>
        <div class="field">
          <label class="field-label" for={id}>
            Link to exactly this answer
          </label>
          <input
            id={id}
            class="no-print"
            ref={field}
            type="text"
            readOnly
            value={link}
            onFocus={(event) => event.currentTarget.select()}
          />
          <p class="only-print link-text">{link}</p>
          {today && <p class="only-print">Printed on {today}.</p>}
          <p class="field-hint" aria-live="polite">
            {said}
          </p>
        </div>
        <div class="button-row no-print">
          <button type="button" class="button" onClick={() => void copy()}>
            Copy the link
          </button>
          <button type="button" class="button-quiet" onClick={() => window.print()}>
            Print
          </button>
        </div>
      </div>
      {origin && <QrCode text={link} />}
    </section>
  );
}
