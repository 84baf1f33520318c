/** What could not be read in a link, and when its sender saw other figures. */
export function LinkSaid({
  dropped,
  other,
}: {
  readonly dropped: readonly string[];
  readonly other?: readonly number[] | undefined;
}) {
  if (dropped.length === 0 && !other) return null;
  return (
    <div class="problem-list" role="status">
      {dropped.length > 0 && (
        <p>
          Part of this link could not be read and was left at its usual value: <strong>{dropped.join(', ')}</strong>.
        </p>
      )}
      {other && (
        <p>
          Whoever sent this link saw other figures, beginning with <strong>{other.slice(0, 2).join(' and ')}</strong>.
          The reckoning has been changed since; today’s answer stands below.
        </p>
      )}
    </div>
  );
}
