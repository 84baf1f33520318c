/** A question's name: the first words of what it asks. It is its address in the page, and what is kept of it. */

const WORDS = 6;

export const questionId = (asks: string): string =>
  asks
    .toLowerCase()
    .replace(/[’']/g, '')
    .split(/[^a-z0-9]+/)
    .filter(Boolean)
    .slice(0, WORDS)
    .join('-');

/** The names of the questions of a lesson, from its text. */
export const questionIds = (body: string): readonly string[] =>
  [...body.matchAll(/<Question\s+asks="([^"]*)"/g)].map(([, asks = '']) => questionId(asks));
