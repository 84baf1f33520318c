/** The records of content/, read once into maps. They have passed the schemas in the build. */
import records from 'virtual:records';
import { catalogueFrom } from './expand';

export const catalogue = catalogueFrom(records);
