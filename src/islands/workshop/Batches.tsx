/** Each batch of adhesive: what goes in, and how it is made. */
import { tied } from '../../core/plain';
import type { WorkshopAnswer } from '../../core/workshop-answer';
import { Facts } from '../parts/Facts';

export function Batches({ answer }: { readonly answer: WorkshopAnswer }) {
  return (
    <section>
      <h2>The adhesive</h2>
      {answer.batches.length === 0 && <p>{tied(answer.coverage.sentence)} It is used as it comes.</p>}
      {answer.batches.map(({ mix }, i) => (
        <section key={i}>
          <h3>{answer.batches.length > 1 ? `${i + 1}. ${mix.brief[0]}` : mix.brief[0]}</h3>
          <p>{tied(mix.sentence)}</p>
          <ol>
            {mix.steps.map((step) => (
              <li key={step}>{tied(step)}</li>
            ))}
          </ol>
        </section>
      ))}
      <Facts caption="What it leaves on the work" facts={answer.coverage.facts.slice(0, 4)} />
    </section>
  );
}
