/** What each plate of an answer's steps teaches, how large it is, and a keeper's photographs: for the chooser's pictures. */
import type { APIRoute } from 'astro';
import { pictureWords } from '../../components/choose/picture-words';

export const GET: APIRoute = async () =>
  new Response(JSON.stringify(await pictureWords()), { headers: { 'Content-Type': 'application/json' } });
