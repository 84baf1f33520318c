/** One trial read: its facts, and question by question the table, the words, the comparison and the curve. */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Trial } from '../../core/trial/record';
import { weightWords } from '../../core/trial/words';
import { createReading, levelOf, type QuestionRead, type Reading } from '../../stores/trial/reading';
import { SelectField } from '../parts/Field';
import { CompareGlues } from './Compare';
import { HeatTable } from './HeatTable';
import { ThresholdPlate } from './ThresholdPlate';

export function Findings({ trial: whole }: { readonly trial: Trial }) {
  const [hold, setHold] = useState('');
  const seconds = hold === '' ? undefined : Number(hold);
  // A trial that is stored again unchanged need not be read again.
  const trial = useMemo(
    // One hold time alone is the trial without the other swatches.
    () =>
      seconds === undefined
        ? whole
        : { ...whole, swatches: whole.swatches.filter((swatch) => swatch.hold === seconds) },
    [JSON.stringify(whole), hold],
  );
  const level = levelOf(whole, seconds !== undefined);
  const { $reading, stop } = useMemo(() => createReading(trial, level), [trial]);
  useEffect(() => stop, [stop]);
  const reading = useStore($reading);
  return (
    <article class="findings" aria-busy={!reading.whole}>
      <h2 class="findings-name">{trial.name}</h2>
      {reading.facts.map((fact) => (
        <p key={fact} class={fact.startsWith('An invented') ? 'invented' : undefined}>
          {fact}
        </p>
      ))}
      {whole.holds.length > 1 && (
        <SelectField
          id="read-hold"
          label="Hold times"
          hint={
            seconds === undefined
              ? undefined
              : 'One hold at a time is another look at the same swatches, so each such look needs a clearer difference before it says so.'
          }
          value={hold}
          options={[
            { value: '', text: 'All together' },
            ...whole.holds.map((one) => ({ value: String(one), text: `Only ${one} s` })),
          ]}
          onPick={setHold}
        />
      )}
      <p class="field-hint" role="status">
        {reading.whole
          ? ''
          : 'Still working: every two adhesives are being compared on every question. The tables below are complete.'}
      </p>
      {reading.questions.map((read) => (
        <QuestionPart key={read.question.id} trial={trial} read={read} whole={reading.whole} level={level} />
      ))}
      {reading.whole?.notes.map((note) => (
        <p key={note}>{note}</p>
      ))}
    </article>
  );
}

/** A table of more cells is laid out only when it comes near the screen. */
const LARGE = 100;

interface PartProps {
  readonly trial: Trial;
  readonly read: QuestionRead;
  readonly whole: Reading['whole'];
  readonly level: number;
}

/** Drawn anew only when its own question has come on: a page may hold thousands of cells. */
function QuestionPart({ trial, read, whole, level }: PartProps) {
  return useMemo(
    () => <QuestionBody trial={trial} read={read} claims={whole?.claims ?? 0} level={level} />,
    [trial, read, whole === undefined],
  );
}

const Sentences = ({ of }: { readonly of: readonly string[] }) => (
  <ul class="takeaways">
    {of.map((text) => (
      <li key={text}>{text}</li>
    ))}
  </ul>
);

function QuestionBody({ trial, read, claims, level }: Omit<PartProps, 'whole'> & { readonly claims: number }) {
  const { question, cells, summary } = read;
  // the others are folded: on a phone each curve is half a screen
  const isFirst = trial.questions[0]?.id === question.id;
  const curve = (weighed: NonNullable<typeof summary>['weighed']) => (
    <ThresholdPlate
      id={question.id}
      atOnce={trial.demo === true}
      series={weighed.map((one) => ({
        id: one.glue,
        name: trial.glues.find(({ id }) => id === one.glue)?.name ?? one.glue,
        points: one.observations,
        words: weightWords(one, level),
      }))}
    />
  );
  const table = useMemo(() => <HeatTable trial={trial} cells={cells} question={question.text} />, [cells]);
  return (
    <section aria-labelledby={`q-${question.id}`} data-large={cells.length > LARGE ? '' : undefined}>
      <h3 id={`q-${question.id}`}>{question.text}</h3>
      {question.criterion && <p class="field-hint">{question.criterion}</p>}
      {summary && <Sentences of={summary.results} />}
      {table}
      {summary && (
        <details>
          <summary>How sure is that?</summary>
          <Sentences of={summary.takeaways} />
          <p class="field-hint">Ranges are Clopper and Pearson’s, at 95 %, each by itself.</p>
        </details>
      )}
      {summary && trial.glues.length > 1 && (
        <CompareGlues trial={trial} question={question.id} compared={summary.compared} claims={claims} level={level} />
      )}
      {summary &&
        summary.weighed.length > 0 &&
        (isFirst ? (
          curve(summary.weighed)
        ) : (
          <details class="fold">
            <summary>By weight, as a curve</summary>
            {curve(summary.weighed)}
          </details>
        ))}
    </section>
  );
}
