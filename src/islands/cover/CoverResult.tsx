/** How much to have in hand, as a range with the figure to buy; and the pieces it was reckoned from. */
import { useStore } from '@nanostores/preact';
import { figure, plain, span, tied } from '../../core/format';
import { inUnit } from '../../core/length-text';
import type { CoverStore } from '../../stores/covering';
import { Facts, Warnings } from '../parts/Facts';
import { PiecesPlate } from '../parts/PiecesPlate';
import { RangePlate } from '../parts/RangePlate';
import { Spoken } from '../parts/Spoken';

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

export function CoverDetails({ store }: Pick<Props, 'store'>) {
  const { answer, plan } = useStore(store.$solved);
  return (
    <div class="compare">
      <section>
        <h2>The pieces</h2>
        <table class="numbers">
          <caption>Without turn-ins; the area with them, in {plan.unit} and m²</caption>
          <thead>
            <tr>
              <th scope="col">Piece</th>
              <th scope="col" class="n">
                Size
              </th>
              <th scope="col" class="n">
                Number
              </th>
              <th scope="col" class="n">
                Area
              </th>
            </tr>
          </thead>
          <tbody>
            {answer.rows.map(({ name, piece, squareMetres }, i) => (
              <tr key={i}>
                <th scope="row">{name ?? `piece ${i + 1}`}</th>
                <td class="n">
                  {inUnit(piece.widthMm, plan.unit)} × {inUnit(piece.heightMm, plan.unit)}
                </td>
                <td class="n">{piece.count}</td>
                <td class="n">{figure(squareMetres)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <section>
        <h2>Behind the figure</h2>
        <Facts caption="Each with how it is known" facts={answer.facts} />
      </section>
    </div>
  );
}
