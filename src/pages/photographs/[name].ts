/** A keeper's photographs, resized at build: each width that a page may ask for, in each kind. */
import type { APIRoute } from 'astro';
import { allPhotos } from '../../components/photo/photos';
import { FORMATS, photoName, photoSize, resized, widthsOf, type PhotoFormat } from '../../components/photo/resize';

interface Props {
  file: string;
  width: number;
  format: PhotoFormat;
}

export async function getStaticPaths() {
  const paths = await Promise.all(
    allPhotos().map(async (file) =>
      widthsOf(await photoSize(file)).flatMap((width) =>
        FORMATS.map((format) => ({ params: { name: photoName(file, width, format) }, props: { file, width, format } })),
      ),
    ),
  );
  return paths.flat();
}

export const GET: APIRoute = async ({ props }) => {
  const { file, width, format } = props as Props;
  return new Response(new Uint8Array(await resized(file, width, format)), {
    headers: { 'Content-Type': `image/${format}` },
  });
};
