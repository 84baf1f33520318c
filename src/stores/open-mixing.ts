/** The mixing calculator over this site's own records. */
import type { MixAnswerer } from '../core/mix-any';
import { DEFAULT_MIX, type MixPlan } from '../core/mix-plan';
import { catalogue } from '../data/catalogue';
import { createMixing, type MixStore } from './mixing';

export const openMixing = (answer: MixAnswerer, start: MixPlan = DEFAULT_MIX): MixStore =>
  createMixing(catalogue, answer, start);
