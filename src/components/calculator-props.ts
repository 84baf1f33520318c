/** What the calculators are given at build: the caution texts, and where they live. */
import { getCollection } from 'astro:content';
import type { RoomId } from '../core/handover/rooms';
import { href } from './href';

export const ADDRESSES = {
  choose: href('/choose/'),
  mix: href('/mix/'),
  cover: href('/cover/'),
  paper: href('/paper/'),
  flat: href('/flat/'),
  make: href('/make/'),
  cut: href('/cut/'),
  workshop: href('/workshop/'),
} as const;

/** Where each room stands: a room's id and the address of its page are not always one word. */
export const ROOM_PATHS = {
  measure: '/paper/',
  choose: '/choose/',
  mix: '/mix/',
  cover: '/cover/',
  flat: '/flat/',
  make: '/make/',
  cut: '/cut/',
  class: '/workshop/',
  trial: '/trials/',
} as const satisfies Readonly<Record<RoomId, `/${string}`>>;

export async function cautionTexts(): Promise<Record<string, { title: string; text: string }>> {
  const cautions = await getCollection('cautions');
  return Object.fromEntries(cautions.map(({ id, data: { title, text } }) => [id, { title, text }]));
}
