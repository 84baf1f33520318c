/** The shape of the head of a lesson: what stands between its two lines of three dashes. */
import { z } from 'astro/zod';
import { idOf } from './ids';
import { strictObject } from './strict';

export const lessonSchema = strictObject({
  title: z.string().min(3),
  /** place in the course; also decides previous and next */
  order: z.number().int().positive(),
  /** one or two sentences for the list of lessons */
  summary: z.string().min(20),
  /** each completes "You will be able to …" */
  youWillBeAbleTo: z.array(z.string()).min(1),
  needs: z.array(idOf('lessons')).default([]),
  sources: z.array(idOf('sources')).default([]),
  cautions: z.array(idOf('cautions'), {
    required_error:
      'is missing; name the files of content/cautions that the work asks for, such as [knife], or write [] where nothing can hurt',
  }),
});
