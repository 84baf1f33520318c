/** What an adhesive is called, with its name on the shelf where that is another. */
import { glueNames } from '../../core/trial/counts';
import type { Trial } from '../../core/trial/record';
import type { Option } from '../parts/Field';

interface Props {
  readonly trial: Trial;
  readonly glue: string;
  /** the adhesives of the shelf */
  readonly shelf: readonly Option[];
}

export function GlueName({ trial, glue, shelf }: Props) {
  const [name, title] = glueNames(trial, glue, new Map(shelf.map(({ value, text }) => [value, text])));
  return (
    <>
      {name}
      {title !== undefined && <span class="cell-note">on the shelf: {title}</span>}
    </>
  );
}
