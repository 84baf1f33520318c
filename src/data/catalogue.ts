/**
 * The records of content/, read once into maps. What arrives here has passed the schemas in the build
 * and has been cut down to numbers (see compact-records.mjs).
 */
import { catalogueFrom } from './expand';

export const catalogue = catalogueFrom({
  papers: import.meta.glob('../../content/papers/*.yaml', { eager: true, import: 'default' }),
  substrates: import.meta.glob('../../content/substrates/*.yaml', { eager: true, import: 'default' }),
  ingredients: import.meta.glob('../../content/ingredients/*.yaml', { eager: true, import: 'default' }),
  adhesives: import.meta.glob('../../content/adhesives/*.yaml', { eager: true, import: 'default' }),
  techniques: import.meta.glob('../../content/techniques/*.yaml', { eager: true, import: 'default' }),
});
