/** The coverage calculator over this site's own records. */
import type { FlatReckoner } from '../../core/cover/answer';
import { DEFAULT_COVER, type CoverPlan } from '../../core/cover/plan';
import { catalogue } from '../../data/catalogue';
import { createCover, type CoverStore } from './cover';

export const openCover = (flat?: FlatReckoner, start: CoverPlan = DEFAULT_COVER): CoverStore =>
  createCover(catalogue, flat, start);
