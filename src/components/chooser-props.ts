/** What the chooser is given at build: the caution texts, where it lives, and the flips of its start job. */
import { getCollection } from 'astro:content';
import { FLIP_FIELDS, nearestFlip } from '../core/flips';
import type { Job } from '../core/job';
import { catalogue } from '../data/catalogue';
import { href } from './href';

export async function chooserProps(start: Job) {
  const cautions = await getCollection('cautions');
  return {
    flips: FLIP_FIELDS.flatMap((field) => nearestFlip(field, start, catalogue) ?? []),
    cautions: Object.fromEntries(cautions.map(({ id, data: { title, text } }) => [id, { title, text }])),
    address: href('/choose/'),
  };
}
