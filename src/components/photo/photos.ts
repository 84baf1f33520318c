/** Which photographs stand beside a plate, and all that there are. Read once for the whole build. */
import { memoize } from '../../core/base/memoize';
import { admit } from '../../schemas/door';
import type { Parsed } from '../../schemas/kinds';
import { contentFiles } from '../../schemas/read-content';

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
