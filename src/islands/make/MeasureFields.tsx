/** The trade's measures: what is usual stands in each field until the reader gives their own. */
import { useStore } from '@nanostores/preact';
import type { ProjectField } from '../../core/project-fields';
import { MEASURES } from '../../core/project-measures';
import { TextOf } from '../parts/PlanField';
import type { MakeFieldsProps } from './MakeFields';

export function MeasureFields(props: MakeFieldsProps) {
  const { answer } = useStore(props.store.$solved);
  const { unit } = useStore(props.store.$texts);
  return (
    <details open>
      <summary>Measures: what is usual, or your own</summary>
      <div class="field-row">
        {answer.measures.map(({ id, usual }) => (
          <TextOf<ProjectField>
            {...props}
            key={id}
            field={id}
            label={MEASURES[id].label}
            unit={unit}
            placeholder={usual}
            hint={MEASURES[id].says}
          />
        ))}
      </div>
    </details>
  );
}
