/** What narrows the records to a bench of one's own: fetched when a plan first names one. */
import type { Narrowable } from '../../core/records/kinds';
import type { Catalogue } from '../../core/records/records';

let narrow: Narrowable['onBench'];

/** Fetches it; at once where it has been fetched. */
export async function fetchBench(): Promise<void> {
  narrow ??= (await import('../../core/bench/own-bench')).onBench;
}

/** Whether a plan's bench cannot be reckoned with yet. */
export const waitsForBench = ({ bench }: { readonly bench?: string | undefined }): boolean =>
  bench !== undefined && narrow === undefined;

/** The same records, which can be narrowed once that has been fetched. */
export const withBenches = (records: Catalogue): Catalogue & Narrowable => ({
  ...records,
  onBench: (bench, all) => narrow?.(bench, all) ?? all,
});
