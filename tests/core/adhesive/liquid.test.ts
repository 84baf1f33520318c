/** A mix is worked out from its parts: it lies between them, and what is nested comes to the same as what is flat. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ingredientGrams, liquidOf } from '../../../src/core/adhesive/liquid';
import type { Catalogue, WetAdhesive } from '../../../src/core/records/records';
import { catalogue } from '../../../src/data/catalogue';

const wet = (id: string) => {
  const found = catalogue.adhesives.get(id);
  if (found?.form !== 'wet') throw new Error(`${id} is not a wet adhesive`);
  return found;
};
const recipe = (by: 'mass' | 'volume', ...parts: readonly (readonly [of: string, parts: number])[]): WetAdhesive => ({
  ...wet('pva'),
  id: 'made-here',
  by,
  parts: parts.map(([of, amount]) => ({ of, parts: amount })),
});
const pva = liquidOf(wet('pva'), catalogue);
const ether = liquidOf(wet('methylcellulose-2-5'), catalogue);

describe('a mix lies between its parts', () => {
  const share = fc.double({ min: 0.02, max: 0.98, noNaN: true });
  test.for(['solids', 'density', 'grabSolids', 'volumeSolids'] as const)('%s of PVA and methylcellulose', (thing) => {
    const [low, high] = [Math.min(pva[thing], ether[thing]), Math.max(pva[thing], ether[thing])];
    fc.assert(
      fc.property(share, fc.constantFrom('mass', 'volume'), (part, by) => {
        const made = liquidOf(recipe(by, ['pva', part], ['methylcellulose-2-5', 1 - part]), catalogue);
        expect(made[thing]).toBeGreaterThanOrEqual(low);
        expect(made[thing]).toBeLessThanOrEqual(high);
      }),
    );
  });
  test('1:1 by volume carries the mean of both masses of solids (by hand from the records)', () => {
    const made = liquidOf(recipe('volume', ['pva', 1], ['methylcellulose-2-5', 1]), catalogue);
    const solids = (pva.density * pva.solids + ether.density * ether.solids) / (pva.density + ether.density);
    expect(made.solids).toBeCloseTo(solids, 12);
  });
  test('the more methylcellulose, the thinner under the brush: 3:1, 1:1, 1:3 (common practice, no source)', () => {
    const brush = (id: string) => liquidOf(wet(id), catalogue).underBrush;
    expect(brush('pva-mc-3-1')).toBeLessThan(brush('pva'));
    expect(brush('pva-mc-1-1')).toBeLessThan(brush('pva-mc-3-1'));
    expect(brush('pva-mc-1-3')).toBeLessThan(brush('pva-mc-1-1'));
  });
});

describe('a recipe of recipes is the recipe written out', () => {
  test('a 2.5 % solution inside a mix, or its powder and water', () => {
    const nested = liquidOf(recipe('mass', ['pva', 1], ['methylcellulose-2-5', 1]), catalogue);
    const flat = liquidOf(recipe('mass', ['pva', 1], ['methylcellulose', 0.025], ['water', 0.975]), catalogue);
    for (const [key, value] of Object.entries(flat)) {
      const other = nested[key as keyof typeof nested];
      if (typeof value === 'number') expect(other, key).toBeCloseTo(value, 9);
      else if (typeof value === 'object')
        expect(other, key).toEqual(
          Object.fromEntries(Object.entries(value).map(([name, one]) => [name, expect.closeTo(one as number, 9)])),
        );
      else expect(other, key).toBe(value);
    }
  });
  test('a mix of a mix: half of 1:1, half of PVA is 3:1', () => {
    const half = { ...recipe('mass', ['pva', 1], ['methylcellulose-2-5', 1]), id: 'half' };
    const with1: Catalogue = { ...catalogue, adhesives: new Map([...catalogue.adhesives, ['half', half]]) };
    const nested = liquidOf(recipe('mass', ['half', 1], ['pva', 1]), with1);
    const flat = liquidOf(recipe('mass', ['pva', 3], ['methylcellulose-2-5', 1]), catalogue);
    expect(nested.viscosity / flat.viscosity).toBeCloseTo(1, 9);
    expect(nested.solids).toBeCloseTo(flat.solids, 12);
  });
  test('by volume and by mass, everything that was measured out is in the pot', () => {
    for (const adhesive of catalogue.adhesives.values()) {
      if (adhesive.form !== 'wet') continue;
      const asked = adhesive.parts.reduce((sum, { parts }) => sum + parts, 0);
      const inPot = ingredientGrams(adhesive, catalogue);
      const amount = inPot.reduce(
        (sum, { part }) => sum + (adhesive.by === 'mass' ? part.grams : part.grams / part.density),
        0,
      );
      expect(amount / asked, adhesive.id).toBeCloseTo(1, 10);
    }
  });
  test('parts in any size: 2:2 is 1:1', () => {
    const one = liquidOf(recipe('volume', ['pva', 1], ['water', 1]), catalogue);
    const two = liquidOf(recipe('volume', ['pva', 20], ['water', 20]), catalogue);
    expect(two.viscosity / one.viscosity).toBeCloseTo(1, 10);
    expect(two.solids).toBeCloseTo(one.solids, 12);
  });
});

describe('water only thins', () => {
  const liquids = [...catalogue.adhesives.values()].filter(
    (one): one is WetAdhesive => one.form === 'wet' && !one.parts.some(({ of }) => of === 'alcohol'),
  );
  test.for(liquids.map((one) => [one.id, one] as const))('%s', ([, adhesive]) => {
    const withOne: Catalogue = { ...catalogue, adhesives: new Map([...catalogue.adhesives, [adhesive.id, adhesive]]) };
    const amounts = [0, 0.05, 0.1, 0.25, 0.5, 1, 2, 5, 20].map((water) =>
      liquidOf(recipe('mass', [adhesive.id, 1], ...(water > 0 ? [['water', water] as const] : [])), withOne),
    );
    for (const [i, thinner] of amounts.entries()) {
      const before = amounts[i - 1];
      if (!before) continue;
      expect(thinner.viscosity).toBeLessThan(before.viscosity);
      expect(thinner.underBrush).toBeLessThan(before.underBrush);
      expect(thinner.solids).toBeLessThan(before.solids);
    }
    // in the end it is water: 1.002 mPa·s at 20 °C (published)
    const drowned = liquidOf(recipe('mass', [adhesive.id, 1], ['water', 1e6]), withOne);
    expect(drowned.viscosity).toBeCloseTo(1, 2);
  });
});

test('a dispersion by itself is as thick as its record says', () => {
  for (const id of ['pva', 'pva-thick', 'eva']) {
    const { thickening } = catalogue.ingredients.get(id)!;
    if (thickening.law !== 'dispersion') throw new Error(`${id} is no dispersion`);
    expect(liquidOf(wet(id), catalogue).viscosity / thickening.viscosity.middle, id).toBeCloseTo(1, 2);
  }
});

test('a methylcellulose solution is as thick as the eighth-root law says (values worked outside: 3 % of 4000 grade 37 480)', () => {
  const three = liquidOf(recipe('mass', ['methylcellulose', 3], ['water', 97]), catalogue);
  expect(three.viscosity / 37_480).toBeCloseTo(1, 3);
});

test('every liquid of the shelf is a sound one, at the middle and at both ends of its ranges', () => {
  for (const adhesive of catalogue.adhesives.values()) {
    if (adhesive.form !== 'wet') continue;
    for (const end of ['low', 'middle', 'high'] as const) {
      const liquid = liquidOf(adhesive, catalogue, (range) => range[end]);
      const { solids, volumeSolids, density, viscosity, grabSolids, leastDryCoat } = liquid;
      for (const value of [solids, volumeSolids, density, viscosity, grabSolids, leastDryCoat])
        expect(Number.isFinite(value) && value > 0, `${adhesive.id} ${end}`).toBe(true);
      expect(solids).toBeLessThan(1);
      expect(liquid.carrier).toBe(adhesive.id === 'hpc-alcohol' ? 'alcohol' : 'water');
    }
  }
});

test('a recipe of what is not there throws', () => {
  expect(() => liquidOf(recipe('mass', ['moon-dust', 1]), catalogue)).toThrow(RangeError);
});

describe('what only some ingredients bring', () => {
  const made = (...parts: readonly (readonly [of: string, parts: number])[]) =>
    liquidOf(recipe('mass', ...parts), catalogue);
  const record = (id: string) => catalogue.ingredients.get(id)!;

  test('a film or a gel is the mix’s when its ingredient is at least half of the solids', () => {
    // solids by the records: 54 of 100 g of PVA; a tenth of that from powder leaves the film to the PVA
    expect(made(['pva', 1]).filmFormsAbove).toBe(record('pva').filmFormsAbove!.middle);
    expect(made(['pva', 100], ['methylcellulose', 5]).filmFormsAbove).toBe(record('pva').filmFormsAbove!.middle);
    expect(made(['pva', 100], ['methylcellulose', 60])).not.toHaveProperty('filmFormsAbove');
    expect(made(['gelatine', 5], ['water', 95])).toMatchObject({ gelsAt: record('gelatine').gelsAt!.middle });
    expect(made(['gelatine', 5], ['water', 95])).not.toHaveProperty('filmFormsAbove');
    expect(made(['pva', 1])).not.toHaveProperty('gelsAt');
    // PVA brings 54 g and gelatine some 88 to a hundred: the greater share gels, and forms no film
    const both = made(['pva', 100], ['gelatine', 100]);
    expect(both).toHaveProperty('gelsAt');
    expect(both).not.toHaveProperty('filmFormsAbove');
  });
  test('the dry coat that is needed is the mean over the solids, and 1 where nothing is known', () => {
    const [pvaSolids, etherSolids] = [record('pva').solids.middle * 100, record('methylcellulose').solids.middle * 10];
    const mean =
      (pvaSolids * record('pva').leastDryCoat!.middle + etherSolids * record('methylcellulose').leastDryCoat!.middle) /
      (pvaSolids + etherSolids);
    expect(made(['pva', 100], ['methylcellulose', 10]).leastDryCoat).toBeCloseTo(mean, 9);
    expect(made(['pva', 100], ['methylcellulose', 10], ['water', 50]).leastDryCoat).toBeCloseTo(mean, 9);
    expect(made(['water', 1])).toMatchObject({ leastDryCoat: 1, grabSolids: 1, carrier: 'water' });
  });
  test('alcohol in the pot makes the carrier alcohol, which takes more room', () => {
    expect(made(['hydroxypropylcellulose', 2], ['alcohol', 98]).carrier).toBe('alcohol');
    expect(made(['methylcellulose', 2], ['alcohol', 10], ['water', 88]).carrier).toBe('alcohol');
    expect(made(['methylcellulose', 2], ['water', 98]).carrier).toBe('water');
    // 98 g at 0.79 g/ml (published) beside 2 g of solids, less the moisture that the powder brings
    const { volumeSolids } = made(['hydroxypropylcellulose', 2], ['alcohol', 98]);
    const solids = record('hydroxypropylcellulose').solids.middle * 2;
    const volume = solids / record('hydroxypropylcellulose').solidDensity;
    const alcohol = (100 - solids - 98 * record('alcohol').solids.middle) / 0.79;
    expect(volumeSolids).toBeCloseTo(volume / (volume + alcohol), 9);
  });
});
