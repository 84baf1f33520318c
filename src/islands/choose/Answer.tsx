/** The answer: the word, the sentence, the chance of each thing holding, and the time there is. */
import { useStore } from '@nanostores/preact';
import { adhesiveName, answerSentence, VERDICT_WORDS } from '../../core/choose/answer-words';
import type { Ranked } from '../../core/choose/finding';
import { methodInWords } from '../../core/choose/method-words';
import { chanceInTen, durationSpan, figure } from '../../core/base/format';
import { MATTERS } from '../../core/choose/ranking';
import { secondsNeeded } from '../../core/choose/sampling';
import type { Thing } from '../../core/joint/bench';
import type { ChooseStore } from '../../stores/choose/choose';
import { ChanceRule } from '../parts/ChanceRule';
import { SlipPlate } from '../parts/SlipPlate';
import { Spoken } from '../parts/Spoken';

/** What must hold, in the order of the work, as a list of chances calls it. */
export const THINGS: readonly (readonly [Thing, string])[] = [
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
export const thingsFor = ({ weights }: Ranked): typeof THINGS => THINGS.filter(([thing]) => weights[thing] >= MATTERS);

/** On a phone the answer stays in view while the fields are filled in. */
export function AnswerStrip({ store, href }: { readonly store: ChooseStore; readonly href: string }) {
  const best = useStore(store.$choices)[0]!;
  return (
    <a class="bench-strip no-print" href={href}>
      <span>
        {VERDICT_WORDS[best.verdict]}: {store.catalogue.adhesives.get(best.adhesiveId)!.short}
      </span>
      <span class="number">{durationSpan(best.slipSeconds.p10, best.slipSeconds.p90)}</span>
    </a>
  );
}

export function AnswerSpoken({ store }: { readonly store: ChooseStore }) {
  const best = useStore(store.$choices)[0]!;
  return <Spoken text={`${VERDICT_WORDS[best.verdict]}. ${answerSentence(best, store.catalogue)}`} />;
}

export function Answer({ store }: { readonly store: ChooseStore }) {
  const choices = useStore(store.$choices);
  const job = useStore(store.$job);
  const best = choices[0]!;
  const needed = secondsNeeded(job);
  const shown = choices.filter((choice) => choice.verdict !== 'ruled-out' && choice.atHand).slice(0, 4);
  const { p10, p90 } = best.openSeconds;
  return (
    <>
      <div class="verdict" data-verdict={best.verdict}>
        <h2 class="verdict-word">{VERDICT_WORDS[best.verdict]}</h2>
        <p class="verdict-why">{answerSentence(best, store.catalogue)}</p>
      </div>
      {best.verdict !== 'refused' && (
        <>
          <p class="field-hint">
            These chances are for this way: glue on {methodInWords(best.method, job, store.catalogue)}.
          </p>
          <ul class="chance-list">
            {thingsFor(best).map(([thing, label]) => (
              <ChanceRule
                key={thing}
                label={label}
                chance={best.chances[thing]}
                note={`margin ${figure(best.margins[thing])}`}
              />
            ))}
          </ul>
          <p class="field-hint">Margin: strength available ÷ strength needed. Below 1, expect it to fail.</p>
          {best.other && (
            <p>
              Another way does about as well ({chanceInTen(best.other.chance)}): glue on{' '}
              {methodInWords(best.other.method, job, store.catalogue)}.
            </p>
          )}
          <p>
            Open time, from the first stroke until what was brushed first no longer sticks:{' '}
            <strong>{durationSpan(p10, p90)}</strong>.
          </p>
          <figure class="plate">
            <div class="plate-body">
              <SlipPlate
                neededSeconds={needed}
                rows={shown.map(({ adhesiveId, slipSeconds }) => ({
                  name: adhesiveName(adhesiveId, store.catalogue),
                  low: slipSeconds.p10,
                  middle: slipSeconds.p50,
                  high: slipSeconds.p90,
                }))}
              />
            </div>
            <figcaption class="plate-caption">
              Slip time: how long the sheet can be moved after laying, first four places. Eight times in ten it lies
              within the bar; the dot is the middle.
            </figcaption>
          </figure>
        </>
      )}
    </>
  );
}
