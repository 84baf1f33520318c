/** What to look out for in this answer. */
import { tied } from '../../core/plain';

export function Warnings({ warnings }: { readonly warnings: readonly string[] }) {
  if (warnings.length === 0) return null;
  return (
    <div role="group" aria-label="Look out">
      <ul class="warnings">
        {warnings.map((warning) => (
          <li key={warning}>{tied(warning)}</li>
        ))}
      </ul>
    </div>
  );
}
