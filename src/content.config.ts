/** Hands the records in content/ to pages, parsed by the same shapes as for the calculators (see src/schemas/door.ts). */
import { defineCollection } from 'astro:content';
import { glob, type Loader } from 'astro/loaders';
import { SHAPES } from './schemas/kinds';

const records = (folder: string, ending = 'yaml') =>
  inOrder(glob({ pattern: `*.${ending}`, base: `./content/${folder}` }));

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

export const collections = {
  lessons: defineCollection({ loader: glob({ pattern: '*.mdx', base: './content/lessons' }), schema: SHAPES.lessons }),
  papers: defineCollection({ loader: records('papers'), schema: SHAPES.papers }),
  substrates: defineCollection({ loader: records('substrates'), schema: SHAPES.substrates }),
  ingredients: defineCollection({ loader: records('ingredients'), schema: SHAPES.ingredients }),
  adhesives: defineCollection({ loader: records('adhesives'), schema: SHAPES.adhesives }),
  techniques: defineCollection({ loader: records('techniques'), schema: SHAPES.techniques }),
  cautions: defineCollection({ loader: records('cautions'), schema: SHAPES.cautions }),
  checks: defineCollection({ loader: records('checks'), schema: SHAPES.checks }),
  corrections: defineCollection({ loader: records('corrections'), schema: SHAPES.corrections }),
  glossary: defineCollection({ loader: records('glossary'), schema: SHAPES.glossary }),
  trials: defineCollection({ loader: records('trials', 'json'), schema: SHAPES.trials }),
  sources: defineCollection({ loader: records('sources'), schema: SHAPES.sources }),
};
