/** Things to know, each with its value and how it is known. */
import { tied } from '../../core/plain';
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
