/** The paper calculator over this site's own records. */
import { catalogue } from '../../data/catalogue';
import { createMeasure, type MeasureStore } from './measure';

export const openMeasure = (): MeasureStore => createMeasure(catalogue);
