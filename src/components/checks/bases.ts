/** How what a check expects is known: the words for each, and how many rows there are of it. */
import type { FormulaRow } from '../../schemas/checks';

export const CHECK_BASES: Readonly<Record<FormulaRow['basis'], { short: string; means: string }>> = {
  published: { short: 'published', means: 'printed in a source that was read, or that a text which was read quotes' },
  exact: { short: 'exact, by hand', means: 'arithmetic that you can do by hand' },
  'from-memory': { short: 'from memory', means: 'known, but not looked up' },
  'common-practice': { short: 'common practice', means: 'what the trade does, without a source' },
};

/** Every basis that occurs, the surest first, with how many rows there are of it. */
export function basesOf(rows: readonly Pick<FormulaRow, 'basis'>[]) {
  return (Object.keys(CHECK_BASES) as FormulaRow['basis'][])
    .map((basis) => ({ basis, ...CHECK_BASES[basis], count: rows.filter((row) => row.basis === basis).length }))
    .filter(({ count }) => count > 0);
}
