/** The coverage calculator's state, and the link that carries its amount to the mixing calculator. */
import { computed, type ReadableAtom } from 'nanostores';
import { coverAnswer, type CoverAnswer } from '../core/cover-answer';
import type { flatFacts } from '../core/cover-flat';
import { askedOfCover, COVER_SPECS, DEFAULT_COVER, type CoverPlan } from '../core/cover-plan';
import { mixPlanFor } from '../core/cover-to-mix';
import type { LengthUnit } from '../core/length-text';
import { askedIn, DEFAULT_MIX, MIX_SPECS } from '../core/mix-plan';
import { readTexts, textsOf } from '../core/plan-fields';
import { encodePlan } from '../core/plan-link';
import type { Catalogue } from '../core/records';
import { createPlan, type PlanStore } from './plan';

export type CoverStore = PlanStore<typeof COVER_SPECS, CoverAnswer> & {
  readonly catalogue: Catalogue;
  /** tail of the mixing calculator's link for this amount; undefined where the adhesive is used as it comes */
  readonly $mixTail: ReadableAtom<string | undefined>;
  /** Another unit: lengths that could be read are written anew in it, the others stay as typed. */
  readonly changeUnit: (unit: LengthUnit) => void;
};

export function createCovering(
  catalogue: Catalogue,
  flat?: typeof flatFacts,
  start: CoverPlan = DEFAULT_COVER,
): CoverStore {
  const store = createPlan<typeof COVER_SPECS, CoverAnswer>(
    {
      specs: COVER_SPECS,
      usual: DEFAULT_COVER,
      asked: askedOfCover,
      answer: (plan) => coverAnswer(plan, catalogue, flat),
    },
    start,
  );
  return {
    ...store,
    catalogue,
    $mixTail: computed(store.$solved, ({ plan, answer }) => {
      const mix = mixPlanFor(plan, answer.onTheWork, catalogue);
      return mix && encodePlan(mix, MIX_SPECS, askedIn(mix), DEFAULT_MIX);
    }),
    changeUnit(unit) {
      const texts = store.$texts.get();
      const fields = Object.keys(COVER_SPECS) as (keyof typeof COVER_SPECS)[];
      const { plan, problems } = readTexts(texts, COVER_SPECS, fields, store.$solved.get().plan);
      const anew = textsOf({ ...plan, unit }, COVER_SPECS);
      const stays = fields.filter((field) =>
        problems.some((one) => one.field === field || (field === 'pieces' && one.field.startsWith('piece-'))),
      );
      store.$texts.set({ ...anew, ...Object.fromEntries(stays.map((field) => [field, texts[field]])), unit });
    },
  };
}
