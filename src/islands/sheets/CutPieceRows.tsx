/** Rows of pieces: each with the sheet it is cut from, its size, its number and its grain. */
import { useStore } from '@nanostores/preact';
import { MOST_ROWS } from '../../core/cut-codec';
import { joinCutPieces, NEW_PIECE, splitCutPieces, splitStocks, type CutPieceText } from '../../core/cut-rows';
import { NumberField, SelectField } from '../parts/Field';
import { TextField } from '../parts/TextField';
import { useFocusNext } from '../parts/use-focus-next';
import type { SheetsFieldsProps } from './SheetsFields';

const GRAINS = [
  { value: 'height', text: 'its height' },
  { value: 'width', text: 'its width' },
  { value: 'either', text: 'either' },
];

export function CutPieceRows({ store, prefix }: SheetsFieldsProps) {
  const texts = useStore(store.$texts);
  const problems = useStore(store.$problems);
  const rows = splitCutPieces(texts.pieces);
  const focusNext = useFocusNext();
  const idOf = (i: number) => `${prefix}piece-${i}`;
  const sheets = splitStocks(texts.stocks).map(({ name }, i) => ({
    value: String(i + 1),
    text: name.trim() || `sheet ${i + 1}`,
  }));
  const { unit } = texts;
  const whole = problems.find(({ field }) => field === 'pieces')?.message;
  const save = (next: readonly CutPieceText[]) => store.set('pieces', joinCutPieces(next));
  return (
    <>
      <h2 id={`${prefix}pieces`} tabIndex={-1}>
        The pieces you need
      </h2>
      <p class="field-hint">
        For one kit. The grain stays as you say: a piece is turned only when it may run either way.
      </p>
      {whole && <p class="field-error">{whole}</p>}
      {rows.map((row, i) => {
        const bound = (cell: keyof CutPieceText) => {
          const change = (text: string) => save(rows.map((one, j) => (j === i ? { ...one, [cell]: text } : one)));
          return {
            id: `${prefix}piece-${i}-${cell}`,
            value: row[cell],
            error: problems.find(({ field }) => field === `piece-${i}-${cell}`)?.message,
            onText: change,
            onPick: change,
          };
        };
        return (
          <fieldset class="choice-set piece-row" key={i} id={idOf(i)} tabIndex={-1}>
            <legend>Piece {i + 1}</legend>
            <div class="field-row">
              <TextField {...bound('name')} label="Its name" most={28} />
              <SelectField {...bound('stock')} label="Cut from" options={sheets} />
            </div>
            <div class="field-row tight">
              <NumberField {...bound('wide')} label="Width" unit={unit} />
              <NumberField {...bound('high')} label="Height" unit={unit} />
              <NumberField {...bound('count')} label="Number" />
            </div>
            <div class="field-row piece-end">
              <SelectField {...bound('grain')} label="Grain along" options={GRAINS} />
              <button
                type="button"
                class="button-quiet"
                onClick={() => {
                  save(rows.filter((_row, j) => j !== i));
                  focusNext(idOf(Math.min(i, rows.length - 2)), `${prefix}pieces`);
                }}
              >
                Take away piece {i + 1}
              </button>
            </div>
          </fieldset>
        );
      })}
      {rows.length < MOST_ROWS ? (
        <div class="button-row">
          <button
            type="button"
            class="button-quiet"
            onClick={() => {
              save([...rows, NEW_PIECE]);
              focusNext(idOf(rows.length));
            }}
          >
            Add a piece
          </button>
        </div>
      ) : (
        <p class="field-hint">One plan takes at most {MOST_ROWS} kinds of piece.</p>
      )}
    </>
  );
}
