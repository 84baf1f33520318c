/** Wetting expansion of a piece. */
import type { Paper } from '../../core/records/records';

/** Along the grain a sheet grows about a tenth of what it grows across. Common practice: said on a list of book artists, 2000 (see sources). */
const ALONG_SHARE = 0.1;

/** Growth, mm, of a side `mm` long that lies across or along the grain, when the piece is soaked. */
export function growthMm(
  { wetExpansion }: Paper,
  mm: number,
  way: 'across' | 'along',
): { low: number; middle: number; high: number } {
  const share = (way === 'along' ? ALONG_SHARE : 1) * mm;
  return { low: wetExpansion.low * share, middle: wetExpansion.middle * share, high: wetExpansion.high * share };
}
