/** The whole ranking, a card for each adhesive: how likely, by which way, how long it slides, and what counts most. */
import { useStore } from '@nanostores/preact';
import { adhesiveName, VERDICT_WORDS } from '../../core/choose/answer-words';
import { chanceInTen, durationSpan } from '../../core/base/format';
import type { Choice } from '../../core/choose/choose';
import { methodInShort } from '../../core/choose/method-words';
import type { ChooseRestStore } from '../../stores/choose/choose-rest';

/** Shown at once; the others are folded, so that the page of any job stays under six screens of a phone. */
const FIRST = 4;

/** What speaks against it most; where nothing does, what speaks for it. */
const weightiest = ({ reasons }: Choice) => (reasons.find((reason) => reason.against) ?? reasons[0])?.text;

export function Ranking({ store }: { readonly store: ChooseRestStore }) {
  const choices = useStore(store.$told);
  const job = useStore(store.$job);
  const card = (choice: Choice) => (
    <li key={choice.adhesiveId} data-verdict={choice.verdict}>
      <h3 class="rank-name">{adhesiveName(choice.adhesiveId, store.catalogue)}</h3>
      <p class="rank-verdict">
        {VERDICT_WORDS[choice.verdict]}
        {choice.verdict !== 'ruled-out' && choice.verdict !== 'refused' && `, ${chanceInTen(choice.chance)}`}
        {!choice.atHand && ', not at hand'}; slip time {durationSpan(choice.slipSeconds.p10, choice.slipSeconds.p90)}
      </p>
      <p class="rank-how">
        Glue on {methodInShort(choice.method, job, store.catalogue)}. {weightiest(choice)}
      </p>
    </li>
  );
  return (
    <section>
      <h2>Every adhesive, best first</h2>
      <p class="field-hint rank-hint">
        Another strength of a kind already named gives way to other kinds. Slip time: eight times in ten within this
        span.
      </p>
      <ol class="rank-list">{choices.slice(0, FIRST).map(card)}</ol>
      <details class="rank-others">
        <summary>The other {choices.length - FIRST}</summary>
        <ol class="rank-list" start={FIRST + 1}>
          {choices.slice(FIRST).map(card)}
        </ol>
      </details>
    </section>
  );
}
