/**
 * Photographs in the sizes and kinds in which they are sent. A picture is never made larger than it is, stands as it was
 * held, and loses what a camera writes into it beside the picture, such as the place.
 */
import { existsSync } from 'node:fs';
import path from 'node:path';
import sharp from 'sharp';

/** found from where the build is run, since the bundled copy of this module stands elsewhere */
const FOLDER = path.resolve('content/photographs');
export const PHOTO_WIDTHS = [360, 720, 1200] as const;
export const FORMATS = ['avif', 'webp'] as const;
export type PhotoFormat = (typeof FORMATS)[number];

export interface PhotoSize {
  readonly width: number;
  readonly height: number;
}

export function photoFile(file: string, folder = FOLDER): string {
  const found = path.join(folder, file);
  if (!existsSync(found))
    throw new Error(`photos: there is no file ${file} in content/photographs; put it there, or take the entry away`);
  return found;
}

/** Size of a photograph as it is seen, turned as the camera was held. */
export async function photoSize(file: string, folder = FOLDER): Promise<PhotoSize> {
  const { width, height, orientation = 1 } = await sharp(photoFile(file, folder)).metadata();
  if (!width || !height) throw new Error(`photos: ${file} cannot be read as a picture; save it again as JPEG or PNG`);
  return orientation >= 5 ? { width: height, height: width } : { width, height };
}

/** The widths that a photograph is sent in: those that it has pixels for, and its own where it is small. */
export const widthsOf = ({ width }: PhotoSize): readonly number[] => {
  const smaller = PHOTO_WIDTHS.filter((one) => one < width);
  return smaller.length === PHOTO_WIDTHS.length
    ? smaller
    : [...smaller, Math.min(width, PHOTO_WIDTHS[smaller.length]!)];
};

export const resized = (file: string, width: number, format: PhotoFormat, folder = FOLDER): Promise<Buffer> => {
  const picture = sharp(photoFile(file, folder)).rotate().resize({ width, withoutEnlargement: true });
  return format === 'avif' ? picture.avif({ quality: 52 }).toBuffer() : picture.webp({ quality: 76 }).toBuffer();
};

/** Its address below /photographs/. */
export const photoName = (file: string, width: number, format: PhotoFormat): string =>
  `${file.replace(/\.[a-z]+$/, '')}-${width}.${format}`;
