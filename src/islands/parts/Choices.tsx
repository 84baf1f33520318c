/** A set of tick boxes. */
import type { ComponentChildren } from 'preact';
import type { Option } from './Field';

interface ChoicesProps {
  readonly legend: string;
  readonly name: string;
  readonly options: readonly Option[];
  readonly chosen: readonly string[];
  readonly hint?: ComponentChildren;
  readonly onToggle: (value: string) => void;
}

/** Tick boxes with hit areas for a wet thumb. */
export function Choices({ legend, name, options, chosen, hint, onToggle }: ChoicesProps) {
  return (
    <fieldset class="choice-set">
      <legend>{legend}</legend>
      {hint && <p class="field-hint">{hint}</p>}
      {options.map((option) => (
        <label class="choice" key={option.value}>
          <input
            type="checkbox"
            name={name}
            value={option.value}
            checked={chosen.includes(option.value)}
            onChange={() => onToggle(option.value)}
          />
          <span>{option.text}</span>
        </label>
      ))}
    </fieldset>
  );
}
