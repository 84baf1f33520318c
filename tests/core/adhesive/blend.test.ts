/** A dispersion stretched with something thinner. */
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { alone, asAdhesive, blend, partsForSolids } from '../../../src/core/adhesive/blend';
import { catalogue } from '../../../src/data/catalogue';
import { DEFAULT_JOB } from '../../../src/core/choose/job';
import { slipChange } from '../../../src/core/handover/slip-change';

describe('stretching', () => {
  const base = { base: 'pva', extender: 'water', baseParts: 1, extenderParts: 1, by: 'mass' } as const;
  const solids = catalogue.ingredients.get('pva')!.solids.middle * 100;
  it('halves the solids when as much water goes in, and leaves the rest as water', () => {
    const made = blend(base, catalogue);
    expect(made.solidsPercent).toBeCloseTo(solids / 2, 9);
    expect(made.waterPercent).toBeCloseTo(100 - solids / 2, 9);
    expect(made.baseShare).toBeCloseTo(1, 12);
    expect(made.grams).toBeCloseTo(2, 12);
    expect(blend({ ...base, base: 'water', extenderParts: 0 }, catalogue).baseShare).toBe(0);
  });
  it('finds the parts for a strength, up to that of the base and down to above that of the extender', () => {
    expect(partsForSolids('pva', 'water', solids / 2, catalogue)).toBeCloseTo(1, 9);
    expect(partsForSolids('pva', 'water', solids, catalogue)).toBeCloseTo(0, 9);
    expect(() => partsForSolids('pva', 'water', solids + 0.1, catalogue)).toThrow(/solids/);
    expect(() => partsForSolids('pva', 'water', 0, catalogue)).toThrow(RangeError);
    const thin = blend(base, catalogue).solidsPercent;
    expect(() => partsForSolids('pva', 'pva', thin, catalogue)).toThrow(/can have from/);
  });
  it('leaves an extender of no parts out, and knows what can be poured', () => {
    expect(asAdhesive({ ...base, extenderParts: 0 }, catalogue).parts).toEqual([{ of: 'pva', parts: 1 }]);
    expect(asAdhesive(base, catalogue).parts).toHaveLength(2);
    expect(alone('pva', catalogue)).toBe(catalogue.adhesives.get('pva'));
    expect(alone('wheat-starch', catalogue)).toMatchObject({
      id: 'wheat-starch',
      form: 'wet',
      by: 'mass',
      parts: [{ of: 'wheat-starch', parts: 1 }],
    });
    expect(() => alone('no-such', catalogue)).toThrow(/no-such/);
    expect(() => alone('wheat-starch', { ...catalogue, adhesives: new Map() })).toThrow(/no wet adhesive/);
  });
});

const BENCH = { paper: DEFAULT_JOB.paper.family, tool: DEFAULT_JOB.tool, celsius: DEFAULT_JOB.celsius };

describe('stretching', () => {
  const MIX = { base: 'pva', extender: 'methylcellulose-1-5', baseParts: 1, extenderParts: 1, by: 'volume' } as const;

  test('a mix made here and the same mix on the shelf are the same liquid', () => {
    const here = blend(MIX, catalogue);
    const shelf = blend(
      { base: 'pva-mc-1-1', extender: 'water', baseParts: 1, extenderParts: 0, by: 'volume' },
      catalogue,
    );
    expect(here.solids).toBeCloseTo(shelf.solids, 12);
    expect(here.viscosity).toBeCloseTo(shelf.viscosity, 6);
  });
  test('equal masses of PVA and water have half the solids and are far thinner', () => {
    const half = blend({ base: 'pva', extender: 'water', baseParts: 1, extenderParts: 1, by: 'mass' }, catalogue);
    expect(half.solidsPercent).toBeCloseTo((catalogue.ingredients.get('pva')!.solids.middle * 100) / 2, 9);
    expect(half.thinner).toBeGreaterThan(20);
    expect(half.grams).toBeCloseTo(2, 9);
  });
  test('nothing added changes nothing', () => {
    const same = blend({ ...MIX, extenderParts: 0 }, catalogue);
    expect(same.thinner).toBeCloseTo(1, 12);
    expect(same.baseShare).toBeCloseTo(1, 12);
    expect(slipChange({ ...MIX, extenderParts: 0 }, BENCH, catalogue).times).toBeCloseTo(1, 12);
  });
  test('the mix slides longer than PVA on an ordinary paper', () => {
    const change = slipChange(MIX, BENCH, catalogue);
    expect(change.times).toBeGreaterThan(1.2);
    expect(change.mixed.p10).toBeLessThan(change.mixed.p90);
  });
  test('parts for a target give that target', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 53, noNaN: true }),
        fc.constantFrom('water', 'methylcellulose-2-5'),
        (target, extender) => {
          const extenderParts = partsForSolids('pva', extender, target, catalogue);
          const made = blend({ base: 'pva', extender, baseParts: 1, extenderParts, by: 'mass' }, catalogue);
          expect(made.solidsPercent).toBeCloseTo(target, 6);
        },
      ),
    );
    expect(() => partsForSolids('pva', 'water', 80, catalogue)).toThrow(/to 5\d\.\d %/);
    expect(() => partsForSolids('pva', 'methylcellulose-2-5', 2, catalogue)).toThrow(RangeError);
  });
  test('an ingredient stands alone, an unknown thing does not', () => {
    expect(alone('water', catalogue).parts).toEqual([{ of: 'water', parts: 1 }]);
    expect(() => alone('treacle', catalogue)).toThrow(RangeError);
  });
});
