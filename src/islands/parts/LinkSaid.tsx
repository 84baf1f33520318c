/** What could not be read in a link, and (as children) when its sender saw another answer. */
import type { ComponentChildren } from 'preact';

interface Props {
  readonly dropped: readonly string[];
  readonly children?: ComponentChildren;
}

export function LinkSaid({ dropped, children }: Props) {
  // of several children, each may have nothing to say
  if (dropped.length === 0 && ![children].flat().some(Boolean)) return null;
  return (
    <div class="problem-list" role="status">
      {dropped.length > 0 && (
        <p>
          Part of this link could not be read and was left at its usual value: <strong>{dropped.join(', ')}</strong>.
        </p>
      )}
      {children}
    </div>
  );
}

/** For a calculator whose link carries the figures that its sender saw. */
export function OtherFigures({ figures }: { readonly figures: readonly number[] }) {
  return (
    <p>
      Whoever sent this link saw other figures, beginning with <strong>{figures.slice(0, 2).join(' and ')}</strong>. The
      sums have been changed since; today’s answer is below.
    </p>
  );
}
