/** What was found of the bench, beside what is usual. */
import { keepUnits } from '../../core/base/format';
import type { BenchAnswer } from '../../core/bench/answer';
import type { BenchQuantity } from '../../core/bench/own-bench';
import { Spoken } from '../parts/Spoken';
import { Warnings } from '../parts/Warnings';

const NAMES: Readonly<Record<BenchQuantity, string>> = {
  coat: 'Wet coat',
  drinks: 'How it drinks',
  solids: 'Solids',
  grabs: 'Grabs at solids of',
};

export function BenchResult({ answer }: { readonly answer: BenchAnswer }) {
  return (
    <>
      <p class="verdict-why">{keepUnits(answer.sentence)}</p>
      <Warnings warnings={answer.warnings} />
      {answer.found.length > 0 && (
        <section class="scroll-box" tabIndex={0} aria-label="What was measured, a wide table">
          <table class="numbers bench-found">
            <caption>
              ± holds 95 times in 100. The calculators reckon with the measurement and with what is usual, each by how
              sure it is.
            </caption>
            <thead>
              <tr>
                <th scope="col">What</th>
                <th scope="col">Measured</th>
                <th scope="col">Reckoned with</th>
                <th scope="col">Without it</th>
              </tr>
            </thead>
            <tbody>
              {answer.found.map(({ quantity, name, measured, now, before, note }) => (
                <tr key={quantity}>
                  <th scope="row">
                    {NAMES[quantity]}
                    <span class="cell-note">{name}</span>
                    {note && <span class="cell-note">{keepUnits(note)}</span>}
                  </th>
                  <td data-label="Measured">{keepUnits(measured)}</td>
                  <td data-label="Reckoned with">{keepUnits(now)}</td>
                  <td data-label="Without it">{keepUnits(before)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
      <Spoken text={[answer.sentence, ...answer.warnings].join(' ')} />
    </>
  );
}
