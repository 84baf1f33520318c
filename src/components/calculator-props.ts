/** What the calculators are given at build: the caution texts, and where they live. */
import { getCollection } from 'astro:content';
import { href } from './href';

export const ADDRESSES = { mix: href('/mix/'), cover: href('/cover/'), warp: href('/flat/') } as const;

export async function cautionTexts(): Promise<Record<string, { title: string; text: string }>> {
  const cautions = await getCollection('cautions');
  return Object.fromEntries(cautions.map(({ id, data: { title, text } }) => [id, { title, text }]));
}
