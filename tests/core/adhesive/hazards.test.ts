/** What each adhesive of the shelf brings with it that can hurt, from its record alone. */
import { describe, expect, it } from 'vitest';
import { adhesiveCautions, layingCautions } from '../../../src/core/adhesive/hazards';
import { hasFumes, hottest, scalds } from '../../../src/core/adhesive/natures';
import { mixedCelsius } from '../../../src/core/adhesive/mixture';
import { choose } from '../../../src/core/choose/choose';
import { DEFAULT_JOB, type Need } from '../../../src/core/choose/job';
import { catalogue } from '../../../src/data/catalogue';

describe('of the adhesives on the shelf', () => {
  const of = (id: string) => adhesiveCautions(catalogue.adhesives.get(id)!, catalogue);
  it('jellies scald because their water is heated, and so do the mixes that they go into', () => {
    for (const id of ['methylcellulose-1-5', 'methylcellulose-2-5', 'methylcellulose-4', 'pva-mc-1-1', 'pva-paste']) {
      expect(scalds(catalogue.adhesives.get(id)!, catalogue), id).toBe(true);
      expect(of(id), id).toEqual(expect.arrayContaining(['hot-liquid', 'powder-dust']));
    }
    expect(hottest(catalogue.adhesives.get('methylcellulose-2-5')!, catalogue)).toBe(80);
    expect(hottest(catalogue.adhesives.get('pva')!, catalogue)).toBeUndefined();
    expect(scalds(catalogue.adhesives.get('pva')!, catalogue)).toBe(false);
  });
  it('what is hot, what is animal, what is wheat, what smells, what frost spoils', () => {
    expect(of('gelatine')).toEqual(['hot-liquid', 'animal-allergen', 'powder-dust', 'spoilage', 'preservatives']);
    expect(of('animal-glue-hot')).toEqual(['hot-liquid', 'animal-allergen', 'spoilage', 'preservatives']);
    expect(of('fish-glue')).toEqual(['animal-allergen', 'ready-made-glue']);
    expect(of('wheat-starch-paste-thin')).toContain('flour-allergen');
    expect(of('rice-starch-paste')).not.toContain('flour-allergen');
    expect(of('pva')).toEqual(['valued-original', 'ready-made-glue', 'frost']);
    expect(of('tissue-heat-set')).toEqual(['valued-original', 'hot-iron']);
    expect(of('contact-adhesive')).toEqual(['valued-original', 'contact-fumes', 'solvent-fumes']);
    expect(of('spray')).toEqual(['valued-original', 'solvent-fumes', 'spray-fumes']);
    expect(of('hpc-alcohol')).toEqual(['solvent-fumes', 'powder-dust']);
    const fumes = [...catalogue.adhesives.values()].filter((one) => hasFumes(one, catalogue)).map(({ id }) => id);
    expect(fumes).toEqual(['contact-adhesive', 'hpc-alcohol', 'spray']);
  });
  it('gluing brings weights, and glass its edges', () => {
    const pva = catalogue.adhesives.get('pva')!;
    const on = (ground: string) => layingCautions(pva, catalogue.substrates.get(ground)!, catalogue);
    expect(on('binders-board')).toEqual(['valued-original', 'ready-made-glue', 'press']);
    expect(on('glass')).toEqual(['valued-original', 'sharp-edges', 'ready-made-glue', 'press']);
    expect(on('plywood')).not.toContain('wood-dust');
  });
  it('who wants no heat, or has children in the room, hears of the hot water of a jelly', () => {
    const said = (need: Need, id: string) =>
      choose({ ...DEFAULT_JOB, needs: [need] }, catalogue)
        .find(({ adhesiveId }) => adhesiveId === id)!
        .facts.fit.notes.filter(({ code }) => code === need)
        .map(({ text }) => text)
        .join(' ');
    for (const id of ['methylcellulose-2-5', 'pva-mc-1-1']) {
      expect(said('no-heat', id), id).toMatch(/hot water/);
      expect(said('children', id), id).toMatch(/adult.*hot water/);
    }
    expect(said('children', 'wheat-starch-paste-thin')).toMatch(/adult cooks/);
    expect(said('no-heat', 'pva')).toBe('');
    expect(said('children', 'pva')).toBe('');
  });
});

it('hot and iced water: a third at 80 °C and two thirds at 2 °C come to 28 °C; at 15 °C to 36.7', () => {
  const third = (celsius: number) =>
    mixedCelsius([
      { grams: 100, celsius: 80 },
      { grams: 200, celsius },
    ]);
  expect(third(2)).toBeCloseTo(28, 9);
  expect(third(15)).toBeCloseTo(110 / 3, 9);
  expect(() => mixedCelsius([])).toThrow(RangeError);
});
