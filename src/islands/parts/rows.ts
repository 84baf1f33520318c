/** What lists of rows do with their rows, and how a field in one is tied to its cell. */
import type { InputError } from '../../core/base/result';

export const without = <T>(rows: readonly T[], place: number): readonly T[] => rows.filter((_, i) => i !== place);

export const changed = <T>(rows: readonly T[], place: number, part: Partial<T>): readonly T[] =>
  rows.map((row, i) => (i === place ? { ...row, ...part } : row));

/** `name` of a row as its problems spell it: what is wrong with the cell "wide" of row 3 is said of "piece-3-wide". */
interface Table<R> {
  readonly prefix: string;
  readonly name: string;
  readonly rows: readonly R[];
  readonly problems: readonly InputError[];
  readonly put: (rows: readonly R[]) => void;
}

/** Gives, for a cell of a row, what its field is told: id, value, what is wrong with it, and what to do with what is typed. */
export const fieldCells =
  <R extends { readonly [K in keyof R]: string }>({ prefix, name, rows, problems, put }: Table<R>) =>
  (place: number, cell: keyof R & string) => {
    const field = `${name}-${place}-${cell}`;
    const take = (text: string) => put(changed(rows, place, { [cell]: text } as Partial<R>));
    return {
      id: prefix + field,
      value: rows[place]![cell],
      error: problems.find((problem) => problem.field === field)?.message,
      onText: take,
      onPick: take,
    };
  };
