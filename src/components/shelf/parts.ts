/** The parts of the shelf, each a page of its own, and what stands in each. */
import { getCollection } from 'astro:content';
import type { Trail } from '../trail';

export const SHELF_PARTS = {
  papers: 'Papers',
  substrates: 'Boards and other grounds',
  adhesives: 'Adhesives',
  ingredients: 'What goes in the pot',
  techniques: 'Tools and hands',
  cautions: 'Cautions',
} as const;
export type ShelfPart = keyof typeof SHELF_PARTS;
type NamedPart = Exclude<ShelfPart, 'cautions'>;

export const SHELF_TRAIL: Trail = [['/shelf/', 'Shelf']];
/** The pages above the page of one record. */
export const trailTo = (part: ShelfPart): Trail => [...SHELF_TRAIL, [`/shelf/${part}/`, SHELF_PARTS[part]]];

/** Every record of a part, in the order of the names. */
export async function onTheShelf<K extends NamedPart>(part: K) {
  const entries = await getCollection(part);
  return entries.sort((a, b) => a.data.name.localeCompare(b.data.name, 'en-GB'));
}

export const trailToPlates: Trail = [...SHELF_TRAIL, ['/shelf/plates/', 'Plates']];
