/** What the calculators are given at build: the caution texts, and where they live. */
import { getCollection } from 'astro:content';
import { href } from './href';

export const ADDRESSES = {
  choose: href('/choose/'),
  mix: href('/mix/'),
  cover: href('/cover/'),
  paper: href('/paper/'),
  flat: href('/flat/'),
  bench: href('/bench/'),
  make: href('/make/'),
  cut: href('/cut/'),
  workshop: href('/workshop/'),
} as const;

/** By their ids; where `named` is given, only those. */
export async function cautionTexts(
  named?: ReadonlySet<string>,
): Promise<Record<string, { title: string; text: string }>> {
  const cautions = await getCollection('cautions', ({ id }) => named?.has(id) ?? true);
  return Object.fromEntries(cautions.map(({ id, data: { title, text } }) => [id, { title, text }]));
}
