/** What to cut: drawn with its measures, in a table, and in which order it is made. */
import { useStore } from '@nanostores/preact';
import { keepUnits } from '../../core/base/format';
import type { MakeStore } from '../../stores/make/make';
import { Fold } from '../parts/Fold';
import { Spoken } from '../parts/Spoken';
import { Warnings } from '../parts/Warnings';
import { MeasuredPlate } from './MeasuredPlate';

interface Props {
  readonly store: MakeStore;
}

export function MakeResult({ store }: Props) {
  const { answer } = useStore(store.$solved);
  const [first] = answer.pictures;
  return (
    <>
      <figure class="plate">
        <div class="plate-body">{first && <MeasuredPlate picture={first} />}</div>
        <figcaption class="plate-caption">
          {keepUnits(answer.sentence)} {first?.title}, in {answer.unitWord}.
        </figcaption>
      </figure>
      <Warnings warnings={answer.warnings} />
      <Spoken text={[answer.sentence, ...answer.warnings].join(' ')} />
    </>
  );
}

export function MorePictures({ store }: Props) {
  const { answer } = useStore(store.$solved);
  if (answer.pictures.length < 2) return null;
  return (
    <Fold title="More drawings">
      <div class="compare">
        {answer.pictures.slice(1).map((picture) => (
          <figure class="plate" key={picture.title}>
            <div class="plate-body">
              <MeasuredPlate picture={picture} />
            </div>
            <figcaption class="plate-caption">
              {picture.title}, in {answer.unitWord}.
            </figcaption>
          </figure>
        ))}
      </div>
    </Fold>
  );
}

export function PieceTable({ store }: Props) {
  const { answer, plan } = useStore(store.$solved);
  return (
    <section class="scroll-box" tabIndex={0} aria-label="Pieces to cut">
      <table class="numbers piece-table">
        <caption>
          Width × height in {answer.unitWord} as they are cut, turn-ins included, to the nearest{' '}
          {plan.unit === 'in' ? '32nd' : 'half millimetre'}
        </caption>
        <thead>
          <tr>
            <th scope="col">Piece</th>
            <th scope="col" class="n">
              Cut to
            </th>
            <th scope="col" class="n">
              Number
            </th>
          </tr>
        </thead>
        <tbody>
          {answer.rows.map(({ name, size, count, from }) => (
            <tr key={name}>
              <th scope="row">
                {name}
                <span class="cell-note">{from}</span>
              </th>
              <td class="n">{size}</td>
              <td class="n">{count}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

export function Steps({ store }: Props) {
  const { answer } = useStore(store.$solved);
  return (
    <Fold title="In this order">
      <ol>
        {answer.steps.map((step) => (
          <li key={step}>{keepUnits(step)}</li>
        ))}
      </ol>
    </Fold>
  );
}
