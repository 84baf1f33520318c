/** Rows of pieces, each with its width, height, count and turn-ins. */
import { useStore } from '@nanostores/preact';
import { MOST_PIECES } from '../../core/pieces-link';
import { joinRows, NO_PIECE, splitRows, type PieceText } from '../../core/pieces-text';
import type { CoverStore } from '../../stores/covering';
import { NumberField } from '../parts/Field';
import { GrowingRows } from '../parts/GrowingRows';

interface Props {
  readonly store: CoverStore;
  readonly prefix: string;
}

export function PieceRows({ store, prefix }: Props) {
  const texts = useStore(store.$texts);
  const problems = useStore(store.$problems);
  const rows = splitRows(texts.pieces);
  const put = (next: readonly PieceText[]) => store.set('pieces', joinRows(next));
  const cell = (i: number, part: keyof PieceText, label: string, unit?: string) => {
    const field = `piece-${i}-${part}`;
    return (
      <NumberField
        id={prefix + field}
        label={label}
        unit={unit}
        value={rows[i]![part]}
        error={problems.find((problem) => problem.field === field)?.message}
        onText={(text) => put(rows.map((row, j) => (j === i ? { ...row, [part]: text } : row)))}
      />
    );
  };
  return (
    <>
      <p class="field-hint">A turn-in is for every side; or give four: top; right; bottom; left.</p>
      <GrowingRows
        count={rows.length}
        most={MOST_PIECES}
        id={`${prefix}piece-`}
        name="Piece"
        takeWords="Take away piece"
        addWords="Add a piece"
        frame="choice-set piece-row"
        onTake={(i) => put(rows.filter((_row, j) => j !== i))}
        onAdd={() => put([...rows, NO_PIECE])}
      >
        {(i, take) => (
          <>
            <div class="field-row">
              {cell(i, 'wide', 'Width', texts.unit)}
              {cell(i, 'high', 'Height', texts.unit)}
              {cell(i, 'count', 'How many')}
              {cell(i, 'turnIn', 'Turn-in', texts.unit)}
            </div>
            {take}
          </>
        )}
      </GrowingRows>
    </>
  );
}
