/** The shape of a fault of this site that readers may have relied on, as the page "What was wrong" tells it. */
import { z } from 'astro/zod';
import { strictObject } from './strict';

/** A sentence or more that a reader who was misled can act on. */
const plain = z.string().min(20).max(700);

export const correctionSchema = strictObject({
  /** what it touches, as a heading */
  about: z.string().min(5).max(80),
  /** the day on which it was found */
  found: z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'is a day: 2026-11-28'),
  /** the gravest of a day first */
  order: z.number().int().positive(),
  /** what the site said or did */
  was: plain,
  right: plain,
  /** what somebody who relied on it does now; left out where nothing needs doing */
  advice: plain.optional(),
  /** the page that it stood on, from the root of the site */
  see: z.string().regex(/^\//, 'begins with a slash').optional(),
});
