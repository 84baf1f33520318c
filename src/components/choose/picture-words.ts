/** What the chooser's pictures say beside them, and the photographs that stand before them. */
import type { PhotoOfPicture, PictureWords } from '../../islands/choose/InPictures';
import { FILED } from '../draw/plate-file';
import { hasWords, plateOf } from '../draw/plates';
import { papersWithPhotos, photosOfPlate, smallPhoto } from '../photo/photos';

export async function pictureWords(): Promise<PictureWords> {
  const named = [
    ...FILED.map((id) => [`plates/${id}`, photosOfPlate(id)[0]] as const),
    ...papersWithPhotos().map(({ id, photos }) => [`papers/${id}`, photos[0]] as const),
  ];
  const photos: Record<string, PhotoOfPicture> = {};
  for (const [name, photo] of named) if (photo) photos[name] = await smallPhoto(photo);
  const plates = FILED.map((id) => [id, [plateOf(id).teaches, ...plateOf(id).size, hasWords(id)] as const] as const);
  return { plates: Object.fromEntries(plates), photos };
}
