/** The coverage calculator over this site's own records. */
import type { FlatReckoner } from '../core/cover-answer';
import { DEFAULT_COVER, type CoverPlan } from '../core/cover-plan';
import { catalogue } from '../data/catalogue';
import { createCovering, type CoverStore } from './covering';

export const openCovering = (flat?: FlatReckoner, start: CoverPlan = DEFAULT_COVER): CoverStore =>
  createCovering(catalogue, flat, start);
