/** Times a drop: one press when it touches, one when its shine is gone. */
import { StopClock } from '../parts/StopClock';
import { dropRemark, DROP_WORDS } from '../parts/drop-words';
import { STANDARD_DROP_SECONDS } from '../../core/paper/sorption';
import type { MeasureStore } from '../../stores/measure/measure';

export function DropClock({ store }: { readonly store: MeasureStore }) {
  return (
    <StopClock
      words={DROP_WORDS}
      // when the standard test ends
      callsAt={STANDARD_DROP_SECONDS}
      onStop={(seconds) => store.set('drops', `${store.$texts.get().drops} ${seconds.toFixed(1)}`.trim())}
      said=", added to the drops."
      remark={dropRemark}
      beside={
        <button type="button" class="button-quiet" onClick={() => store.set('drops', '')}>
          Clear the drops
        </button>
      }
    />
  );
}
