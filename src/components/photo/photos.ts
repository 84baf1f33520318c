/** Which photographs stand beside a record or a plate, and all that there are. Read once for the whole build. */
import { memoize } from '../../core/base/memoize';
import type { PhotoOfPicture } from '../../islands/choose/InPictures';
import { admit } from '../../schemas/door';
import type { Parsed } from '../../schemas/kinds';
import { contentFiles } from '../../schemas/read-content';
import { photoName, photoSize, widthsOf } from './resize';

export type PhotoEntry = Parsed<'papers'>['photos'][number];

/** Records alone: lessons name no photographs. What has a fault has stopped the build before. */
const content = memoize(
  () => {
    const records = contentFiles(process.cwd()).filter(({ file }) => file.endsWith('.yaml'));
    return admit(records, { components: [], presets: {} }).content;
  },
  () => 'content',
);

export const photosOfPlate = (id: string): readonly PhotoEntry[] => content().plates.get(id)?.photos ?? [];

export const papersWithPhotos = (): readonly { id: string; photos: readonly PhotoEntry[] }[] =>
  [...content().papers].flatMap(([id, { photos }]) => (photos.length > 0 ? [{ id, photos }] : []));

/** A photograph in its smallest size. */
export async function smallPhoto({ file, alt, credit, licence }: PhotoEntry): Promise<PhotoOfPicture> {
  const size = await photoSize(file);
  const width = widthsOf(size)[0]!;
  const height = Math.round((size.height * width) / size.width);
  return { name: photoName(file, width, 'webp'), width, height, alt, by: `${credit}, ${licence}` };
}

/** The plates that somebody has given photographs. */
export const platesWithPhotos = (): readonly string[] => [...content().plates.keys()];

/** Every photograph that some record or plate names, once. */
export function allPhotos(): readonly string[] {
  const { papers, substrates, adhesives, ingredients, techniques, plates } = content();
  const named = [papers, substrates, adhesives, ingredients, techniques, plates].flatMap((records) =>
    [...records.values()].flatMap(({ photos }) => photos.map(({ file }) => file)),
  );
  return [...new Set(named)];
}
