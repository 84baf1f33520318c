/** The words of the glossary for the panels that explain them where they stand. */
import { getCollection, getEntry } from 'astro:content';
import type { APIRoute } from 'astro';
import { href } from '../../components/href';
import type { PanelWord } from '../../components/lesson/word-panel';

export const GET: APIRoute = async () => {
  const words = await Promise.all(
    (await getCollection('glossary')).map(async ({ id, data }): Promise<[string, PanelWord]> => {
      const lesson = await getEntry('lessons', data.seeLesson);
      if (!lesson) throw new Error(`glossary ${id}: no lesson is called "${data.seeLesson}"`);
      const { word, says } = data;
      return [id, { word, says, lesson: href(`/lessons/${lesson.id}/`), lessonTitle: lesson.data.title }];
    }),
  );
  return new Response(JSON.stringify(Object.fromEntries(words)), { headers: { 'Content-Type': 'application/json' } });
};
