/** The mixing calculator over this site's own records. */
import type { MixAnswerer } from '../../core/mix/any';
import { DEFAULT_MIX, type MixPlan } from '../../core/mix/plan';
import { catalogue } from '../../data/catalogue';
import { createMix, type MixStore } from './mix';

export const openMix = (answer: MixAnswerer, start: MixPlan = DEFAULT_MIX): MixStore =>
  createMix(catalogue, answer, start);
