/** The answer: the word, the sentence, the chance of each thing holding, and the time there is to move the sheet. */
import { useStore } from '@nanostores/preact';
import { adhesiveName, answerSentence, VERDICT_WORDS } from '../../core/choose/answer-words';
import { durationSpan, figure } from '../../core/base/format';
import { secondsNeeded } from '../../core/choose/sampling';
import type { Chances } from '../../core/choose/tally';
import type { ChooseStore } from '../../stores/choose/choose';
import { ChanceRule } from '../parts/ChanceRule';
import { SlipPlate } from '../parts/SlipPlate';
import { Spoken } from '../parts/Spoken';

export const THINGS: readonly (readonly [keyof Chances, string])[] = [
  ['spread', 'It spreads'],
  ['lift', 'It lifts clean'],
  ['bond', 'It holds'],
  ['flat', 'It stays flat'],
];

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
  return (
    <>
      <div class="verdict" data-verdict={best.verdict}>
        <h2 class="verdict-word">{VERDICT_WORDS[best.verdict]}</h2>
        <p class="verdict-why">{answerSentence(best, store.catalogue)}</p>
      </div>
      {best.verdict !== 'refused' && (
        <>
          <ul class="chance-list">
            {THINGS.map(([key, label]) => (
              <ChanceRule
                key={key}
                label={label}
                chance={best.chances[key]}
                note={`margin ${figure(best.margins[key])}`}
              />
            ))}
          </ul>
          <p class="field-hint">Margin: what there is over what is needed. At 1 it just holds.</p>
          <figure class="plate">
            <div class="plate-body">
              <SlipPlate
                neededSeconds={needed}
                rows={shown.map(({ adhesiveId, slipSeconds: { p10, p50, p90 } }) => ({
                  name: adhesiveName(adhesiveId, store.catalogue),
                  low: p10,
                  middle: p50,
                  high: p90,
                }))}
              />
            </div>
            <figcaption class="plate-caption">
              How long the sheet can be moved after laying, first four places. Eight times in ten it lies within the
              bar; the dot is the middle.
            </figcaption>
          </figure>
        </>
      )}
    </>
  );
}
