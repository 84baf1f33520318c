/** The pieces in numbers, and what stands behind the figure. */
import { useStore } from '@nanostores/preact';
import { figure } from '../../core/base/format';
import { inUnit } from '../../core/base/length-text';
import type { CoverStore } from '../../stores/cover/cover';
import { Fold } from '../parts/Fold';
import { Facts } from '../parts/Facts';
import { PiecesPlate } from '../parts/PiecesPlate';

export function CoverDetails({ store }: { readonly store: CoverStore }) {
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
      <Fold title="Behind the figure">
        <Facts caption="Each with how it is known" facts={answer.facts} />
      </Fold>
    </div>
  );
}

/** The pieces to scale. */
export function CoverPieces({ store }: { readonly store: CoverStore }) {
  const { answer } = useStore(store.$solved);
  return (
    <figure class="plate">
      <div class="plate-body">
        <PiecesPlate rows={answer.rows} />
      </div>
      <figcaption class="plate-caption">
        What gets glue, to one scale:{' '}
        {answer.rows
          .map(
            ({ name, piece }, i) => `${i + 1} ${name ?? 'piece'}${piece.count > 1 ? ` (${piece.count} of them)` : ''}`,
          )
          .join(', ')}
        . Dashed: the turn-ins.
      </figcaption>
    </figure>
  );
}
