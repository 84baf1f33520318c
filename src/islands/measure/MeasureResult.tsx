/** What is known of the sheet, its grain as a picture, and its weight in every grade. */
import { figure, formatAmount, keepUnits } from '../../core/base/format';
import type { GrainDrawing } from '../../core/measure/grain-picture';
import type { MeasureAnswer } from '../../core/measure/answer';
import { Fold } from '../parts/Fold';
import { Facts } from '../parts/Facts';
import { Spoken } from '../parts/Spoken';
import { Warnings } from '../parts/Warnings';

export function MeasureResult({ answer }: { readonly answer: MeasureAnswer }) {
  return (
    <>
      <figure class="plate">
        <div class="plate-body">
          <GrainPicture picture={answer.picture} />
        </div>
        <figcaption class="plate-caption">{keepUnits(answer.sentence)}</figcaption>
      </figure>
      <Warnings warnings={answer.warnings} />
      <Facts caption="What is known of it" facts={answer.facts} />
      <Spoken text={[answer.sentence, ...answer.warnings].join(' ')} />
    </>
  );
}

function GrainPicture({ picture: { width, height, fibres, says } }: { readonly picture: GrainDrawing }) {
  return (
    <svg viewBox={`-10 -10 ${width + 20} ${height + 20}`} class="drawing grain-drawing" role="img" aria-label={says}>
      <rect class="ink fill-paper" width={width} height={height} />
      {fibres.map(([x1, y1, x2, y2], i) => (
        <line key={i} class="ink-soft" x1={x1} y1={y1} x2={x2} y2={y2} />
      ))}
    </svg>
  );
}

export function PoundsTable({ answer }: { readonly answer: MeasureAnswer }) {
  return (
    <Fold title="The same weight in other words">
      <table class="numbers">
        <caption>Pounds of 500 basic sheets, by grade</caption>
        <thead>
          <tr>
            <th scope="col">Grade</th>
            <th scope="col">lb</th>
          </tr>
        </thead>
        <tbody>
          {answer.weights.map(({ name, pounds }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{formatAmount(pounds)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>
        {keepUnits(`1000 sheets of 788 × 1091 mm weigh ${figure(answer.thousand, 3)} kg, as Japanese mills count.`)}
      </p>
    </Fold>
  );
}
