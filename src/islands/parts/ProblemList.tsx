/** What needs mending, with a link to each field. It does not take the focus: the reader is still typing. */
import type { InputError } from '../../core/result';

interface Props {
  readonly problems: readonly InputError[];
  /** id of the input that a problem's field names */
  readonly idOf: (field: string) => string;
}

export function ProblemList({ problems, idOf }: Props) {
  if (problems.length === 0) return null;
  return (
    <div class="problem-list">
      <p>
        <strong>The answer below is for the last values that made sense.</strong>
      </p>
      <ul>
        {problems.map((problem) => (
          <li key={problem.field}>
            <a href={`#${idOf(problem.field)}`}>{problem.message}</a>
          </li>
        ))}
      </ul>
    </div>
  );
}
