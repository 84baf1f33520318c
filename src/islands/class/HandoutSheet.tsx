/** The page each student is given: the thing, its pieces, how long the glue waits, and the way back to the answer. */
import { useEffect, useState } from 'preact/hooks';
import { keepUnits } from '../../core/base/format';
import type { ClassLaying } from '../../core/class/laying';
import type { ClassPlan } from '../../core/class/plan';
import type { ClassSheet } from '../../core/class/sheet';
import { MeasuredPlate } from '../make/MeasuredPlate';
import { QrCode } from '../parts/QrCode';
import { SlipTimer } from '../parts/SlipTimer';

interface Props {
  readonly answer: ClassSheet;
  /** none while it is worked out */
  readonly laying: ClassLaying | undefined;
  /** what is said meanwhile */
  readonly toCome: string;
  readonly plan: ClassPlan;
  readonly choose: string;
  readonly lessons: readonly { readonly title: string; readonly path: string }[];
  /** what can hurt, and what to do, each in a line */
  readonly dangers: readonly string[];
}

export function HandoutSheet({ answer, laying, toCome, plan, choose, lessons, dangers }: Props) {
  const [origin, setOrigin] = useState('');
  useEffect(() => setOrigin(window.location.origin), []);
  const { project, title } = answer;
  const link = laying && `${choose}?${laying.chooserTail}`;
  const [picture] = project.pictures;
  return (
    <section class="handout" aria-labelledby="handout-title">
      <h2 id="handout-title">For each student: {title.toLowerCase()}</h2>
      <p>
        {laying ? (
          <>
            <strong>{keepUnits(laying.handout.glue)}</strong> {laying.handout.verdict}.
          </>
        ) : (
          toCome
        )}
      </p>
      {laying?.handout.slip && <SlipTimer {...laying.handout.slip} />}
      <div class="handout-columns">
        {picture && (
          <figure class="plate">
            <div class="plate-body">
              <MeasuredPlate picture={picture} />
            </div>
            <figcaption class="plate-caption">
              {picture.title}, in {plan.unit}.
            </figcaption>
          </figure>
        )}
        <div class="handout-links">
          {origin && link && <QrCode text={origin + link} />}
          <div>
            {link && (
              <p>
                <a class="no-spell" href={link}>
                  Your paper and glue in the chooser
                </a>
                , as it was worked out for your class.
              </p>
            )}
            <ul class="plain-list">
              {lessons.map(({ title: lesson, path }) => (
                <li key={path}>
                  <a class="no-spell" href={path}>
                    {lesson}
                  </a>
                </li>
              ))}
            </ul>
          </div>
        </div>
      </div>
      <div class="handout-work">
        <table class="numbers">
          <caption>In your kit: width × height in {plan.unit}</caption>
          <tbody>
            {project.rows.map(({ name, size, count, from }) => (
              <tr key={name}>
                <th scope="row">
                  {name}
                  <span class="cell-note">{from}</span>
                </th>
                <td class="n">
                  {count} × {size}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
        <div class="handout-care">
          <p class="caution-title">Take care</p>
          <ul>
            {dangers.map((danger) => (
              <li key={danger}>{danger}.</li>
            ))}
          </ul>
        </div>
        <ol>
          {project.steps.map((step) => (
            <li key={step}>{keepUnits(step)}</li>
          ))}
        </ol>
      </div>
    </section>
  );
}
