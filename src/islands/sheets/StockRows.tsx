/** Rows of stock: each kind of sheet with its size, grain, trim and price. */
import { useStore } from '@nanostores/preact';
import { MOST_STOCKS } from '../../core/cut-codec';
import { joinStocks, NEW_STOCK, splitStocks, type StockText } from '../../core/cut-rows';
import type { LengthUnit } from '../../core/length-text';
import { SHEET_SIZES, sizeTyped, typedSize } from '../../core/sheet-sizes';
import { NumberField, SelectField } from '../parts/Field';
import { TextField } from '../parts/TextField';
import type { SheetsFieldsProps } from './SheetsFields';

const SIZES = [
  { value: 'own', text: 'a size of its own' },
  ...SHEET_SIZES.map(({ id, name }) => ({ value: id, text: name })),
];
const GRAINS = [
  { value: 'long', text: 'along the longer side' },
  { value: 'short', text: 'along the shorter side' },
  { value: 'none', text: 'none to mind' },
];

export function StockRows({ store, prefix }: SheetsFieldsProps) {
  const texts = useStore(store.$texts);
  const problems = useStore(store.$problems);
  const rows = splitStocks(texts.stocks);
  const unit = texts.unit as LengthUnit;
  const put = (i: number, change: Partial<StockText>) =>
    store.set('stocks', joinStocks(rows.map((row, j) => (j === i ? { ...row, ...change } : row))));
  return (
    <>
      <h2>The sheets you have</h2>
      {rows.map((row, i) => {
        const bound = (cell: keyof StockText) => ({
          id: `${prefix}stock-${i}-${cell}`,
          value: row[cell],
          error: problems.find(({ field }) => field === `stock-${i}-${cell}`)?.message,
          onText: (text: string) => put(i, { [cell]: text }),
          onPick: (text: string) => put(i, { [cell]: text }),
        });
        return (
          <fieldset class="choice-set piece-row" key={i}>
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
              <NumberField {...bound('wide')} label="Width" unit={unit} />
              <NumberField {...bound('high')} label="Height" unit={unit} />
              <SelectField {...bound('grain')} label="Grain runs" options={GRAINS} />
              <NumberField {...bound('trim')} label="Trim each edge" unit={unit} />
              <NumberField {...bound('price')} label="Price of one" placeholder="leave empty" />
            </div>
            {rows.length > 1 && (
              <button type="button" class="button-quiet" onClick={() => store.removeStock(i)}>
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
            onClick={() =>
              store.set('stocks', joinStocks([...rows, { ...NEW_STOCK, ...typedSize('500-700-mm', unit) }]))
            }
          >
            Add a sheet
          </button>
        </div>
      )}
    </>
  );
}
