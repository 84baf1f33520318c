/** The answer in one card: the word, what to do, how and for how long, and the chance of each thing holding. */
import { useStore } from '@nanostores/preact';
import type { ComponentChildren } from 'preact';
import { aboutAsGood, answerSentence, marginSaid, VERDICT_WORDS } from '../../core/choose/answer-words';
import type { Ranked } from '../../core/choose/finding';
import { methodInWords } from '../../core/choose/method-words';
import { chanceInTen, durationSpan } from '../../core/base/format';
import { MATTERS } from '../../core/choose/ranking';
import type { Thing } from '../../core/joint/bench';
import type { ChooseStore } from '../../stores/choose/choose';
import { ChanceRule } from '../parts/ChanceRule';
import { Spoken } from '../parts/Spoken';

/** What must hold, in the order of the work, as a list of chances calls it. */
export const THING_WORDS: readonly (readonly [Thing, string])[] = [
  ['spread', 'It spreads'],
  ['reach', 'It stays open while you brush'],
  ['place', 'You can place it in time'],
  ['lift', 'It lifts clean'],
  ['grab', 'Its edges stay down'],
  ['strike', 'Nothing comes through'],
  ['bond', 'It holds'],
  ['flat', 'It stays flat'],
];

/** The things that matter to this task and method. */
export const thingsFor = ({ weights }: Ranked): typeof THING_WORDS =>
  THING_WORDS.filter(([thing]) => weights[thing] >= MATTERS);

export function AnswerSpoken({ store }: { readonly store: ChooseStore }) {
  const best = useStore(store.$choices)[0]!;
  return <Spoken text={`${VERDICT_WORDS[best.verdict]}. ${answerSentence(best, store.catalogue)}`} />;
}

interface AnswerProps {
  readonly store: ChooseStore;
  /** a clock for the time that the sentence names */
  readonly clock?: ComponentChildren;
}

export function Answer({ store, clock }: AnswerProps) {
  const choices = useStore(store.$choices);
  const best = choices[0]!;
  const job = useStore(store.$job);
  const { p10, p90 } = best.openSeconds;
  const near = aboutAsGood(choices, store.catalogue);
  return (
    <>
      <div class="verdict" data-verdict={best.verdict}>
        <h2 class="verdict-word">{VERDICT_WORDS[best.verdict]}</h2>
        <p class="verdict-why">{answerSentence(best, store.catalogue)}</p>
        {near && <p class="field-hint">{near}</p>}
      </div>
      {best.verdict !== 'refused' && (
        <>
          {clock}
          <p class="field-hint">
            How: glue on {methodInWords(best.method, job, store.catalogue)}.
            {best.method.coat && <> What you brush first stays open for {durationSpan(p10, p90)}.</>} The chances, done
            this way:
          </p>
          <ul class="chance-list">
            {thingsFor(best).map(([thing, label]) => (
              <ChanceRule
                key={thing}
                label={label}
                chance={best.chances[thing]}
                note={marginSaid(best.margins[thing])}
              />
            ))}
          </ul>
          <p class="field-hint margin-hint">
            Margin: strength available ÷ strength needed. Below 1, expect it to fail.
          </p>
          {best.other && (
            <p class="field-hint">
              Another way does about as well ({chanceInTen(best.other.chance)}): glue on{' '}
              {methodInWords(best.other.method, job, store.catalogue)}.
            </p>
          )}
        </>
      )}
    </>
  );
}
