/** The whole ranking, a card for each adhesive: how likely, by which way, how long it slides, and what counts most. */
import { useStore } from '@nanostores/preact';
import { adhesiveName, VERDICT_WORDS } from '../../core/choose/answer-words';
import { chanceInTen, durationSpan } from '../../core/base/format';
import type { Choice } from '../../core/choose/choose';
import { methodInWords } from '../../core/choose/method-words';
import type { ChoosePageStore } from '../../stores/choose/choose-page';

/** What speaks against it most; where nothing does, what speaks for it. */
const weightiest = ({ reasons }: Choice) => (reasons.find((reason) => reason.against) ?? reasons[0])?.text;

export function Ranking({ store }: { readonly store: ChoosePageStore }) {
  const choices = useStore(store.$choices);
  const job = useStore(store.$job);
  return (
    <section>
      <h2>Every adhesive, best first</h2>
      <p class="field-hint">Slip time: eight times in ten within this span.</p>
      <ol class="rank-list">
        {choices.map((choice) => (
          <li key={choice.adhesiveId} data-verdict={choice.verdict}>
            <h3 class="rank-name">{adhesiveName(choice.adhesiveId, store.catalogue)}</h3>
            <p class="rank-verdict">
              {VERDICT_WORDS[choice.verdict]}
              {choice.verdict !== 'ruled-out' && choice.verdict !== 'refused' && `, ${chanceInTen(choice.chance)}`}
              {!choice.atHand && ', not at hand'}
            </p>
            <p>
              Glue on {methodInWords(choice.method, job, store.catalogue)}. Slip time{' '}
              {durationSpan(choice.slipSeconds.p10, choice.slipSeconds.p90)}.
            </p>
            <p>{weightiest(choice)}</p>
          </li>
        ))}
      </ol>
    </section>
  );
}
