/** How long the sheet can be moved with each of the first places, beside the time that is needed. */
import { useStore } from '@nanostores/preact';
import { adhesiveName } from '../../core/choose/answer-words';
import { FIRST_PLACES } from '../../core/choose/ranking';
import { secondsNeeded } from '../../core/choose/sampling';
import type { ChooseStore } from '../../stores/choose/choose';
import { SlipPlate } from '../parts/SlipPlate';

export function SlipFigure({ store }: { readonly store: Pick<ChooseStore, '$choices' | '$job' | 'catalogue'> }) {
  const choices = useStore(store.$choices);
  const needed = secondsNeeded(useStore(store.$job));
  const shown = choices.filter((choice) => choice.verdict !== 'ruled-out' && choice.atHand).slice(0, FIRST_PLACES);
  if (shown.length === 0) return null;
  return (
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
        Slip time: how long the sheet can be moved after laying, first four places. Eight times in ten it lies within
        the bar; the dot is the middle.
      </figcaption>
    </figure>
  );
}
