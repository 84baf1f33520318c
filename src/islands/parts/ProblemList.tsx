/** What needs mending, with a link to each field. It does not take the focus: the reader is still typing. */
import type { InputError } from '../../core/base/result';
import { Spoken } from './Spoken';

interface Props {
  readonly problems: readonly InputError[];
  /** id of the input that a problem's field names */
  readonly idOf: (field: string) => string;
}

/** Follows a link to a field, which may stand in a part that is folded away. */
function goTo(event: Event, id: string) {
  const field = document.getElementById(id);
  if (!field) return;
  event.preventDefault();
  field.closest('details')?.setAttribute('open', '');
  field.focus();
}

export function ProblemList({ problems, idOf }: Props) {
  return (
    <>
      {/* stays when there is nothing to mend, for a part that comes with its words in it is not read out */}
      <Spoken text={problems.length === 0 ? '' : `To mend: ${problems.map(({ message }) => message).join(' ')}`} />
      {problems.length > 0 && (
        <div class="problem-list">
          <p>
            <strong>The answer below is for the last values that made sense.</strong>
          </p>
          <ul>
            {problems.map(({ field, message }) => (
              <li key={field}>
                <a href={`#${idOf(field)}`} onClick={(event) => goTo(event, idOf(field))}>
                  {message}
                </a>
              </li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}
