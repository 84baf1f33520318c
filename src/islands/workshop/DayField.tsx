/** A day or a time, in the browser's own picker. */
import { useStore } from '@nanostores/preact';
import type { WorkshopField } from '../../core/workshop-plan';
import type { WorkshopStore } from '../../stores/workshop';
import { describedBy, Label, Notes } from '../parts/Field';

interface Props {
  readonly store: WorkshopStore;
  readonly prefix: string;
  readonly field: WorkshopField;
  readonly kind: 'date' | 'time';
  readonly label: string;
  readonly hint?: string;
}

export function DayField({ store, prefix, field, kind, label, hint }: Props) {
  const id = prefix + field;
  const value = useStore(store.$texts)[field];
  const error = useStore(store.$problems).find((problem) => problem.field === field)?.message;
  return (
    <div class="field">
      <Label id={id} label={label} />
      <input
        id={id}
        name={id}
        type={kind}
        value={value}
        aria-invalid={error ? 'true' : undefined}
        aria-describedby={describedBy(id, hint, error)}
        onInput={(event) => store.set(field, event.currentTarget.value)}
      />
      <Notes id={id} hint={hint} error={error} />
    </div>
  );
}
