/** Things to know, each with its value and how it is known; and what to look out for. */
import { tied } from '../../core/format';
import type { MixFact } from '../../core/mix-answer';

export function Facts({ caption, facts }: { readonly caption: string; readonly facts: readonly MixFact[] }) {
  return (
    <table class="numbers facts">
      <caption>{caption}</caption>
      <tbody>
        {facts.map(({ label, value, note }) => (
          <tr key={label}>
            <th scope="row">{label}</th>
            <td>
              {tied(value)}
              {note && <span class="cell-note">{tied(note)}</span>}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

export function Warnings({ warnings }: { readonly warnings: readonly string[] }) {
  if (warnings.length === 0) return null;
  return (
    <ul class="warnings" aria-label="Look out">
      {warnings.map((warning) => (
        <li key={warning}>{tied(warning)}</li>
      ))}
    </ul>
  );
}

export interface CautionText {
  readonly title: string;
  readonly text: string;
}

export function Cautions({
  ids,
  texts,
}: {
  readonly ids: readonly string[];
  readonly texts: Readonly<Record<string, CautionText>>;
}) {
  const shown = ids.flatMap((id) => texts[id] ?? []);
  return (
    <>
      {shown.map(({ title, text }) => (
        <div class="caution" role="note" aria-label={`Caution: ${title}`} key={title}>
          <p class="caution-title">Take care: {title}</p>
          <p>{text}</p>
        </div>
      ))}
    </>
  );
}

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
