/** Joins the shapes in src/schemas to the files in content/. A record that does not fit fails the build. */
import { defineCollection } from 'astro:content';
import { glob, type Loader } from 'astro/loaders';
import { z } from 'astro/zod';
import { checkSchema } from './schemas/checks';
import { glossarySchema } from './schemas/glossary';
import { id } from './schemas/number';
import {
  adhesiveSchema,
  cautionSchema,
  ingredientSchema,
  paperSchema,
  sourceSchema,
  substrateSchema,
  techniqueSchema,
} from './schemas/records';
import { strictObject } from './schemas/strict';

const records = (folder: string) => inOrder(glob({ pattern: '*.yaml', base: `./content/${folder}` }));

/** By id. Files are read side by side and come in any order; what is built from them is to be the same each time. */
function inOrder(loader: Loader): Loader {
  return {
    ...loader,
    load: async (context) => {
      await loader.load(context);
      const entries = context.store.values().sort((a, b) => (a.id < b.id ? -1 : 1));
      context.store.clear();
      for (const entry of entries) context.store.set(entry);
    },
  };
}

const lessonSchema = strictObject({
  title: z.string().min(3),
  /** place in the course; also decides previous and next */
  order: z.number().int().positive(),
  /** one or two sentences for the list of lessons */
  summary: z.string().min(20),
  /** each completes "You will be able to …" */
  youWillBeAbleTo: z.array(z.string()).min(1),
  needs: z.array(id).default([]),
  sources: z.array(id).default([]),
  cautions: z.array(id).default([]),
});

export const collections = {
  lessons: defineCollection({ loader: glob({ pattern: '*.mdx', base: './content/lessons' }), schema: lessonSchema }),
  papers: defineCollection({ loader: records('papers'), schema: paperSchema }),
  substrates: defineCollection({ loader: records('substrates'), schema: substrateSchema }),
  ingredients: defineCollection({ loader: records('ingredients'), schema: ingredientSchema }),
  adhesives: defineCollection({ loader: records('adhesives'), schema: adhesiveSchema }),
  techniques: defineCollection({ loader: records('techniques'), schema: techniqueSchema }),
  cautions: defineCollection({ loader: records('cautions'), schema: cautionSchema }),
  checks: defineCollection({ loader: records('checks'), schema: checkSchema }),
  glossary: defineCollection({ loader: records('glossary'), schema: glossarySchema }),
  sources: defineCollection({ loader: records('sources'), schema: sourceSchema }),
};
