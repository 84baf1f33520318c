/** The records of content/, read once into maps. The build has parsed them by their schemas. */
import records from 'virtual:records';
import { catalogueFrom } from './tables';

export const catalogue = catalogueFrom(records);
