/** One labelled input: label, unit, hint and message wired together. */
import type { ComponentChildren } from 'preact';

export interface Common {
  readonly id: string;
  readonly label: string;
  readonly unit?: string | undefined;
  readonly hint?: ComponentChildren;
  readonly error?: string | undefined;
}

interface NumberFieldProps extends Common {
  readonly value: string;
  readonly placeholder?: string | undefined;
  readonly onText: (text: string) => void;
}

export function NumberField({ id, label, unit, hint, error, value, placeholder, onText }: NumberFieldProps) {
  return (
    <div class="field">
      <Label id={id} label={label} unit={unit} />
      <input
        id={id}
        name={id}
        type="text"
        inputMode="decimal"
        autocomplete="off"
        value={value}
        placeholder={placeholder}
        aria-invalid={error ? 'true' : undefined}
        aria-describedby={describedBy(id, hint, error)}
        onInput={(event) => onText(event.currentTarget.value)}
      />
      <Notes id={id} hint={hint} error={error} />
    </div>
  );
}

export interface Option {
  readonly value: string;
  readonly text: string;
}

interface SelectFieldProps extends Common {
  readonly value: string;
  readonly options: readonly Option[];
  readonly onPick: (value: string) => void;
}

export function SelectField({ id, label, unit, hint, error, value, options, onPick }: SelectFieldProps) {
  return (
    <div class="field">
      <Label id={id} label={label} unit={unit} />
      <select
        id={id}
        name={id}
        // A browser that comes back to a page puts the first option where that which was picked is not in the built list.
        autocomplete="off"
        aria-invalid={error ? 'true' : undefined}
        aria-describedby={describedBy(id, hint, error)}
        onChange={(event) => onPick(event.currentTarget.value)}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value} selected={option.value === value}>
            {option.text}
          </option>
        ))}
      </select>
      <Notes id={id} hint={hint} error={error} />
    </div>
  );
}

/** Records as options, by name. */
export const named = (records: ReadonlyMap<string, { id: string; name: string }>): Option[] =>
  [...records.values()].map(({ id, name }) => ({ value: id, text: name })).sort((a, b) => (a.text < b.text ? -1 : 1));

export function Label({ id, label, unit }: Pick<Common, 'id' | 'label' | 'unit'>) {
  return (
    <label class="field-label" for={id}>
      {label}
      {unit && <span class="field-unit"> {unit}</span>}
    </label>
  );
}

export function Notes({ id, hint, error }: Pick<Common, 'id' | 'hint' | 'error'>) {
  return (
    <>
      {hint && (
        <p class="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {error && (
        <p class="field-error" id={`${id}-error`}>
          {error}
        </p>
      )}
    </>
  );
}

export const describedBy = (id: string, hint: ComponentChildren, error: string | undefined): string | undefined =>
  [hint ? `${id}-hint` : '', error ? `${id}-error` : ''].filter(Boolean).join(' ') || undefined;
