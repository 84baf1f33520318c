/** What each plate of an answer's steps teaches, for those who cannot see it, and how large it is. */
import type { APIRoute } from 'astro';
import { FILED } from '../../components/draw/plate-file';
import { plateOf } from '../../components/draw/plates';

export const GET: APIRoute = () =>
  new Response(
    JSON.stringify(Object.fromEntries(FILED.map((id) => [id, [plateOf(id).teaches, ...plateOf(id).size]]))),
    {
      headers: { 'Content-Type': 'application/json' },
    },
  );
