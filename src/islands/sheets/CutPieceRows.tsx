/** Rows of pieces: each with the sheet it is cut from, its size, its number and its grain. */
import { useStore } from '@nanostores/preact';
import { MOST_ROWS } from '../../core/cut-codec';
import { joinCutPieces, NEW_PIECE, splitCutPieces, splitStocks, type CutPieceText } from '../../core/cut-rows';
import { NumberField, SelectField } from '../parts/Field';
import { TextField } from '../parts/TextField';
import type { SheetsFieldsProps } from './SheetsFields';

const GRAINS = [
  { value: 'height', text: 'along its height' },
  { value: 'width', text: 'along its width' },
  { value: 'either', text: 'either way' },
];

export function CutPieceRows({ store, prefix }: SheetsFieldsProps) {
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
  return (
    <>
      <h2 id={`${prefix}pieces`}>The pieces you need</h2>
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
          <fieldset class="choice-set piece-row" key={i}>
            <legend>Piece {i + 1}</legend>
            <div class="field-row">
              <TextField {...bound('name')} label="Its name" most={28} />
              <SelectField {...bound('stock')} label="Cut from" options={sheets} />
              <NumberField {...bound('wide')} label="Width" unit={unit} />
              <NumberField {...bound('high')} label="Height" unit={unit} />
              <NumberField {...bound('count')} label="How many" />
              <SelectField {...bound('grain')} label="Its grain" options={GRAINS} />
            </div>
            <button type="button" class="button-quiet" onClick={() => save(rows.filter((_row, j) => j !== i))}>
              Take away piece {i + 1}
            </button>
          </fieldset>
        );
      })}
      {rows.length < MOST_ROWS ? (
        <div class="button-row">
          <button type="button" class="button-quiet" onClick={() => save([...rows, NEW_PIECE])}>
            Add a piece
          </button>
        </div>
      ) : (
        <p class="field-hint">One plan takes at most {MOST_ROWS} kinds of piece.</p>
      )}
    </>
  );
}
