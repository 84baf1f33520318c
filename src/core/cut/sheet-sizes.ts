/**
 * Sheets as they are sold. ISO 216 A sizes, ISO 217 SRA sizes; the others common practice, no source. The last digit
 * of a handmade sheet is its maker's: measure yours.
 */
import { asTyped, MILLIMETRES, parseLength, type LengthUnit } from '../base/length-text';

export interface SheetSize {
  readonly id: string;
  readonly name: string;
  readonly widthMm: number;
  readonly heightMm: number;
}

const mm = (name: string, widthMm: number, heightMm: number): SheetSize => ({
  id: name.toLowerCase().replace(/[^a-z0-9]+/g, '-'),
  name,
  widthMm,
  heightMm,
});
const inches = (width: number, height: number): SheetSize => ({
  id: `in-${width}-${height}`,
  name: `${width} × ${height} in`,
  widthMm: Number((width * MILLIMETRES.in).toFixed(3)),
  heightMm: Number((height * MILLIMETRES.in).toFixed(3)),
});

export const SHEET_SIZES: readonly SheetSize[] = [
  ...[mm('A0', 841, 1189), mm('A1', 594, 841), mm('A2', 420, 594), mm('A3', 297, 420), mm('A4', 210, 297)],
  ...[mm('SRA2', 450, 640), mm('B1', 707, 1000), mm('B2', 500, 707)],
  mm('500 × 700 mm', 500, 700),
  mm('650 × 950 mm', 650, 950),
  mm('700 × 1000 mm', 700, 1000),
  mm('760 × 1020 mm', 760, 1020),
  mm('Washi, 640 × 970 mm', 640, 970),
  ...[inches(20, 26), inches(20, 30), inches(22, 28), inches(22, 30), inches(25, 38), inches(26, 38), inches(32, 40)],
];

/** Which size the typed lengths are, to half a tenth of a millimetre; 'own' when none. */
export function sizeTyped(wide: string, high: string, unit: LengthUnit): string {
  const limits = { unit, field: '', what: '', low: 0, high: 10000 };
  const [width, height] = [parseLength(wide, limits), parseLength(high, limits)];
  if (!width.ok || !height.ok) return 'own';
  const found = SHEET_SIZES.find(
    ({ widthMm, heightMm }) => Math.abs(widthMm - width.value) < 0.05 && Math.abs(heightMm - height.value) < 0.05,
  );
  return found?.id ?? 'own';
}

/** A size's lengths as they would be typed; nothing for 'own', which changes nothing. */
export function typedSize(id: string, unit: LengthUnit): { readonly wide: string; readonly high: string } | undefined {
  const size = SHEET_SIZES.find((one) => one.id === id);
  return size && { wide: asTyped(size.widthMm, unit), high: asTyped(size.heightMm, unit) };
}
