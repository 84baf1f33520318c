/** How to make the mix, what it will be like, and the drawings of it. */
import { useStore } from '@nanostores/preact';
import { keepUnits } from '../../core/base/format';
import type { MixStore } from '../../stores/mix/mix';
import { CurvePlate } from '../parts/CurvePlate';
import { Fold } from '../parts/Fold';
import { Facts } from '../parts/Facts';
import { SlipTimer } from '../parts/SlipTimer';
import { SlipPlate } from '../parts/SlipPlate';

export function MixSteps({ store }: { readonly store: MixStore }) {
  const { answer } = useStore(store.$solved);
  return (
    <section>
      <h2>How to do it</h2>
      <ol class="steps">
        {answer.steps.map((step) => (
          <li key={step}>{keepUnits(step)}</li>
        ))}
      </ol>
    </section>
  );
}

export function MixFacts({ store }: { readonly store: MixStore }) {
  const { answer } = useStore(store.$solved);
  return (
    <Fold title="What it will be like">
      <Facts caption="Each with how it is known" facts={answer.facts} />
    </Fold>
  );
}

export function MixPlates({ store }: { readonly store: MixStore }) {
  const { answer } = useStore(store.$solved);
  return (
    <>
      {answer.curve && <CurvePlate {...answer.curve} />}
      {answer.slip && (
        <figure class="plate">
          <div class="plate-body">
            <SlipPlate {...answer.slip} />
          </div>
          <figcaption class="plate-caption">
            How long the sheet can be moved, by the chooser’s model: an A5 piece on binder’s board. Eight times in ten
            it lies within the bar; the dot is the middle.
          </figcaption>
          <SlipTimer {...answer.slip.rows.at(-1)!} />
        </figure>
      )}
    </>
  );
}
