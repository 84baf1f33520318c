/** A day or a time, in the browser's own picker. */
import { useStore } from '@nanostores/preact';
import type { ClassField } from '../../core/class/plan';
import type { ClassStore } from '../../stores/class/class';
import { describedBy, Label, Notes } from '../parts/Field';

interface Props {
  readonly store: ClassStore;
  readonly prefix: string;
  readonly field: ClassField;
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
