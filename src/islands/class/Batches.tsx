/** Each batch of adhesive: what goes in, and how it is made. */
import { keepUnits } from '../../core/base/format';
import type { ClassSheet } from '../../core/class/sheet';
import { Fold } from '../parts/Fold';
import { Facts } from '../parts/Facts';

export function Batches({ answer }: { readonly answer: ClassSheet }) {
  return (
    <Fold title="The adhesive">
      {answer.batches.length === 0 && <p>{keepUnits(answer.coverage.sentence)} It is used as it comes.</p>}
      {answer.batches.map(({ mix }, i) => (
        <section key={i}>
          <h3>{answer.batches.length > 1 ? `${i + 1}. ${mix.brief[0]}` : mix.brief[0]}</h3>
          <p>{keepUnits(mix.sentence)}</p>
          <ol>
            {mix.steps.map((step) => (
              <li key={step}>{keepUnits(step)}</li>
            ))}
          </ol>
        </section>
      ))}
      <Facts caption="What it leaves on the work" facts={answer.coverage.facts.slice(0, 4)} />
    </Fold>
  );
}
