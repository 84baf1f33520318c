/** Photographs that a keeper of the site puts beside a record, a step or a project. */
import { z } from 'astro/zod';
import { strictObject } from './strict';

const text = (missing: string) => z.string({ required_error: missing }).min(10, missing);

export const photos = z
  .array(
    strictObject({
      /** a file in content/photographs */
      file: z
        .string()
        .regex(
          /^[a-z0-9]+(?:[-.][a-z0-9]+)*\.(?:jpe?g|png|webp|avif|tiff?)$/,
          'is the name of a picture in content/photographs, in lower case: unryu-1.jpg',
        ),
      /** what there is to see, for those who cannot see it */
      alt: text(
        'is missing or too short; say in a sentence what the photograph shows, as you would tell it to somebody who cannot see it',
      ),
      /** who made it */
      credit: z
        .string({ required_error: 'is missing; write who made the photograph' })
        .min(2, 'is too short; write who made the photograph'),
      licence: z
        .string({ required_error: 'is missing; write under which licence it may be shown: CC BY 4.0, or "ours"' })
        .min(3, 'is too short; write under which licence it may be shown: CC BY 4.0, or "ours"'),
    }),
  )
  .default([]);

/** A plate that has photographs: the file is named as the plate is in components/draw/plates.ts. */
export const plateSchema = strictObject({ photos });
