/** The lists of the workshop sheet: what to buy, what to lay out, what to do when. */
import { keepUnits } from '../../core/base/format';
import type { Handout } from '../../core/class/handout';
import type { ClassSheet } from '../../core/class/sheet';
import { Fold } from '../parts/Fold';
import { SlipTimer } from '../parts/SlipTimer';
import { Spoken } from '../parts/Spoken';
import { Warnings } from '../parts/Warnings';

interface Props {
  readonly answer: ClassSheet;
}
interface WithSlip extends Props {
  /** how long the largest piece can be moved, where that is known and leaves time for a clock */
  readonly slip: Handout['slip'];
}

export function ClassResult({ answer, slip, warnings }: WithSlip & { readonly warnings: readonly string[] }) {
  return (
    <>
      <p class="verdict-why">{keepUnits(answer.sentence)}</p>
      {slip && <SlipTimer {...slip} />}
      <Warnings warnings={warnings} />
      <Spoken text={[answer.sentence, ...warnings].join(' ')} />
    </>
  );
}

export function Shopping({ answer }: Props) {
  return (
    <>
      <Items caption="To buy" items={answer.materials} />
      <Fold title="To lay out">
        <Items caption="For everybody together" items={answer.tools} />
      </Fold>
    </>
  );
}

function Items({ caption, items }: { readonly caption: string; readonly items: ClassSheet['materials'] }) {
  return (
    <table class="numbers facts items">
      <caption>{caption}</caption>
      <tbody>
        {items.map(({ what, amount, buy, note }) => (
          <tr key={what}>
            <th scope="row">
              {keepUnits(what)}
              {note && <span class="cell-note">{keepUnits(note)}</span>}
            </th>
            <td class="n">{keepUnits(buy ?? amount)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

export function Schedule({ answer, slip }: WithSlip) {
  return (
    <Fold title="What to do when">
      <section class="schedule">
        <table class="numbers">
          <caption>Reckoned backwards from the class; how long cutting takes is from memory</caption>
          <thead>
            <tr>
              <th scope="col">When</th>
              <th scope="col">What</th>
            </tr>
          </thead>
          <tbody>
            {answer.schedule.map(({ when, what }) => (
              <tr key={when + what}>
                <th scope="row">{when}</th>
                <td>{keepUnits(what)}</td>
              </tr>
            ))}
          </tbody>
        </table>
        {slip && <SlipTimer {...slip} />}
      </section>
    </Fold>
  );
}
