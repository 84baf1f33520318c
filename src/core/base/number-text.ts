/** Numbers as people type them: "80", "0,097", "1 200", " 2.5 ". */

/** The number, or undefined when the text is not one. Spaces group thousands; a comma or a point is the decimal mark. */
export function parseNumber(text: string): number | undefined {
  const tidy = text
    .trim()
    .replace(/[\u2009\u202f\u00a0 ]/g, '')
    .replace(/^\u2212/, '-');
  if (!/^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/.test(tidy)) return undefined;
  const value = Number(tidy.replace(',', '.'));
  return Number.isFinite(value) ? value : undefined;
}
