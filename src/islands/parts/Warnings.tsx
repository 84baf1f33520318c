/** What to look out for in this answer. */
import { keepUnits } from '../../core/base/format';

export function Warnings({ warnings }: { readonly warnings: readonly string[] }) {
  if (warnings.length === 0) return null;
  return (
    <div role="group" aria-label="Look out">
      <ul class="warnings">
        {warnings.map((warning) => (
          <li key={warning}>{keepUnits(warning)}</li>
        ))}
      </ul>
    </div>
  );
}
