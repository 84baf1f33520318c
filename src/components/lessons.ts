/** The lessons in the order of the course. Every lesson asks for all of them, so the build reads them once. */
import { getCollection, type CollectionEntry } from 'astro:content';

let read: Promise<readonly CollectionEntry<'lessons'>[]> | undefined;

export const lessonsInOrder = (): Promise<readonly CollectionEntry<'lessons'>[]> =>
  // while somebody writes, a lesson may change between two pages
  import.meta.env.DEV ? inOrder() : (read ??= inOrder());

const inOrder = async () => (await getCollection('lessons')).sort((a, b) => a.data.order - b.data.order);
