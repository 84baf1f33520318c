/** How many sheets of each stock, and the answer in a sentence. */
import { useStore } from '@nanostores/preact';
import { keepUnits } from '../../core/base/format';
import type { CutStore } from '../../stores/cut/cut';
import { Spoken } from '../parts/Spoken';
import { Warnings } from '../parts/Warnings';

export function CutResult({ store }: { readonly store: CutStore }) {
  const { answer } = useStore(store.$solved);
  return (
    <>
      <figure class="plate portions-plate">
        <div class="plate-body">
          <dl class="portions">
            {answer.stocks.map(({ name, layout }, i) => (
              <div key={i}>
                <dt>Sheets of {name}</dt>
                <dd>{layout.sheets}</dd>
              </div>
            ))}
          </dl>
        </div>
        <figcaption class="plate-caption">{keepUnits(answer.sentence)}</figcaption>
      </figure>
      <Warnings warnings={answer.warnings} />
      <Spoken text={[answer.sentence, ...answer.warnings].join(' ')} />
    </>
  );
}
