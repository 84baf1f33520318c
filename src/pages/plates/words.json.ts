/** What each plate of an answer's steps teaches, for those who cannot see it, how large it is, and a keeper's photographs in their place. */
import type { APIRoute } from 'astro';
import { FILED } from '../../components/draw/plate-file';
import { plateOf } from '../../components/draw/plates';
import { papersWithPhotos, photosOfPlate, smallPhoto } from '../../components/photo/photos';
import type { PhotoOfPicture, PictureWords } from '../../islands/choose/InPictures';

export const GET: APIRoute = async () => {
  const named = [
    ...FILED.map((id) => [`plates/${id}`, photosOfPlate(id)[0]] as const),
    ...papersWithPhotos().map(({ id, photos }) => [`papers/${id}`, photos[0]] as const),
  ];
  const photos: Record<string, PhotoOfPicture> = {};
  for (const [name, photo] of named) if (photo) photos[name] = await smallPhoto(photo);
  const words: PictureWords = {
    plates: Object.fromEntries(FILED.map((id) => [id, [plateOf(id).teaches, ...plateOf(id).size]])),
    photos,
  };
  return new Response(JSON.stringify(words), { headers: { 'Content-Type': 'application/json' } });
};
