/** The calculators' plans: read from what is typed, carried in links, answered without nonsense. */
import { decodePieces } from '../core/support/rows';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coverAnswer } from '../../src/core/cover/answer';
import { flatFacts } from '../../src/core/handover/cover-flat';
import { COVER_FIELDS, DEFAULT_COVER, COVERED_THINGS } from '../../src/core/cover/plan';
import { mixPlanFor } from '../../src/core/handover/cover-to-mix';
import { mixAnswerer } from '../../src/core/mix/any';
import { DEFAULT_MIX, MIX_KINDS, MIX_FIELDS, type MixPlan } from '../../src/core/mix/plan';
import { mixStretchedWithSlip } from '../../src/core/handover/mix-stretch-slip';
import { fingerprint, sameFigures } from '../../src/core/link/pairs';
import { encodePieces } from '../../src/core/cover/pieces-link';
import { piecesOf } from '../../src/core/cover/pieces-text';
import { readTexts, textsOf } from '../../src/core/link/fields';
import { encodePlan } from '../../src/core/link/plan-link';
import { decodePlan } from '../../src/core/link/read-plan-link';
import { readCatalogue } from '../tools/read-content';
import { anyPlan } from '../core/support/any-plan';

const catalogue = readCatalogue();
const answer = mixAnswerer(mixStretchedWithSlip);
const NONSENSE = /NaN|undefined|Infinity|not known(?!:)|\[object/;

const mixPlans = anyPlan(MIX_FIELDS, DEFAULT_MIX);
const coverPlans = anyPlan(COVER_FIELDS, DEFAULT_COVER);

describe('a link is a promise', () => {
  test('decode gives back what was encoded, for any mix', () => {
    fc.assert(
      fc.property(mixPlans, (plan) => {
        const { plan: back, dropped } = decodePlan(encodePlan(plan, MIX_FIELDS), MIX_FIELDS);
        expect(back).toEqual(plan);
        expect(dropped).toEqual([]);
      }),
    );
  });
  test('and for any coverage', () => {
    fc.assert(
      fc.property(coverPlans, (plan) => {
        const link = encodePlan(plan, COVER_FIELDS);
        expect(decodePlan(link, COVER_FIELDS).plan).toEqual(plan);
      }),
    );
  });
  test('arbitrary text never throws, and what cannot be read is named', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(decodePlan(text, MIX_FIELDS).plan.kind).toBeTypeOf('string');
      }),
    );
    const { plan, dropped } = decodePlan('do=brew&percent=lots&need=1e9&pieces=%E0%A4%A', MIX_FIELDS);
    expect(plan).toEqual(DEFAULT_MIX);
    expect(dropped).toEqual(['pieces', 'do (brew)', 'percent (lots)', 'need (1e9)']);
  });
  test('the sender’s figures are the same within 2 %, other beyond', () => {
    expect(sameFigures(fingerprint(1, [5.556, 217.9]), fingerprint(2, [5.6, 218]))).toBe(true);
    expect(sameFigures(fingerprint(1, [5.556, 217.9]), fingerprint(1, [5.9, 218]))).toBe(false);
    expect(sameFigures('1_x', fingerprint(1, [1]))).toBe(false);
  });
});

describe('every plan has an answer in words, or a message beside a field', () => {
  test.for(MIX_KINDS)('mix: %s', (kind) => {
    fc.assert(
      fc.property(mixPlans, (plan) => {
        const found = answer({ ...plan, kind }, catalogue);
        if (found.ok) expect(JSON.stringify(found.value)).not.toMatch(NONSENSE);
        else
          for (const { field, message } of found.errors) {
            expect(Object.keys(MIX_FIELDS)).toContain(field);
            expect(message).not.toMatch(NONSENSE);
          }
      }),
      { numRuns: kind === 'stretch' ? 25 : 100 },
    );
  });
  test.for(COVERED_THINGS)('cover: %s', (thing) => {
    fc.assert(
      fc.property(coverPlans, (plan) => {
        const found = coverAnswer({ ...plan, thing }, catalogue, flatFacts);
        if (found.ok) {
          expect(JSON.stringify(found.value)).not.toMatch(NONSENSE);
          expect(found.value.buyMillilitres).toBeGreaterThanOrEqual(
            found.value.coverage.mixMillilitres.high * (1 - 1e-8),
          );
        } else expect(['after', 'trialArea']).toContain(found.errors[0]?.field);
      }),
      { numRuns: 15 },
    );
  });
  test('every wet adhesive on the shelf can be spread, and a mix is offered only where there is one to make', () => {
    for (const [id, { form }] of catalogue.adhesives) {
      const plan = { ...DEFAULT_COVER, adhesive: id };
      expect(coverAnswer(plan, catalogue).ok).toBe(form === 'wet');
      const mix = mixPlanFor(plan, 100, catalogue);
      if (mix) expect(answer(mix, catalogue).ok).toBe(true);
    }
    expect(mixPlanFor({ ...DEFAULT_COVER, adhesive: 'pva' }, 100, catalogue)).toBe(undefined);
    expect(mixPlanFor({ ...DEFAULT_COVER, adhesive: 'pva-mc-1-1' }, 83.46, catalogue)).toMatchObject({
      kind: 'stretch',
      need: 83.46,
      loss: 0,
    });
    expect(mixPlanFor({ ...DEFAULT_COVER, adhesive: 'methylcellulose-2-5' }, 83.46, catalogue)).toMatchObject({
      kind: 'powder',
      percent: 2.5,
    });
    expect(mixPlanFor({ ...DEFAULT_COVER, adhesive: 'wheat-starch-paste-thick' }, 83.46, catalogue)).toMatchObject({
      kind: 'paste',
      waterParts: 4,
    });
  });
});

describe('what is typed', () => {
  test('a plan written for its reader and read again is the same plan', () => {
    fc.assert(
      fc.property(mixPlans, (plan) => {
        const asked = Object.keys(MIX_FIELDS) as (keyof typeof MIX_FIELDS)[];
        expect(readTexts(textsOf(plan, MIX_FIELDS), MIX_FIELDS, DEFAULT_MIX, asked)).toEqual({ plan, problems: [] });
      }),
    );
  });
  test('a slip in a field out of sight is passed over', () => {
    const texts = { ...textsOf(DEFAULT_MIX, MIX_FIELDS), haveGrams: 'plenty' };
    expect(readTexts(texts, MIX_FIELDS, DEFAULT_MIX).problems).toEqual([]);
    const { problems } = readTexts({ ...texts, percent: 'strong' }, MIX_FIELDS, DEFAULT_MIX);
    expect(problems.map(({ field }) => field)).toEqual(['percent']);
    expect(problems[0]?.message).toMatch(/from 0\.05 to 40/);
  });
  test('pieces: rows with units and four turn-ins, there and back', () => {
    const row = { wide: '9 1/4 in', high: '14,8', count: '2', turnIn: '1.5; 1.5; 1.5; 0' };
    const { pieces, problems } = piecesOf([row], 'cm');
    expect(problems).toEqual([]);
    expect(pieces).toEqual([
      { widthMm: 234.95, heightMm: 148, count: 2, turnInMm: { top: 15, right: 15, bottom: 15, left: 0 } },
    ]);
    expect(encodePieces(pieces)).toBe('234.95x148x2t15-15-15-0');
    expect(decodePieces(encodePieces(pieces))).toEqual(pieces);
  });
  test('pieces: each slip is named in its own field', () => {
    const { problems } = piecesOf([{ wide: 'a', high: '0', count: '1.5', turnIn: '1;2' }], 'mm');
    expect(problems.map(({ field }) => field)).toEqual([
      'piece-0-count',
      'piece-0-turnIn',
      'piece-0-wide',
      'piece-0-high',
    ]);
  });
});

test('known answers, reckoned by hand', () => {
  const said = (plan: Partial<MixPlan>) => {
    const found = answer({ ...DEFAULT_MIX, loss: 0, ...plan }, catalogue);
    return found.ok ? found.value.portions.map(({ amount }) => amount.replace('\u00a0', ' ')) : found.errors;
  };
  // 2.5 g in 100 ml; 200 ml less 5 g at 1.3 g/ml
  expect(said({ kind: 'powder', percent: 2.5, need: 200 })).toEqual(['5 g', '195 ml']);
  // 120 ml × 4 ÷ 2.5 = 192 ml
  expect(said({ kind: 'correct', have: 120, stock: 4, target: 2.5, jar: 'pva' })).toEqual(['120 ml', '70 ml']);
  // 20 % wanted from 54 %: 120 × (40 − 20) ÷ (54 − 40)
  expect(said({ kind: 'correct', have: 120, stock: 20, target: 40, jar: 'pva' })).toEqual(['170 ml']);
});
