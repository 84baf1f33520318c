/** Rows of pieces, each with its width, height, count and turn-ins. */
import { useStore } from '@nanostores/preact';
import { MOST_PIECES } from '../../core/pieces-link';
import { joinRows, NO_PIECE, splitRows, type PieceText } from '../../core/pieces-text';
import type { CoverStore } from '../../stores/covering';
import { NumberField } from '../parts/Field';
import { useFocusNext } from '../parts/use-focus-next';

interface Props {
  readonly store: CoverStore;
  readonly prefix: string;
}

export function PieceRows({ store, prefix }: Props) {
  const texts = useStore(store.$texts);
  const problems = useStore(store.$problems);
  const rows = splitRows(texts.pieces);
  const focusNext = useFocusNext();
  const idOf = (i: number) => `${prefix}piece-${i}`;
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
      {rows.map((_, i) => (
        <fieldset class="choice-set piece-row" key={i} id={idOf(i)} tabIndex={-1}>
          <legend>Piece {i + 1}</legend>
          <div class="field-row">
            {cell(i, 'wide', 'Width', texts.unit)}
            {cell(i, 'high', 'Height', texts.unit)}
            {cell(i, 'count', 'How many')}
            {cell(i, 'turnIn', 'Turn-in', texts.unit)}
          </div>
          {rows.length > 1 && (
            <button
              type="button"
              class="button-quiet"
              onClick={() => {
                put(rows.filter((_row, j) => j !== i));
                focusNext(idOf(Math.min(i, rows.length - 2)));
              }}
            >
              Take away piece {i + 1}
            </button>
          )}
        </fieldset>
      ))}
      <p class="field-hint">A turn-in is for every side; or give four: top; right; bottom; left.</p>
      {rows.length < MOST_PIECES && (
        <div class="button-row">
          <button
            type="button"
            class="button-quiet"
            onClick={() => {
              put([...rows, NO_PIECE]);
              focusNext(idOf(rows.length));
            }}
          >
            Add a piece
          </button>
        </div>
      )}
    </>
  );
}
