/** Which kind of mixing an adhesive asks for, on recipes made by hand. */
import { describe, expect, it, test } from 'vitest';
import { DEFAULT_COVER } from '../../../src/core/cover/plan';
import { mixPlanFor } from '../../../src/core/handover/cover-to-mix';
import type { Catalogue, WetAdhesive } from '../../../src/core/records/records';
import { SIZE_GLUE, TACK_FILM } from '../support/facts';

type Part = readonly [of: string, parts: number];

function mix(parts: readonly Part[], { by = 'mass', need = 100 }: { by?: WetAdhesive['by']; need?: number } = {}) {
  const recipe = { ...SIZE_GLUE, by, parts: parts.map(([of, share]) => ({ of, parts: share })) };
  const catalogue = { adhesives: new Map([[recipe.id, recipe]]) } as unknown as Catalogue;
  const cover = { ...DEFAULT_COVER, adhesive: recipe.id, loss: 17, paper: 'lokta', tool: 'card' };
  return mixPlanFor(cover, need, catalogue);
}

describe('a powder in water', () => {
  it('is as strong as its share of the whole, by mass', () => {
    expect(
      mix([
        ['methylcellulose', 1],
        ['water', 39],
      ]),
    ).toMatchObject({ kind: 'powder', powder: 'methylcellulose', percent: 2.5, basis: 'w/w' });
    expect(
      mix([
        ['gelatine', 1],
        ['water', 3],
      ]),
    ).toMatchObject({ powder: 'gelatine', percent: 25 });
  });
  it('in anything else is not for us to reckon', () => {
    expect(
      mix([
        ['methylcellulose', 1],
        ['alcohol', 39],
      ]),
    ).toBeUndefined();
  });
});

describe('starch in water', () => {
  const paste = (water: number, of = 'water') =>
    mix([
      ['wheat-starch', 2],
      [of, 2 * water],
    ]);
  test.for([3, 4.5, 10])('%s parts of water to one: a paste as it is cooked', (water) => {
    expect(paste(water)).toMatchObject({ kind: 'paste', starch: 'wheat-starch', waterParts: water, use: 'as-cooked' });
  });
  test.for([2.9, 10.1])('%s parts: outside what cooks to a paste', (water) => {
    expect(paste(water)).toBeUndefined();
  });
  it('measured as its recipe measures, and in water alone', () => {
    const rice: readonly Part[] = [
      ['rice-starch', 1],
      ['water', 5],
    ];
    expect(mix(rice, { by: 'volume' })).toMatchObject({ starch: 'rice-starch', by: 'volume' });
    expect(mix(rice, { by: 'mass' })).toMatchObject({ by: 'mass' });
    expect(paste(4, 'methylcellulose-2-5')).toBeUndefined();
  });
});

describe('a dispersion stretched', () => {
  const parts: readonly Part[] = [
    ['pva', 3],
    ['methylcellulose-1-5', 1],
  ];
  it('in parts by volume, for what the work needs', () => {
    expect(mix(parts, { by: 'volume' })).toMatchObject({
      kind: 'stretch',
      base: 'pva',
      extender: 'methylcellulose-1-5',
      aim: 'parts',
      from: 'need',
      baseParts: 3,
      extenderParts: 1,
    });
  });
  it('not by mass, nor with or of something else', () => {
    expect(mix(parts, { by: 'mass' })).toBeUndefined();
    const volume = { by: 'volume' } as const;
    expect(mix([parts[0]!, ['fish-glue', 1]], volume)).toBeUndefined();
    expect(mix([['fish-glue', 3], parts[1]!], volume)).toBeUndefined();
  });
});

describe('how much', () => {
  const need = (millilitres: number) =>
    mix(
      [
        ['methylcellulose', 1],
        ['water', 39],
      ],
      { need: millilitres },
    )?.need;
  it('to six figures, from 1 to 50 000 ml, which is what the mixing calculator takes', () => {
    expect([83.46, 1234, 12.0400049].map(need)).toEqual([83.46, 1234, 12.04]);
    expect([0.2, 1, 50000, 70000].map(need)).toEqual([1, 1, 50000, 50000]);
  });
  it('with the paper and the tool of the coverage, whose loss is already in the amount', () => {
    expect(
      mix([
        ['methylcellulose', 1],
        ['water', 39],
      ]),
    ).toMatchObject({ loss: 0, paper: 'lokta', tool: 'card' });
  });
});

describe('nothing to mix', () => {
  it('of one part, of three, of what is dry, and of what nobody knows', () => {
    expect(mix([['methylcellulose', 1]])).toBeUndefined();
    expect(
      mix([
        ['methylcellulose', 1],
        ['water', 39],
        ['pva', 1],
      ]),
    ).toBeUndefined();
    const catalogue = { adhesives: new Map([[TACK_FILM.id, TACK_FILM]]) } as unknown as Catalogue;
    for (const adhesive of [TACK_FILM.id, 'gone'])
      expect(mixPlanFor({ ...DEFAULT_COVER, adhesive }, 100, catalogue)).toBeUndefined();
  });
});
