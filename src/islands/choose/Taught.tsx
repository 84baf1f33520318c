/** What the model has learned from one's own swatches, also of other papers, and from which. */
import { useStore } from '@nanostores/preact';
import { adhesiveName } from '../../core/choose/answer-words';
import { chanceInTen } from '../../core/base/format';
import { changeInWords, swatchesInWords, weighingInWords } from '../../core/learn/words';
import type { ChoosePageStore } from '../../stores/choose/choose-page';
import type { EvidenceStore } from '../../stores/choose/evidence';

interface Props {
  readonly store: ChoosePageStore;
  readonly evidence: EvidenceStore;
}

/** As many as are read without counting. */
const MOST_MOVED = 5;
const MOST_PAIRS = 5;

const ON_MEASURED =
  ' Your own swatches were weighed on your bench as you measured it, those of others by what is usual.';

export function TaughtNote({ store, evidence }: Props) {
  const taught = useStore(evidence.learning.$taught);
  const pairs = useStore(evidence.learning.$pairs);
  const firsts = useStore(evidence.$firsts);
  const moved = useStore(evidence.$moved);
  const unnamed = useStore(evidence.learning.$unnamed);
  const nameOf = (id: string) => adhesiveName(id, store.catalogue);
  const leftOut = unnamed > 0 && (
    <p class="field-hint">
      {swatchesInWords(unnamed)} could not teach the model anything: the kind of paper, the adhesive of the shelf, the
      time or the tool is not named in the trial.
    </p>
  );
  if (!taught || !firsts) return <>{leftOut}</>;
  return (
    <div class="taught">
      <p>{changeInWords(firsts.before, firsts.now, firsts.nowBefore, taught, pairs, nameOf)}</p>
      {moved.length > 0 && (
        <section class="scroll-box" tabIndex={0} aria-label="What the swatches moved, a wide table">
          <table class="numbers">
            <caption>Chances that the swatches moved, also those of other papers</caption>
            <thead>
              <tr>
                <th scope="col">Adhesive</th>
                <th scope="col">Model alone</th>
                <th scope="col">With the swatches</th>
              </tr>
            </thead>
            <tbody>
              {moved.slice(0, MOST_MOVED).map(({ adhesiveId, before, now }) => (
                <tr key={adhesiveId}>
                  <th scope="row">{nameOf(adhesiveId)}</th>
                  <td>{chanceInTen(before)}</td>
                  <td>{chanceInTen(now)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
      <details>
        <summary>What taught the model, and how</summary>
        <p>
          {weighingInWords(taught)} Each was weighed by how well it foretells the swatches
          {taught.own ? ` of ${taught.own}, whose bench this answer is for` : ''}; 7 in 100 are taken to be misjudged.
          {taught.onMeasured && taught.own !== undefined && ON_MEASURED}
        </p>
        <ul>
          {pairs.slice(0, MOST_PAIRS).map(({ paperName, adhesive, swatches, share }) => (
            <li key={`${paperName} ${adhesive}`}>
              {paperName} with {nameOf(adhesive)}, {swatchesInWords(swatches)}:{' '}
              {share < 0.005
                ? 'hardly anything'
                : `${Math.round(share * 100)} % of the weight would move back without it`}
            </li>
          ))}
        </ul>
      </details>
      {leftOut}
    </div>
  );
}
