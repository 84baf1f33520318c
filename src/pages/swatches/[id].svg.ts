/** The swatch of each paper as a file of its own, so that a page fetches only those that come into view. */
import type { APIRoute } from 'astro';
import { getCollection, type CollectionEntry } from 'astro:content';
import { swatchSvg } from '../../components/draw/swatch';

export const getStaticPaths = async () =>
  (await getCollection('papers')).map((paper) => ({ params: { id: paper.id }, props: { paper } }));

export const GET: APIRoute = ({ props }) => {
  const { id, data } = (props as { paper: CollectionEntry<'papers'> }).paper;
  return new Response(swatchSvg(id, data.looks), { headers: { 'Content-Type': 'image/svg+xml' } });
};
