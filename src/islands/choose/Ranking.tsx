/** The whole ranking as a table, with the weightiest reason for each place. */
import { useStore } from '@nanostores/preact';
import { adhesiveName, VERDICT_WORDS } from '../../core/choose/answer-words';
import { durationSpan } from '../../core/base/format';
import type { ChoosePageStore } from '../../stores/choose/choose-page';
import { THINGS } from './Answer';

const inTen = (chance: number): string => String(Math.min(10, Math.max(0, Math.round(chance * 10))));

export function Ranking({ store }: { readonly store: ChoosePageStore }) {
  const choices = useStore(store.$choices);
  return (
    <section>
      <h2>Every adhesive, best first</h2>
      <section class="scroll-box" tabIndex={0} aria-label="The ranking, a wide table">
        <table class="numbers ranking">
          <caption>Chances out of ten. Time to move: eight times in ten within this span.</caption>
          <thead>
            <tr>
              <th scope="col">Adhesive</th>
              {THINGS.map(([key, label]) => (
                <th scope="col" class="n" key={key}>
                  {label.replace('It ', '')}
                </th>
              ))}
              <th scope="col" class="n">
                Time to move
              </th>
              <th scope="col">What counts most</th>
            </tr>
          </thead>
          <tbody>
            {choices.map((choice) => (
              <tr key={choice.adhesiveId}>
                <th scope="row">
                  {adhesiveName(choice.adhesiveId, store.catalogue)}
                  <span class="cell-note">
                    {VERDICT_WORDS[choice.verdict]}
                    {!choice.atHand && ', not at hand'}
                  </span>
                </th>
                {THINGS.map(([key]) => (
                  <td class="n" key={key}>
                    {inTen(choice.chances[key])}
                  </td>
                ))}
                <td class="n">{durationSpan(choice.slipSeconds.p10, choice.slipSeconds.p90)}</td>
                <td>{(choice.reasons.find((reason) => reason.against) ?? choice.reasons[0])?.text}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </section>
  );
}
