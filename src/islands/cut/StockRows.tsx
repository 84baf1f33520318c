/** Rows of stock: each kind of sheet with its size, grain, trim and price. */
import type { CutFieldsProps } from './props';
import { useStore } from '@nanostores/preact';
import { MOST_STOCKS } from '../../core/cut/codec';
import { joinStocks, NEW_STOCK, splitStocks, type StockText } from '../../core/cut/rows';
import type { LengthUnit } from '../../core/base/length-text';
import { SHEET_SIZES, sizeTyped, typedSize } from '../../core/cut/sheet-sizes';
import { NumberField, SelectField } from '../parts/Field';
import { GrowingRows } from '../parts/GrowingRows';
import { fieldCells, changed } from '../parts/rows';
import { TextField } from '../parts/TextField';

const SIZES = [
  { value: 'own', text: 'a size of its own' },
  ...SHEET_SIZES.map(({ id, name }) => ({ value: id, text: name })),
];
const GRAINS = [
  { value: 'long', text: 'long side' },
  { value: 'short', text: 'short side' },
  { value: 'none', text: 'neither' },
];

export function StockRows({ store, prefix }: CutFieldsProps) {
  const texts = useStore(store.$texts);
  const problems = useStore(store.$problems);
  const rows = splitStocks(texts.stocks);
  const unit = texts.unit as LengthUnit;
  const whole = problems.find(({ field }) => field === 'stocks')?.message;
  const save = (next: readonly StockText[]) => store.set('stocks', joinStocks(next));
  const bound = fieldCells({ prefix, name: 'stock', rows, problems, put: save });
  return (
    <>
      <h2 id={`${prefix}stocks`} tabIndex={-1}>
        The sheets you have
      </h2>
      {whole && <p class="field-error">{whole}</p>}
      <GrowingRows
        count={rows.length}
        most={MOST_STOCKS}
        id={`${prefix}stock-`}
        name="Sheet"
        takeWords="Remove sheet"
        addWords="Add a sheet"
        frame="choice-set piece-row"
        onTake={store.removeStock}
        onAdd={() => save([...rows, { ...NEW_STOCK, ...typedSize('500-700-mm', unit) }])}
      >
        {(i, take) => (
          <>
            <div class="field-row name-size">
              <TextField {...bound(i, 'name')} label="Its name" most={28} />
              <SelectField
                id={`${prefix}stock-${i}-size`}
                label="Its size"
                value={sizeTyped(rows[i]!.wide, rows[i]!.high, unit)}
                options={SIZES}
                onPick={(id) => save(changed(rows, i, typedSize(id, unit) ?? {}))}
              />
            </div>
            <div class="field-row tight">
              <NumberField {...bound(i, 'wide')} label="Width" unit={unit} />
              <NumberField {...bound(i, 'high')} label="Height" unit={unit} />
              <NumberField {...bound(i, 'trim')} label="Trim" unit={unit} />
            </div>
            <div class="field-row">
              <SelectField {...bound(i, 'grain')} label="Grain along" options={GRAINS} />
              <NumberField {...bound(i, 'price')} label="Price of one" placeholder="leave blank" />
            </div>
            {take}
          </>
        )}
      </GrowingRows>
    </>
  );
}
