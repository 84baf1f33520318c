/** Plans that lessons open the mixing and coverage calculators at. */
import { DEFAULT_COVER, type CoverPlan } from '../core/cover/plan';
import { DEFAULT_MIX, type MixPlan } from '../core/mix/plan';

export const mixPresets: Readonly<Record<string, MixPlan>> = {
  'a-jar-of-size': { ...DEFAULT_MIX, kind: 'powder', percent: 1, need: 250 },
  'paste-for-lining': { ...DEFAULT_MIX, kind: 'paste', waterParts: 5, use: 'lining', need: 150 },
  'equal-parts': { ...DEFAULT_MIX, kind: 'stretch', from: 'have', haveGrams: 80 },
};

export const coverPresets: Readonly<Record<string, CoverPlan>> = {
  'one-notebook': DEFAULT_COVER,
};
