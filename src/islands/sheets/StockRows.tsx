/** Rows of stock: each kind of sheet with its size, grain, trim and price. */
import { useStore } from '@nanostores/preact';
import { MOST_STOCKS } from '../../core/cut-codec';
import { joinStocks, NEW_STOCK, splitStocks, type StockText } from '../../core/cut-rows';
import type { LengthUnit } from '../../core/length-text';
import { SHEET_SIZES, sizeTyped, typedSize } from '../../core/sheet-sizes';
import { NumberField, SelectField } from '../parts/Field';
import { TextField } from '../parts/TextField';
import { useFocusNext } from '../parts/use-focus-next';
import type { SheetsFieldsProps } from './SheetsFields';

const SIZES = [
  { value: 'own', text: 'a size of its own' },
  ...SHEET_SIZES.map(({ id, name }) => ({ value: id, text: name })),
];
const GRAINS = [
  { value: 'long', text: 'long side' },
  { value: 'short', text: 'short side' },
  { value: 'none', text: 'neither' },
];

export function StockRows({ store, prefix }: SheetsFieldsProps) {
  const texts = useStore(store.$texts);
  const problems = useStore(store.$problems);
  const rows = splitStocks(texts.stocks);
  const focusNext = useFocusNext();
  const idOf = (i: number) => `${prefix}stock-${i}`;
  const unit = texts.unit as LengthUnit;
  const whole = problems.find(({ field }) => field === 'stocks')?.message;
  const put = (i: number, change: Partial<StockText>) =>
    store.set('stocks', joinStocks(rows.map((row, j) => (j === i ? { ...row, ...change } : row))));
  return (
    <>
      <h2 id={`${prefix}stocks`} tabIndex={-1}>
        The sheets you have
      </h2>
      {whole && <p class="field-error">{whole}</p>}
      {rows.map((row, i) => {
        const bound = (cell: keyof StockText) => ({
          id: `${prefix}stock-${i}-${cell}`,
          value: row[cell],
          error: problems.find(({ field }) => field === `stock-${i}-${cell}`)?.message,
          onText: (text: string) => put(i, { [cell]: text }),
          onPick: (text: string) => put(i, { [cell]: text }),
        });
        return (
          <fieldset class="choice-set piece-row" key={i} id={idOf(i)} tabIndex={-1}>
            <legend>Sheet {i + 1}</legend>
            <div class="field-row">
              <TextField {...bound('name')} label="Its name" most={28} />
              <SelectField
                id={`${prefix}stock-${i}-size`}
                label="Its size"
                value={sizeTyped(row.wide, row.high, unit)}
                options={SIZES}
                onPick={(id) => put(i, typedSize(id, unit) ?? {})}
              />
            </div>
            <div class="field-row tight">
              <NumberField {...bound('wide')} label="Width" unit={unit} />
              <NumberField {...bound('high')} label="Height" unit={unit} />
              <NumberField {...bound('trim')} label="Trim" unit={unit} />
            </div>
            <div class="field-row">
              <SelectField {...bound('grain')} label="Grain along" options={GRAINS} />
              <NumberField {...bound('price')} label="Price of one" placeholder="leave empty" />
            </div>
            {rows.length > 1 && (
              <button
                type="button"
                class="button-quiet"
                onClick={() => {
                  store.removeStock(i);
                  focusNext(idOf(Math.min(i, rows.length - 2)));
                }}
              >
                Take away sheet {i + 1}
              </button>
            )}
          </fieldset>
        );
      })}
      {rows.length < MOST_STOCKS && (
        <div class="button-row">
          <button
            type="button"
            class="button-quiet"
            onClick={() => {
              store.set('stocks', joinStocks([...rows, { ...NEW_STOCK, ...typedSize('500-700-mm', unit) }]));
              focusNext(idOf(rows.length));
            }}
          >
            Add a sheet
          </button>
        </div>
      )}
    </>
  );
}
