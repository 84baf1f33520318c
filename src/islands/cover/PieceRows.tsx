/** Rows of pieces, each with its width, height, count and turn-ins. */
import { useStore } from '@nanostores/preact';
import { MOST_PIECES } from '../../core/cover/pieces-link';
import { joinRows, NO_PIECE, splitRows, type PieceText } from '../../core/cover/pieces-text';
import type { CoverStore } from '../../stores/cover/cover';
import { NumberField } from '../parts/Field';
import { GrowingRows } from '../parts/GrowingRows';
import { fieldCells, without } from '../parts/rows';

interface Props {
  readonly store: CoverStore;
  readonly prefix: string;
}

export function PieceRows({ store, prefix }: Props) {
  const texts = useStore(store.$texts);
  const problems = useStore(store.$problems);
  const rows = splitRows(texts.pieces);
  const put = (next: readonly PieceText[]) => store.set('pieces', joinRows(next));
  const bound = fieldCells({ prefix, name: 'piece', rows, problems, put });
  return (
    <>
      <p class="field-hint">A turn-in is for every side; or give four: top; right; bottom; left.</p>
      <GrowingRows
        count={rows.length}
        most={MOST_PIECES}
        id={`${prefix}piece-`}
        name="Piece"
        takeWords="Remove piece"
        addWords="Add a piece"
        frame="choice-set piece-row"
        onTake={(i) => put(without(rows, i))}
        onAdd={() => put([...rows, NO_PIECE])}
      >
        {(i, take) => (
          <>
            <div class="field-row">
              <NumberField {...bound(i, 'wide')} label="Width" unit={texts.unit} />
              <NumberField {...bound(i, 'high')} label="Height" unit={texts.unit} />
              <NumberField {...bound(i, 'count')} label="How many" />
              <NumberField {...bound(i, 'turnIn')} label="Turn-in" unit={texts.unit} />
            </div>
            {take}
          </>
        )}
      </GrowingRows>
    </>
  );
}
