/** The paper calculator over this site's own records. */
import { catalogue } from '../data/catalogue';
import { createKnowing, type KnowStore } from './knowing';

export const openKnowing = (): KnowStore => createKnowing(catalogue);
