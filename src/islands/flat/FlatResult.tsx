/** How it will lie: the verdict, the edge to scale, and the same in a table. */
import { useStore } from '@nanostores/preact';
import { keepUnits } from '../../core/base/format';
import type { StageId } from '../../core/flat/stages';
import { bowWords, STAGE_NAMES } from '../../core/flat/words';
import type { FlatStore } from '../../stores/flat/flat';
import { Spoken } from '../parts/Spoken';
import { Warnings } from '../parts/Warnings';
import { EdgePlate } from './EdgePlate';

/** Rules at the edge of a verdict, by how it lies (see plates.css). */
const RULE = { flat: 'sound', nearly: 'likely', 'may-warp': 'touch-and-go', warps: 'unlikely' } as const;

export function FlatResult({ store }: { readonly store: FlatStore }) {
  const { answer } = useStore(store.$solved);
  const { bows, direction } = answer;
  return (
    <>
      <p class="only-print">{answer.asked}</p>
      <div class="verdict" data-verdict={RULE[answer.lies]}>
        <p class="verdict-word">{answer.verdict}</p>
        <p class="verdict-why">{keepUnits(answer.why)}</p>
      </div>
      <figure class="plate">
        <div class="plate-body">
          <EdgePlate {...answer} />
        </div>
        <figcaption class="plate-caption">
          The edge over its {direction}, to scale: the same along and up. The board is drawn at the middle of each
          range, the thin lines are its ends; the coloured line is the cover paper
          {answer.lined && ', the broken one the lining'}.
        </figcaption>
      </figure>
      <table class="numbers">
        <caption>
          The bow in the middle, eight times in ten. Towards the paper means that the covered face goes hollow.
        </caption>
        <thead>
          <tr>
            <th scope="col">When</th>
            <th scope="col">Over the width</th>
            <th scope="col">Over the height</th>
          </tr>
        </thead>
        <tbody>
          {(Object.keys(bows) as StageId[]).map((id) => (
            <tr key={id}>
              <th scope="row">{STAGE_NAMES[id]}</th>
              <td>{bowWords(bows[id].width)}</td>
              <td>{bowWords(bows[id].height)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <Warnings warnings={answer.warnings} />
      <Spoken text={[answer.sentence, ...answer.warnings].join(' ')} />
    </>
  );
}
