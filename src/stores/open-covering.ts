/** The coverage calculator over this site's own records. */
import type { flatFacts } from '../core/cover-flat';
import { DEFAULT_COVER, type CoverPlan } from '../core/cover-plan';
import { catalogue } from '../data/catalogue';
import { createCovering, type CoverStore } from './covering';

export const openCovering = (flat?: typeof flatFacts, start: CoverPlan = DEFAULT_COVER): CoverStore =>
  createCovering(catalogue, flat, start);
