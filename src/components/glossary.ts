/** Finds a trade word in content/glossary, by the word itself or by another name it goes by. */
import { getCollection, type CollectionEntry } from 'astro:content';
import { href } from './href';

export async function entryFor(word: string): Promise<CollectionEntry<'glossary'> | undefined> {
  const wanted = word.toLowerCase();
  return (await getCollection('glossary')).find(({ data }) =>
    [data.word, ...data.alsoCalled].some((name) => name.toLowerCase() === wanted),
  );
}

export const addressOf = (entry: CollectionEntry<'glossary'>) => href(`/glossary/#${entry.id}`);
