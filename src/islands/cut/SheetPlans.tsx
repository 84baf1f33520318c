/** Every different sheet: its drawing, its cuts in order, and what it yields. */
import type { SheetAnswer, StockAnswer } from '../../core/cut/stock-answer';
import type { LengthUnit } from '../../core/base/length-text';
import { keepUnits } from '../../core/base/format';
import { SheetPlate } from './SheetPlate';

interface Props {
  readonly stocks: readonly StockAnswer[];
  readonly unit: LengthUnit;
}

export function SheetPlans({ stocks, unit }: Props) {
  return (
    <>
      {stocks.map(({ name, sheets }, i) => (
        <section key={i}>
          <h2>Cutting the {name}</h2>
          {sheets.map((sheet, j) => (
            <OneSheet key={j} sheet={sheet} unit={unit} />
          ))}
        </section>
      ))}
      <p class="field-hint">
        In the drawings a number in a piece is its row in your list, a number at a line is the step that cuts it.
        Unmarked ground is left over.
      </p>
    </>
  );
}

function OneSheet({ sheet, unit }: { readonly sheet: SheetAnswer; readonly unit: string }) {
  const { title, label, drawing, steps, rows, offcut } = sheet;
  return (
    <div class="sheet-cut">
      <h3>{title}</h3>
      <figure class="plate">
        <div class="plate-body">
          <SheetPlate drawing={drawing} label={label} />
        </div>
        <figcaption class="plate-caption">{keepUnits(offcut)}</figcaption>
      </figure>
      <div>
        {steps.length === 0 && <p>There is nothing to cut: the sheet is the piece.</p>}
        <h4>The cuts, in order</h4>
        <ol class="steps">
          {steps.map(({ number, text }) => (
            <li key={number}>{keepUnits(text)}</li>
          ))}
        </ol>
        <details class="sheet-yields">
          <summary>What this sheet yields</summary>
          <table class="numbers">
            <caption>What this sheet yields, sizes in {unit}</caption>
            <thead>
              <tr>
                <th scope="col">Piece</th>
                <th scope="col" class="n">
                  Number
                </th>
                <th scope="col" class="n">
                  Size
                </th>
                <th scope="col">Lies</th>
              </tr>
            </thead>
            <tbody>
              {rows.map(({ number, name, count, size, lies }) => (
                <tr key={number}>
                  <th scope="row">
                    {number} {name}
                  </th>
                  <td class="n">{count}</td>
                  <td class="n">{size}</td>
                  <td>{lies}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </details>
      </div>
    </div>
  );
}
