/**
 * Words from outside are text and nothing else: not markup, not a formula, not an instruction to a
 * terminal. Cleaned once on the way in, escaped for each form on the way out.
 */

/** Control characters, and those that turn the direction of writing round so that a name reads as another. */

const UNSEEN =
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff\ufff9-\ufffb]/g;
/** Halves of a pair that lost each other: they cannot be stored or sent as they are. */
const LONE = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** One line of text, at most `most` characters; '' for anything that is not text or a number. */
export function lineOf(value: unknown, most: number): string {
  if (typeof value !== 'string' && !Number.isFinite(value)) return '';
  const text = String(value)
    .slice(0, most * 4)
    .replace(UNSEEN, '')
    .replace(/\s+/g, ' ');
  return [...text.replace(LONE, '')].slice(0, most).join('').trim();
}

/** Several lines of text, at most `most` characters. */
export function notesOf(value: unknown, most: number): string {
  if (typeof value !== 'string') return '';
  const text = value
    .slice(0, most * 4)
    .replace(/\r\n?/g, '\n')
    .replace(UNSEEN, '')
    .replace(LONE, '');
  return [...text].slice(0, most).join('').trim();
}

const HTML: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
  '`': '&#96;',
};

/** For the text of an HTML element or a quoted attribute. */
export const escapeHtml = (text: string): string => text.replace(/[&<>"'`]/g, (mark) => HTML[mark]!);

/** For a Markdown table cell: what would start a link, an emphasis, a tag or a new cell is spelled out. */
export function escapeMarkdown(text: string): string {
  return text
    .replace(/\s*\n\s*/g, ' ')
    .replace(/[&<>]/g, (mark) => HTML[mark]!)
    .replace(/[\\`*_{}[\]()#+!|~^$-]/g, (mark) => `\\${mark}`)
    .replace(/(https?|ftp|javascript|data|mailto|www)(?=[:.])/gi, (word) => `${word[0]!}&#8203;${word.slice(1)}`);
}

/** What a spreadsheet would take for a formula. */
const FORMULA = /^[\s]*[=+\-@\t\r|%]/;
/** Figures may begin with a sign. */
const FIGURE = /^[+-]?\d+([.,]\d+)?$/;

/** One CSV cell: quoted where it must be, and with an apostrophe before anything that a spreadsheet would run. */
export function csvCell(value: string | number | undefined): string {
  const text = value === undefined ? '' : String(value);
  const guarded = FORMULA.test(text) && !FIGURE.test(text) ? `'${text}` : text;
  return /["\n\r,;\t]/.test(guarded) || guarded !== guarded.trim() ? `"${guarded.replace(/"/g, '""')}"` : guarded;
}

/** The cell as it was before `csvCell` guarded it. */
export const unguarded = (cell: string): string =>
  cell.startsWith("'") && FORMULA.test(cell.slice(1)) ? cell.slice(1) : cell;

/** A file name from a trial's name: letters and digits of any script, joined by hyphens. */
export function fileNameOf(name: string): string {
  const tidy = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
  return tidy.slice(0, 60) || 'trial';
}
