/** The shape of a trade word in content/glossary. The file's name is the word's address on the glossary page. */
import { z } from 'astro/zod';
import { idOf } from './ids';
import { strictObject } from './strict';

export const glossarySchema = strictObject({
  /** as it stands in a sentence: lower case unless it is a name or letters */
  word: z.string().min(2),
  /** one or two sentences that someone who has never met the thing can follow */
  says: z.string().min(20).max(320),
  /** the lesson that says more */
  seeLesson: idOf('lessons'),
  alsoCalled: z.array(z.string().min(2)).default([]),
});
