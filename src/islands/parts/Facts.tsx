/** Things to know, each with its value and how it is known. */
import { keepUnits } from '../../core/base/format';
import type { Fact } from '../../core/base/fact';

export function Facts({ caption, facts }: { readonly caption: string; readonly facts: readonly Fact[] }) {
  return (
    <table class="numbers facts">
      <caption>{caption}</caption>
      <tbody>
        {facts.map(({ label, value, note }) => (
          <tr key={label}>
            <th scope="row">{label}</th>
            <td>
              {keepUnits(value)}
              {note && <span class="cell-note">{keepUnits(note)}</span>}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
