/** Sentences as a reader meets them, counted in words. */

const word = /[\p{L}\p{N}][\p{L}\p{N}’'./-]*/gu;
export const wordsIn = (sentence: string): number => sentence.match(word)?.length ?? 0;

/** Sentences of a block of prose; a colon or a semicolon ends none. */
export const sentencesIn = (block: string): readonly string[] =>
  block
    .replace(/\s+/g, ' ')
    // an abbreviation or a decimal point ends nothing
    .split(/(?<=[.?!…][”’")]?)\s+(?=[“‘"(]?[\p{Lu}\p{N}])/u)
    .map((sentence) => sentence.trim())
    .filter((sentence) => wordsIn(sentence) > 0);

/**
 * Blocks of a lesson: paragraphs, items of lists, questions and what they offer. What a component computes counts as a
 * word; what stands in brackets beside a trade word is left out, since it is an aside that the page sets apart.
 */
export function blocksOf(lesson: string): readonly string[] {
  const [, head = '', body = ''] = /^---\r?\n([\s\S]*?)\r?\n---\r?\n([\s\S]*)$/.exec(lesson) ?? [];
  const summary = /^summary: '(.*)'$/m.exec(head)?.[1] ?? '';
  const text = body
    .replace(/^import .*$/gm, '')
    .replace(/\{\/\*[\s\S]*?\*\/\}/g, '')
    .replace(/\{' '\}/g, ' ')
    .replace(/<Question\s+asks="([^"]*)"(?:\{[^}]*\}|[^>{])*>/g, '\n\n$1\n\n')
    .replace(/<Choice\s+says="([^"]*)"[^>]*>/g, '\n\n')
    .replace(/<\/(?:Question|Choice|Aside)>|<Aside[^>]*>|<\/?Questions>/g, '\n\n')
    .replace(/<Term\s+word="([^"]*)">[\s\S]*?<\/Term>/g, '$1')
    .replace(/<Gloss\s+word="([^"]*)"\s*\/>/g, '$1')
    .replace(/<Cite[^>]*\/>/g, '')
    .replace(/<(?:Caution|[A-Z]\w*(?:Figure|Table|Example|Lab|List|Ways))\b[^>]*\/>/g, '')
    .replace(/<[A-Z]\w*\b(?:\{[^}]*\}|[^>{])*\/>/g, 'so-much')
    .replace(/<span[^>]*>\{[\s\S]*?\}<\/span>/g, 'so-much')
    .replace(/<\/?[A-Za-z][^>]*>/g, '')
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/[*_]/g, '')
    .replace(/^#+.*$/gm, '')
    .replace(/^\s*(?:[-*]|\d+\.)\s+/gm, '\n\n');
  return [summary.replace(/''/g, "'"), ...text.split(/\n\s*\n/)].filter((block) => wordsIn(block) > 0);
}
