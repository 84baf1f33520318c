/** Words a minute for text read with care, on a phone, by someone who may stop to look at a figure. */
const WORDS_A_MINUTE = 180;

/** Whole minutes that a lesson takes, from its source: prose only, without imports, tags and their attributes. */
export function minutesToRead(source: string): number {
  return Math.max(1, Math.round(wordCount(source) / WORDS_A_MINUTE));
}

export function wordCount(source: string): number {
  const prose = source
    .replace(/^import .*$/gm, ' ')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\{[^}]*\}/g, ' ');
  return (prose.match(/[\p{L}\p{N}][\p{L}\p{N}’'./-]*/gu) ?? []).length;
}
