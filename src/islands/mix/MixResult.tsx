/** What to weigh and measure, in figures that can be read across a bench. */
import { useStore } from '@nanostores/preact';
import { keepUnits } from '../../core/base/format';
import type { MixStore } from '../../stores/mix/mix';
import { Warnings } from '../parts/Warnings';
import { Spoken } from '../parts/Spoken';

export function MixResult({ store }: { readonly store: MixStore }) {
  const { answer } = useStore(store.$solved);
  return (
    <>
      <figure class="plate portions-plate">
        <div class="plate-body">
          <dl class="portions">
            {answer.portions.map(({ name, amount, or }) => (
              <div key={name}>
                <dt>{name}</dt>
                <dd>
                  {amount}
                  {or && <span class="cell-note">or {or}</span>}
                </dd>
              </div>
            ))}
          </dl>
        </div>
        <figcaption class="plate-caption">{keepUnits(`${answer.sentence} ${answer.rounding ?? ''}`)}</figcaption>
      </figure>
      <Warnings warnings={answer.warnings} />
      <Spoken text={[answer.sentence, ...answer.warnings].join(' ')} />
    </>
  );
}
