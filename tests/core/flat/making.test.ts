/** What a making brings: its plies and the water that it lays in each. */
import { unknownRecords } from '../../../src/core/link/fields';
import { describe, expect, it } from 'vitest';
import { makingOf, waterOf } from '../../../src/core/flat/making';
import { FLAT_FIELDS, DEFAULT_FLAT, type FlatPlan } from '../../../src/core/flat/plan';
import { catalogue } from '../../../src/data/catalogue';
const plan = (change: Partial<FlatPlan> = {}): FlatPlan => ({ ...DEFAULT_FLAT, ...change });

describe('water', () => {
  const water = (adhesive: string) => waterOf(catalogue.adhesives.get(adhesive)!, plan(), catalogue);
  it('is the brush’s 40, 65 and 110 g/m² less 54 % of solids in PVA', () => {
    const { low, middle, high } = water('pva');
    expect([low, middle, high].map((one) => Number(one.toFixed(6)))).toEqual([18.4, 29.9, 50.6]);
  });
  it('of alcohol a fifth swells fibre: 95.5 % of the coat is alcohol', () => {
    const { low, middle, high } = water('hpc-alcohol');
    expect(low).toBeCloseTo(40 * 0.955 * 0.2, 6);
    expect(middle).toBeCloseTo(65 * 0.955 * 0.2, 6);
    expect(high).toBeCloseTo(110 * 0.955 * 0.2, 6);
  });
  it('of a dry one is what its record says', () => {
    expect(water('glue-stick')).toMatchObject({ low: 4, middle: 9, high: 15 });
    const { glue, work } = makingOf(plan({ adhesive: 'glue-stick', boardThick: 3 }), catalogue);
    expect(glue).toBe('glue stick');
    expect(work.board.thickness).toMatchObject({ low: 3, middle: 3, high: 3 });
    expect(makingOf(plan(), catalogue).glue).toMatch(/: bristle brush, full coat$/);
    expect(makingOf(plan(), catalogue).work.board.thickness.middle).toBe(2);
  });
  it('an unknown lining is named beside its field', () => {
    expect(unknownRecords(plan({ liningPaper: 'moon' }), FLAT_FIELDS, catalogue).map(({ field }) => field)).toEqual([
      'liningPaper',
    ]);
  });
});
