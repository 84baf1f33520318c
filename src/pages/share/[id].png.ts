/** The pictures that links are shown with: one for each lesson, and one for every other page. */
import type { APIRoute } from 'astro';
import { lessonsInOrder } from '../../components/lessons';
import { sharePng } from '../../components/share/picture';

export async function getStaticPaths() {
  const lessons = await lessonsInOrder();
  return [
    {
      params: { id: 'index' },
      props: { title: 'Which glue, for this paper, on this board', label: 'Lessons and calculators' },
    },
    ...lessons.map(({ id, data }, place) => ({
      params: { id },
      props: { title: data.title, label: `Lesson ${place + 1}` },
    })),
  ];
}

export const GET: APIRoute = async ({ props }) =>
  new Response(new Uint8Array(await sharePng(props as { title: string; label: string })), {
    headers: { 'Content-Type': 'image/png' },
  });
