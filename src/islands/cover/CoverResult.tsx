/** How much to have in hand, as a range with the figure to buy; and the pieces drawn. */
import { useStore } from '@nanostores/preact';
import { figure, plain, span, tied } from '../../core/format';
import type { CoverStore } from '../../stores/covering';
import { PiecesPlate } from '../parts/PiecesPlate';
import { RangePlate } from '../parts/RangePlate';
import { Spoken } from '../parts/Spoken';
import { Warnings } from '../parts/Warnings';

interface Props {
  readonly store: CoverStore;
  /** path of the mixing calculator */
  readonly mixAddress: string;
}

export function CoverResult({ store, mixAddress }: Props) {
  const { answer } = useStore(store.$solved);
  const mixTail = useStore(store.$mixTail);
  const { low, middle, high } = answer.coverage.mixMillilitres;
  const grams = answer.coverage.mixGrams;
  return (
    <>
      <figure class="plate portions-plate">
        <div class="plate-body">
          <dl class="portions">
            <div>
              <dt>Have in hand</dt>
              <dd>{plain(answer.buyMillilitres, 9)} ml</dd>
            </div>
          </dl>
          <RangePlate low={low} middle={middle} high={high} buy={answer.buyMillilitres} unit="ml" />
        </div>
        <figcaption class="plate-caption">
          {tied(
            `${answer.sentence} Most likely it is about ${figure(middle)} ml, ${span(grams.low, grams.high, 'g')} over the range.`,
          )}
        </figcaption>
      </figure>
      {mixTail && (
        <p class="no-print">
          <a class="button" href={`${mixAddress}?${mixTail}`}>
            Mix this amount
          </a>
        </p>
      )}
      <Warnings warnings={answer.warnings} />
      <figure class="plate">
        <div class="plate-body">
          <PiecesPlate rows={answer.rows} />
        </div>
        <figcaption class="plate-caption">
          What gets glue, to one scale:{' '}
          {answer.rows
            .map(
              ({ name, piece }, i) =>
                `${i + 1} ${name ?? 'piece'}${piece.count > 1 ? ` (${piece.count} of them)` : ''}`,
            )
            .join(', ')}
          . Dashed: the turn-ins.
        </figcaption>
      </figure>
      <Spoken text={[answer.sentence, ...answer.warnings].join(' ')} />
    </>
  );
}
