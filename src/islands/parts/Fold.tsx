/** Parts of an answer that are folded until they are asked for. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';

interface Props {
  readonly title: string;
  readonly open?: boolean;
  /** false where paper does without it */
  readonly print?: boolean;
  readonly children: ComponentChildren;
}

/** Folded on the screen, open on paper. */
export function Fold({ title, open = false, print = true, children }: Props) {
  return (
    <details class={print ? 'fold' : 'fold no-print'} open={open}>
      <summary>
        <h2>{title}</h2>
      </summary>
      {children}
    </details>
  );
}

interface FetchedProps {
  readonly title: string;
  /** fetches what stands in it, when it is first opened */
  readonly fetch: () => Promise<ComponentChildren>;
}

/** Fetched when it is opened; paper does without it. */
export function FetchedFold({ title, fetch }: FetchedProps) {
  const [content, setContent] = useState<ComponentChildren>(null);
  const [failed, setFailed] = useState(false);
  const open = async () => {
    try {
      setContent(await fetch());
      setFailed(false);
    } catch {
      setFailed(true);
    }
  };
  return (
    <details
      class="fold fetched no-print"
      onToggle={(event) => {
        if (event.currentTarget.open && content === null) void open();
      }}
    >
      <summary>
        <h2>{title}</h2>
      </summary>
      {content ?? (
        <p>{failed ? 'This part could not be fetched. Close it and open it again to try once more.' : 'On its way.'}</p>
      )}
    </details>
  );
}
