/** What would help, each reckoned anew; and what the bow rests on. */
import { useStore } from '@nanostores/preact';
import { useState } from 'preact/hooks';
import { keepUnits } from '../../core/base/format';
import { bowWords } from '../../core/flat/words';
import type { FlatPlan } from '../../core/flat/plan';
import type { FlatStore } from '../../stores/flat/flat';
import { Fold } from '../parts/Fold';
import { Facts } from '../parts/Facts';

interface Props {
  readonly store: FlatStore;
  /** id of the answer, which is shown once a remedy has been tried */
  readonly answerId: string;
}

export function FlatRemedies({ store, answerId }: Props) {
  const { answer, plan } = useStore(store.$solved);
  const [before, keep] = useState<FlatPlan>();
  const put = (next: FlatPlan, last: FlatPlan | undefined) => {
    keep(last);
    store.take(next);
    document.getElementById(answerId)?.focus();
  };
  return (
    <section>
      <h2>What helps</h2>
      {before && (
        <p class="no-print">
          <button type="button" class="button" onClick={() => put(before, undefined)}>
            Back to what it was
          </button>
        </p>
      )}
      <table class="numbers remedies">
        <caption>
          One thing changed, all else as it is: the larger bow, later, eight times in ten. Now it is{' '}
          {bowWords(answer.bows.later[answer.direction])}.
        </caption>
        <tbody>
          {answer.remedies.map(({ what, note, bow, plan: changed }) => (
            <tr key={what}>
              <th scope="row">
                {what}
                {note && <span class="cell-note">{keepUnits(note)}</span>}
              </th>
              <td>
                {bowWords(bow)}
                <button
                  type="button"
                  class="button-quiet no-print"
                  aria-label={`Try this: ${what}`}
                  onClick={() => put(changed, before ?? plan)}
                >
                  Try this
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

export function FlatFactRows({ store }: { readonly store: FlatStore }) {
  const { answer } = useStore(store.$solved);
  return (
    <Fold title="Behind the figures">
      <Facts caption="Each with how it is known" facts={answer.facts} />
    </Fold>
  );
}
