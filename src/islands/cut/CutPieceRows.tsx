/** Rows of pieces: each with the sheet it is cut from, its size, its number and its grain. */
import type { CutFieldsProps } from './props';
import { useStore } from '@nanostores/preact';
import { MOST_ROWS } from '../../core/cut/codec';
import { joinCutPieces, NEW_PIECE, splitCutPieces, splitStocks, type CutPieceText } from '../../core/cut/rows';
import { NumberField, SelectField } from '../parts/Field';
import { GrowingRows } from '../parts/GrowingRows';
import { fieldCells, without } from '../parts/rows';
import { TextField } from '../parts/TextField';

const GRAINS = [
  { value: 'height', text: 'its height' },
  { value: 'width', text: 'its width' },
  { value: 'either', text: 'either' },
];

export function CutPieceRows({ store, prefix }: CutFieldsProps) {
  const texts = useStore(store.$texts);
  const problems = useStore(store.$problems);
  const rows = splitCutPieces(texts.pieces);
  const sheets = splitStocks(texts.stocks).map(({ name }, i) => ({
    value: String(i + 1),
    text: name.trim() || `sheet ${i + 1}`,
  }));
  const { unit } = texts;
  const whole = problems.find(({ field }) => field === 'pieces')?.message;
  const save = (next: readonly CutPieceText[]) => store.set('pieces', joinCutPieces(next));
  const bound = fieldCells({ prefix, name: 'piece', rows, problems, put: save });
  return (
    <>
      <h2 id={`${prefix}pieces`} tabIndex={-1}>
        The pieces you need
      </h2>
      <p class="field-hint">
        For one kit. The grain stays as you say: a piece is turned only when it may run either way.
      </p>
      {whole && <p class="field-error">{whole}</p>}
      <GrowingRows
        count={rows.length}
        least={0}
        most={MOST_ROWS}
        id={`${prefix}piece-`}
        name="Piece"
        takeWords="Remove piece"
        addWords="Add a piece"
        frame="choice-set piece-row"
        rest={`${prefix}pieces`}
        full={`One plan takes at most ${MOST_ROWS} kinds of piece.`}
        onTake={(i) => save(without(rows, i))}
        onAdd={() => save([...rows, NEW_PIECE])}
      >
        {(i, take) => (
          <>
            <div class="field-row">
              <TextField {...bound(i, 'name')} label="Its name" most={28} />
              <SelectField {...bound(i, 'stock')} label="Cut from" options={sheets} />
            </div>
            <div class="field-row tight">
              <NumberField {...bound(i, 'wide')} label="Width" unit={unit} />
              <NumberField {...bound(i, 'high')} label="Height" unit={unit} />
              <NumberField {...bound(i, 'count')} label="Number" />
            </div>
            <div class="field-row piece-end">
              <SelectField {...bound(i, 'grain')} label="Grain along" options={GRAINS} />
              {take}
            </div>
          </>
        )}
      </GrowingRows>
    </>
  );
}
