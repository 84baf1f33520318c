/** Cards, labels and a cutting list to print. The labels bear a number only, so that whoever judges need not know what is what. */
import { useStore } from '@nanostores/preact';
import { useMemo, useState } from 'preact/hooks';
import { keepUnits } from '../../core/base/format';
import { BOARD_MARGIN_MM } from '../../core/trial/amounts';
import { paperWithWeight } from '../../core/trial/counts';
import { madeInWords, methodOf } from '../../core/trial/method';
import type { Trial } from '../../core/trial/record';
import { openShelf } from '../../stores/trial/shelf';
import type { Option } from '../parts/Field';
import { CutPlate } from './CutPlate';
import { GlueName } from './GlueName';
import { NameDoubt } from './NameDoubt';
import { useTrialId } from './use-trial';

interface Props {
  readonly demo: Trial;
  readonly adhesives: readonly Option[];
}

export default function TrialCards({ demo, adhesives }: Props) {
  const id = useTrialId();
  const shelf = useMemo(openShelf, []);
  const trials = useStore(shelf.$trials);
  const trial = trials.find((one) => one.id === id) ?? demo;
  const [what, setWhat] = useState<'cards' | 'labels'>('cards');
  return (
    <>
      {trial.demo && (
        <p class="invented">
          {id && id !== demo.id && 'This device holds no such trial: a trial lives where it was planned. '}These are the
          cards of the invented trial. Plan one of your own to print yours.
        </p>
      )}
      <p>
        <strong>{trial.name}</strong>
      </p>
      <NameDoubt trial={trial} adhesives={adhesives} shelf={shelf} />
      <fieldset class="choice-set no-print">
        <legend>Print</legend>
        <label class="choice">
          <input type="radio" name="what" checked={what === 'cards'} onChange={() => setWhat('cards')} />
          <span>
            Cards, one a swatch, in the order they are laid
            <span class="cell-note">For whoever coats and lays. Boxes to tick where no phone is at hand.</span>
          </span>
        </label>
        <label class="choice">
          <input type="radio" name="what" checked={what === 'labels'} onChange={() => setWhat('labels')} />
          <span>
            Labels with a number only
            <span class="cell-note">
              To stick on the boards, so that another can judge without knowing which adhesive it is.
            </span>
          </span>
        </label>
      </fieldset>
      <div class="button-row no-print">
        <button type="button" class="button" onClick={() => window.print()}>
          Print
        </button>
      </div>
      {what === 'cards' ? (
        <>
          <CuttingList trial={trial} />
          <details class="fold">
            <summary>
              <h2>{trial.swatches.length === 1 ? 'The card' : `The ${trial.swatches.length} cards`}</h2>
            </summary>
            <ol class="cards">
              {trial.swatches.map((swatch) => {
                const paper = trial.papers.find((one) => one.id === swatch.paper);
                return (
                  <li class="card" key={swatch.number}>
                    <span class="card-number">{swatch.number}</span>
                    <span>{paper ? paperWithWeight(paper) : swatch.paper}</span>
                    <span>
                      <strong>
                        <GlueName trial={trial} glue={swatch.glue} shelf={adhesives} />
                      </strong>
                    </span>
                    <span>
                      lift after {swatch.hold} s · repeat {swatch.block}
                      {(swatch.method ?? trial.method) && ` · ${madeInWords(methodOf(swatch, trial))}`}
                    </span>
                    {trial.questions.map(({ id: question, text }) => (
                      <span class="card-question" key={question}>
                        {text}: ☐{'\u00a0'}pass ☐{'\u00a0'}partly ☐{'\u00a0'}fail
                      </span>
                    ))}
                  </li>
                );
              })}
            </ol>
          </details>
        </>
      ) : (
        <ol class="cards labels">
          {trial.swatches.map(({ number }) => (
            <li class="card" key={number}>
              <span class="card-number">{number}</span>
            </li>
          ))}
        </ol>
      )}
    </>
  );
}

function CuttingList({ trial }: { readonly trial: Trial }) {
  const { papers, swatches, widthMm, heightMm } = trial;
  return (
    <section class="cutting">
      <h2>Cut first</h2>
      <CutPlate widthMm={widthMm} heightMm={heightMm} />
      <ul>
        {papers.map((paper) => (
          <li key={paper.id}>
            {paperWithWeight(paper)}: {swatches.filter((swatch) => swatch.paper === paper.id).length} pieces of{' '}
            {keepUnits(`${widthMm} × ${heightMm} mm, grain along the ${heightMm} mm`)}
          </li>
        ))}
        <li>
          Board: {swatches.length} pieces of{' '}
          {keepUnits(`${widthMm + 2 * BOARD_MARGIN_MM} × ${heightMm + 2 * BOARD_MARGIN_MM} mm`)}
        </li>
      </ul>
      <p>Number the boards before you begin, on the back, in the order of the cards.</p>
    </section>
  );
}
