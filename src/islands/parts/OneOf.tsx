/** One of a few, all in sight. */
import type { ComponentChildren } from 'preact';
import type { Option } from './Field';

interface Props {
  readonly legend: string;
  readonly name: string;
  readonly options: readonly Option[];
  readonly chosen: string;
  readonly hint?: ComponentChildren;
  readonly onPick: (value: string) => void;
}

export function OneOf({ legend, name, options, chosen, hint, onPick }: Props) {
  return (
    <fieldset class="choice-set">
      <legend>{legend}</legend>
      {hint && <p class="field-hint">{hint}</p>}
      {options.map(({ value, text }) => (
        <label class="choice" key={value}>
          <input type="radio" name={name} value={value} checked={chosen === value} onChange={() => onPick(value)} />
          <span>{text}</span>
        </label>
      ))}
    </fieldset>
  );
}
