/** Ids, and the names of other records that a record may hold. */
import { z } from 'astro/zod';

/** Ids are file names without their ending: lower case, digits, hyphens. */
export const id = z
  .string()
  .regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'is written in lower case, its words joined by hyphens: wove-text');

/** The folders of content/. */
export type Kind =
  | 'papers'
  | 'substrates'
  | 'ingredients'
  | 'adhesives'
  | 'techniques'
  | 'cautions'
  | 'sources'
  | 'checks'
  | 'corrections'
  | 'glossary'
  | 'trials'
  | 'lessons'
  | 'plates';

/** The ids that there are, by kind. */
export type KnownIds = Readonly<Record<Kind, ReadonlySet<string>>>;

let known: KnownIds | undefined;

/**
 * The id of another record, of one of the kinds named. Whether there is such a record can only be said where all
 * of them are at hand, which is inside `withKnownIds`; anywhere else any well-formed id passes.
 */
export function idOf(...kinds: readonly Kind[]) {
  return id.superRefine((value, context) => {
    if (!known) return;
    const ids = kinds.flatMap((kind) => [...known![kind]]);
    if (ids.includes(value)) return;
    const folders = kinds.map((kind) => `content/${kind}`).join(' or ');
    context.addIssue({
      code: z.ZodIssueCode.custom,
      message: `no file in ${folders} is called "${value}"${didYouMean(value, ids) || '; name one that is there, or add it'}`,
    });
  });
}

/** Reads with the ids that there are, so that a name which leads nowhere is a fault. Answers what `read` answers. */
export function withKnownIds<T>(ids: KnownIds, read: () => T): T {
  known = ids;
  try {
    return read();
  } finally {
    known = undefined;
  }
}

/** The end of a message about a misspelt name: the nearest that there are, or all when they are `few` at most, or nothing. */
export function didYouMean(written: string, allowed: readonly string[], few = 12): string {
  const word = written.toLowerCase();
  const begins = (name: string) => word.length >= 4 && (name.startsWith(word) || word.startsWith(name));
  const near = [...new Set(allowed)]
    .map((name) => ({ name, slips: begins(name.toLowerCase()) ? 1 : slipsBetween(word, name.toLowerCase()) }))
    .filter(({ name, slips }) => slips <= Math.max(2, name.length / 5))
    .sort((a, b) => a.slips - b.slips)
    .slice(0, 3)
    .map(({ name }) => `"${name}"`);
  if (near.length > 0) return `; did you mean ${near.join(' or ')}?`;
  return allowed.length > 0 && allowed.length <= few ? `; those there are: ${allowed.join(', ')}` : '';
}

/** How many letters must be put in, left out or changed to make one word of the other (Levenshtein's distance). */
function slipsBetween(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const changed = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(changed, row[j]! + 1, next[j - 1]! + 1));
    }
    row = next;
  }
  return row[b.length]!;
}
