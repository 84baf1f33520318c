/** The questions of one swatch, each with three answers as large as a thumb. A second tap takes an answer back. */
import { OUTCOMES, outcomeOf, type Outcome, type Swatch, type Trial } from '../../core/trial/record';
import type { TrialRun } from '../../stores/trial/run';

const WORDS: Readonly<Record<Outcome, string>> = { pass: 'Pass', partly: 'Partly', fail: 'Fail' };

interface Props {
  readonly run: TrialRun;
  readonly trial: Trial;
  readonly swatch: Swatch;
}

export function Questions({ run, trial, swatch }: Props) {
  return (
    <>
      {trial.questions.map(({ id, text, criterion }) => {
        const chosen = outcomeOf(swatch, id);
        return (
          <fieldset class="run-question" key={id} disabled={swatch.spoiled === true}>
            <legend>{text}</legend>
            <div class="run-answers">
              {OUTCOMES.map((outcome) => (
                <button
                  type="button"
                  key={outcome}
                  class="run-answer"
                  data-outcome={outcome}
                  aria-pressed={chosen === outcome}
                  onClick={() => run.judge(id, outcome)}
                >
                  {WORDS[outcome]}
                </button>
              ))}
            </div>
            {criterion && <p class="field-hint">{criterion}</p>}
          </fieldset>
        );
      })}
    </>
  );
}
