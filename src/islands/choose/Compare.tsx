/** Any two adhesives side by side. Starts with the first two places. */
import { useStore } from '@nanostores/preact';
import { adhesiveName, answerSentence, marginSaid, VERDICT_WORDS } from '../../core/choose/answer-words';
import type { Choice } from '../../core/choose/choose';
import { durationSpan } from '../../core/base/format';
import type { ChooseRestStore } from '../../stores/choose/choose-rest';
import { ChanceRule } from '../parts/ChanceRule';
import { SelectField } from '../parts/Field';
import { thingsFor } from './Answer';

interface Props {
  readonly store: ChooseRestStore;
  readonly prefix: string;
}

export function Compare({ store, prefix }: Props) {
  const choices = useStore(store.$told);
  const { a, b } = useStore(store.$compared);
  const first = choices.find((choice) => choice.adhesiveId === a) ?? choices[0]!;
  const second = choices.find((choice) => choice.adhesiveId === b) ?? choices[1]!;
  const options = choices
    .map(({ adhesiveId }) => ({ value: adhesiveId, text: adhesiveName(adhesiveId, store.catalogue) }))
    .sort((one, other) => (one.text < other.text ? -1 : 1));
  const side = (key: 'a' | 'b', label: string, choice: Choice) => (
    <section aria-label={label}>
      <SelectField
        id={`${prefix}compare-${key}`}
        label={label}
        value={choice.adhesiveId}
        options={options}
        onPick={(id) => store.$compared.set({ ...store.$compared.get(), [key]: id })}
      />
      <div class="verdict" data-verdict={choice.verdict}>
        <h3 class="verdict-word">{VERDICT_WORDS[choice.verdict]}</h3>
        <p class="verdict-why">{answerSentence(choice, store.catalogue)}</p>
      </div>
      <ul class="chance-list">
        {thingsFor(choice).map(([thing, words]) => (
          <ChanceRule
            key={thing}
            label={words}
            chance={choice.chances[thing]}
            note={marginSaid(choice.margins[thing])}
          />
        ))}
      </ul>
      <p>Slip time: {durationSpan(choice.slipSeconds.p10, choice.slipSeconds.p90)}.</p>
      <ul class="reasons">
        {choice.reasons.slice(0, 4).map((reason) => (
          <li key={reason.code}>
            {reason.against && <strong>Drawback: </strong>}
            {reason.text}
          </li>
        ))}
      </ul>
    </section>
  );
  return (
    <div class="compare">
      {side('a', 'One adhesive', first)}
      {side('b', 'Another', second)}
    </div>
  );
}
