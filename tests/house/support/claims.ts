/** The sentences of lessons that are tied to the model, read from their text without a build. */
import type { Claim } from '../../../src/core/choose/claim';
import { filesIn, textOf } from './files';

export interface Tied {
  readonly file: string;
  readonly sentence: string;
  readonly claim: Claim;
}

const TAG = /<Suits\s+([^>]*?)>([\s\S]*?)<\/Suits>/g;
const PROP = /([a-zA-Z]+)=(?:"([^"]*)"|\{(\[[^\]]*\])\})/g;

/** Throws where a property is written in a way that this reading does not know, so that none is passed over. */
export function tiedIn(file: string, text: string): Tied[] {
  const found = [...text.matchAll(TAG)].map(([, props = '', inner = '']) => {
    const read = [...props.matchAll(PROP)];
    if (props.replace(PROP, '').trim() !== '')
      throw new Error(`${file}: write the properties of Suits as words or lists of words: ${props.trim()}`);
    const claim = Object.fromEntries(
      read.map(([, name, word, list]) => [name, word ?? (JSON.parse(list!.replaceAll("'", '"')) as string[])]),
    );
    return { file, sentence: inner.replace(/\s+/g, ' ').trim(), claim: claim as unknown as Claim };
  });
  const opened = text.match(/<Suits\b/g)?.length ?? 0;
  if (opened !== found.length)
    throw new Error(
      `${file}: ${opened} Suits are opened, and ${found.length} could be read; write each as <Suits …>its sentence</Suits>`,
    );
  return found;
}

export const LESSONS = filesIn('content/lessons').filter((file) => file.endsWith('.mdx'));
export const TIED: readonly Tied[] = LESSONS.flatMap((file) => tiedIn(file, textOf(file)));
