/** How much to have in hand, as a range with the figure to buy. */
import { useStore } from '@nanostores/preact';
import { figure, span, formatAmount, keepUnits } from '../../core/base/format';
import type { CoverStore } from '../../stores/cover/cover';
import { RangePlate } from '../parts/RangePlate';
import { Spoken } from '../parts/Spoken';
import { Warnings } from '../parts/Warnings';

interface Props {
  readonly store: CoverStore;
}

export function CoverResult({ store }: Props) {
  const { answer } = useStore(store.$solved);
  const { low, middle, high } = answer.coverage.mixMillilitres;
  const grams = answer.coverage.mixGrams;
  return (
    <>
      <figure class="plate portions-plate">
        <div class="plate-body">
          <dl class="portions">
            <div>
              <dt>Have in hand</dt>
              <dd>{formatAmount(answer.buyMillilitres, 9)} ml</dd>
            </div>
          </dl>
          <RangePlate low={low} middle={middle} high={high} buy={answer.buyMillilitres} unit="ml" />
        </div>
        <figcaption class="plate-caption">
          {keepUnits(
            `${answer.sentence} Most likely it is about ${figure(middle)} ml, ${span(grams.low, grams.high, 'g')} over the range.`,
          )}
        </figcaption>
      </figure>
      <Warnings warnings={answer.warnings} />
      <Spoken text={[answer.sentence, ...answer.warnings].join(' ')} />
    </>
  );
}
