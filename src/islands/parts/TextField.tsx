/** A labelled line, or several lines, of free text. */
import { describedBy, Label, Notes, type Common } from './Field';

interface TextFieldProps extends Common {
  readonly value: string;
  readonly lines?: boolean;
  readonly most: number;
  readonly autocomplete?: string;
  readonly onText: (text: string) => void;
  readonly onLeave?: () => void;
}

export function TextField({
  id,
  label,
  unit,
  hint,
  error,
  value,
  lines,
  most,
  autocomplete = 'off',
  onText,
  onLeave,
}: TextFieldProps) {
  const shared = {
    id,
    name: id,
    autocomplete,
    maxLength: most,
    value,
    'aria-invalid': error ? ('true' as const) : undefined,
    'aria-describedby': describedBy(id, hint, error),
    onBlur: () => onLeave?.(),
  };
  return (
    <div class="field">
      <Label id={id} label={label} unit={unit} />
      {lines ? (
        <textarea {...shared} rows={2} onInput={(event) => onText(event.currentTarget.value)} />
      ) : (
        <input {...shared} type="text" onInput={(event) => onText(event.currentTarget.value)} />
      )}
      <Notes id={id} hint={hint} error={error} />
    </div>
  );
}
