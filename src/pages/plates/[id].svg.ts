/** The plates of an answer's steps as files, so that the chooser fetches only those that come into view. */
import type { APIRoute } from 'astro';
import { FILED, plateFile } from '../../components/draw/plate-file';

export const getStaticPaths = () => FILED.map((id) => ({ params: { id } }));

export const GET: APIRoute = ({ params }) =>
  new Response(plateFile(params['id']!), { headers: { 'Content-Type': 'image/svg+xml' } });
