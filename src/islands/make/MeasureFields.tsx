/** The trade's measures: what is usual stands in each field until the reader gives their own. */
import { useStore } from '@nanostores/preact';
import type { MakeField } from '../../core/make/fields';
import { MEASURES } from '../../core/make/measures';
import { TextOf } from '../parts/PlanField';
import type { MakeStore } from '../../stores/make/make';

interface Props {
  readonly store: MakeStore;
  readonly prefix: string;
}

export function MeasureFields(props: Props) {
  const { answer } = useStore(props.store.$solved);
  return (
    <details open>
      <summary>Measures: what is usual, or your own</summary>
      <div class="field-row">
        {answer.measures.map(({ id, usual }) => (
          <TextOf<MakeField> {...props} key={id} field={id} placeholder={usual} hint={MEASURES[id].says} />
        ))}
      </div>
    </details>
  );
}
