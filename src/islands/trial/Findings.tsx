/** One trial read: its facts, and question by question the table, the words, the comparison and the curve. */
import { useState } from 'preact/hooks';
import { observationsOf } from '../../core/trial/analysis';
import type { Trial } from '../../core/trial/record';
import { summaryOf, type QuestionSummary } from '../../core/trial/summary';
import { SelectField } from '../parts/Field';
import { Compare } from './Compare';
import { HeatTable } from './HeatTable';
import { ThresholdPlate } from './ThresholdPlate';

export function Findings({ trial: whole }: { readonly trial: Trial }) {
  const [hold, setHold] = useState('');
  const seconds = hold === '' ? undefined : Number(hold);
  // One hold time alone is the trial without the other swatches.
  const trial =
    seconds === undefined ? whole : { ...whole, swatches: whole.swatches.filter((swatch) => swatch.hold === seconds) };
  const { facts, questions } = summaryOf(trial);
  return (
    <article class="findings">
      <h2 class="findings-name">{trial.name}</h2>
      {facts.map((fact) => (
        <p key={fact} class={fact.startsWith('An invented') ? 'invented' : undefined}>
          {fact}
        </p>
      ))}
      {whole.holds.length > 1 && (
        <SelectField
          id="read-hold"
          label="Hold times"
          value={hold}
          options={[
            { value: '', text: 'All together' },
            ...whole.holds.map((one) => ({ value: String(one), text: `Only ${one} s` })),
          ]}
          onPick={setHold}
        />
      )}
      {questions.map((summary) => (
        <QuestionPart key={summary.question.id} trial={trial} summary={summary} />
      ))}
    </article>
  );
}

function QuestionPart({ trial, summary }: { readonly trial: Trial; readonly summary: QuestionSummary }) {
  const { question, cells, takeaways } = summary;
  const weighed = trial.glues.flatMap((glue) => {
    const points = observationsOf(trial, question.id, glue.id);
    return new Set(points.map(({ grammage }) => grammage)).size >= 3 ? [{ glue, points }] : [];
  });
  return (
    <section aria-labelledby={`q-${question.id}`}>
      <h3 id={`q-${question.id}`}>{question.text}</h3>
      {question.criterion && <p class="field-hint">{question.criterion}</p>}
      <ul class="takeaways">
        {takeaways.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      <HeatTable trial={trial} cells={cells} question={question.text} />
      {trial.glues.length > 1 && <Compare trial={trial} question={question.id} />}
      {weighed.length > 0 && <ThresholdPlate id={question.id} series={weighed} />}
    </section>
  );
}
