/** Each published trial as the file that this site reads in, so that it can be counted, or kept, or read by anything else. */
import type { APIRoute } from 'astro';
import { getCollection, type CollectionEntry } from 'astro:content';
import { TRIAL_FORMAT } from '../../../core/trial/record';

/** One file for each trial. */
export const getStaticPaths = async () =>
  (await getCollection('trials')).map(({ id, data }) => ({ params: { id }, props: { published: data } }));

export const GET: APIRoute<{ published: CollectionEntry<'trials'>['data'] }> = ({ props }) => {
  const { licence, contributor, trial } = props.published;
  return new Response(JSON.stringify({ format: TRIAL_FORMAT, licence, contributor, trials: [trial] }), {
    headers: { 'Content-Type': 'application/json' },
  });
};
