/** Every calculator at the ends of what its fields take: an answer in words or a message beside a field, never a fault. */
import { piecesIn } from '../core/support/rows';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { choose } from '../../src/core/choose/choose';
import { coverAnswer } from '../../src/core/cover/answer';
import { flatFacts } from '../../src/core/handover/cover-flat';
import { COVER_FIELDS, DEFAULT_COVER } from '../../src/core/cover/plan';
import { cutAnswer } from '../../src/core/cut/answer';
import { measureAnswer } from '../../src/core/measure/answer';
import { EXAMPLE_MEASURE, MEASURE_FIELDS } from '../../src/core/measure/plan';
import { mixAnswerer } from '../../src/core/mix/any';
import { mixStretched } from '../../src/core/mix/stretch';
import { DEFAULT_MIX, MIX_FIELDS } from '../../src/core/mix/plan';
import { parsePairs, writePairs } from '../../src/core/link/pairs';
import type { FieldTable, PlanOf } from '../../src/core/link/fields';
import { encodePlan } from '../../src/core/link/plan-link';
import { makeAnswer } from '../../src/core/make/answer';
import { DEFAULT_MAKE, MAKE_FIELDS } from '../../src/core/make/fields';
import type { Result } from '../../src/core/base/result';
import { flatAnswer } from '../../src/core/flat/answer';
import { DEFAULT_FLAT, FLAT_FIELDS } from '../../src/core/flat/plan';
import { classAnswer } from '../../src/core/class/answer';
import { DEFAULT_CLASS, CLASS_FIELDS } from '../../src/core/class/plan';
import { changeUnit } from '../../src/stores/shared/change-unit';
import { createPlan } from '../../src/stores/shared/plan';
import { readCatalogue } from '../tools/read-content';
import { planAtTheEnds } from '../core/support/any-plan';

const catalogue = readCatalogue();
const NONSENSE = /NaN|undefined|Infinity|not known(?!:)|\[object/;
/** Rows of pieces at both ends, as a link carries them. */
const PIECES = ['1x1x1', '5000x5000x999', Array.from({ length: 20 }, () => '5000x5000x999t200').join('_')].map(
  piecesIn,
);

function sound<S extends FieldTable>(
  fields: S,
  usual: PlanOf<S>,
  answer: (plan: PlanOf<S>, records: typeof catalogue) => Result<unknown>,
  numRuns: number,
): void {
  fc.assert(
    fc.property(planAtTheEnds(fields, usual, fields['pieces']?.kind === 'rows' ? { pieces: PIECES } : {}), (plan) => {
      const found = answer(plan, catalogue);
      if (found.ok) expect(JSON.stringify(found.value)).not.toMatch(NONSENSE);
      else for (const { message } of found.errors) expect(message).not.toMatch(NONSENSE);
    }),
    { numRuns },
  );
}

describe('at the ends of every field', () => {
  test('cover', () => sound(COVER_FIELDS, DEFAULT_COVER, (plan) => coverAnswer(plan, catalogue, flatFacts), 300));
  test('mix', () => sound(MIX_FIELDS, DEFAULT_MIX, mixAnswerer(mixStretched), 300));
  test('know your paper', () => sound(MEASURE_FIELDS, EXAMPLE_MEASURE, (plan) => measureAnswer(plan, catalogue), 300));
  test('make', () => sound(MAKE_FIELDS, DEFAULT_MAKE, makeAnswer, 200));
  test('warp', () => sound(FLAT_FIELDS, DEFAULT_FLAT, (plan) => flatAnswer(plan, catalogue), 60));
  test('workshop', () =>
    sound(
      CLASS_FIELDS,
      DEFAULT_CLASS,
      (plan) => classAnswer(plan, catalogue, { cut: cutAnswer, choose: (job) => choose(job, catalogue) }),
      25,
    ));
});

test('more than any workshop spreads is refused beside its field, with what is allowed', () => {
  const own = { ...DEFAULT_COVER, thing: 'own', makers: 500, passes: 2 } as const;
  const found = coverAnswer({ ...own, pieces: piecesIn('5000x5000x999') }, catalogue);
  expect(found.ok ? [] : found.errors).toMatchObject([{ field: 'pieces', code: 'too-large' }]);
  // 5 m × 5 m × 999 × 500 makers × 2 coats
  expect(found.ok ? '' : found.errors[0]!.message).toMatch(/litres on 12.000.000.m², .* up to 10.000.litres/);
  const wide = { ...DEFAULT_COVER, width: 3000, height: 3000, makers: 500, passes: 10, faces: '2', loss: 60 } as const;
  const weighed = { ...wide, coatFrom: 'weighed', before: 100, after: 149, trialArea: 500 } as const;
  expect(coverAnswer(weighed, catalogue)).toMatchObject({ ok: false, errors: [{ field: 'makers' }] });
});

test('half a character never breaks a link: it is left out of it', () => {
  const cut = `${'a'.repeat(3)}\ud83d`;
  expect(writePairs([['named', cut]])).toBe('named=aaa');
  expect(writePairs([['named', 'a\ud83d\ude00']])).toBe('named=a%F0%9F%98%80');
  expect(encodePlan({ ...EXAMPLE_MEASURE, name: `\udc00${cut}` }, MEASURE_FIELDS)).toContain('&named=aaa&');
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      const whole = text.replace(/\p{Cs}/gu, '');
      expect(parsePairs(writePairs([['named', text]])).query.get('named')).toBe(whole);
    }),
  );
});

test('a length at its limit is still allowed after its unit was changed', () => {
  // 5 mm is nearest to 3/16 in, which is less
  const store = createPlan<typeof COVER_FIELDS, object>(
    {
      fields: COVER_FIELDS,
      answer: () => ({ ok: true, value: { figures: [] } }),
    },
    { ...DEFAULT_COVER, width: 5, height: 3000, thickness: 25.4 },
  );
  changeUnit(store, 'in');
  expect(store.$problems.get()).toEqual([]);
  expect(store.$texts.get()).toMatchObject({ unit: 'in', width: '0.19685', thickness: '1' });
  expect(store.$solved.get().plan.width).toBeCloseTo(5, 3);
  expect(store.$solved.get().plan.height).toBeCloseTo(3000, 0);
});
