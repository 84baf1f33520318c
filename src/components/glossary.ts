/** Finds a trade word in content/glossary, by the word itself or by another name it goes by. */
import { getCollection, type CollectionEntry } from 'astro:content';
import { href } from './href';

type Entry = CollectionEntry<'glossary'>;

let read: Promise<ReadonlyMap<string, Entry>> | undefined;

/** Any case will do. Every lesson asks for some words, so the build reads the glossary once. */
export async function entryFor(word: string): Promise<Entry | undefined> {
  // while somebody writes, an entry may change between two pages
  const names = import.meta.env.DEV ? byName() : (read ??= byName());
  return (await names).get(word.toLowerCase());
}

async function byName(): Promise<ReadonlyMap<string, Entry>> {
  const found = new Map<string, Entry>();
  for (const entry of await getCollection('glossary')) {
    for (const name of [entry.data.word, ...entry.data.alsoCalled].map((one) => one.toLowerCase()))
      if (!found.has(name)) found.set(name, entry);
  }
  return found;
}

export const addressOf = (entry: CollectionEntry<'glossary'>) => href(`/glossary/#${entry.id}`);
