import { describe, expect, it } from 'vitest';
import { onBench, readBench } from '../../../src/core/bench/own-bench';
import { BENCH_FIELD, recordsOn } from '../../../src/core/records/kinds';
import { readCatalogue } from '../../tools/read-content';

const catalogue = readCatalogue();
const TEXT =
  'brush-full_coat_54_63_73~binders-board_drinks_2_2.6_3.4~pva_solids_0.52_0.54_0.56~pva_grabs_0.64_0.66_0.68~named Loft';

describe('a bench in a link', () => {
  it('says what was measured of what, and its name', () => {
    const bench = readBench(TEXT)!;
    expect(bench.name).toBe('Loft');
    expect(bench.measures.map(({ of, quantity }) => `${of} ${quantity}`)).toEqual([
      'brush-full coat',
      'binders-board drinks',
      'pva solids',
      'pva grabs',
    ]);
    expect(BENCH_FIELD.pattern.test(TEXT)).toBe(true);
  });
  it.for(['~~~', 'named Loft', 'brush-full', 'brush-full_coat', `${TEXT}~${'x'.repeat(400)}`])(
    '%s is left out of a plan, which says so',
    (text) => expect(BENCH_FIELD.pattern.test(text)).toBe(false),
  );
  it.for([
    undefined,
    '',
    'named Loft',
    'brush-full_coat_54_63',
    'brush-full_coat_73_63_54',
    'brush-full_coat_0_63_73',
    'pva_solids_0.5_0.6_1.2',
    'pva_smell_1_2_3',
    'brush-full_coat_54_63_73~<script>',
    `brush-full_coat_54_63_73~named ${'x'.repeat(41)}`,
    Array.from({ length: 13 }, () => 'brush-full_coat_54_63_73').join('~'),
  ])('%s is none', (text) => {
    expect(readBench(text)).toBeUndefined();
  });
});

describe('the records on a bench', () => {
  const own = onBench(TEXT, catalogue);
  it('have what was measured in its place, and say so', () => {
    expect(own.techniques.get('brush-full')!.coat).toEqual({ low: 54, middle: 63, high: 73, basis: 'measured' });
    expect(own.substrates.get('binders-board')!.sorptivity.middle).toBe(2.6);
    expect(own.ingredients.get('pva')!.solids.middle).toBe(0.54);
    expect(own.ingredients.get('pva')!.grabSolids!.high).toBe(0.68);
  });
  it('and everything else as it was', () => {
    expect(own.papers).toBe(catalogue.papers);
    expect(own.techniques.get('roller')).toBe(catalogue.techniques.get('roller'));
    expect(own.techniques.get('brush-full')!.drag).toBe(catalogue.techniques.get('brush-full')!.drag);
    expect(catalogue.techniques.get('brush-full')!.coat.middle).toBe(65);
  });
  it('are the same records where no bench is named, and one answer for one text', () => {
    expect(onBench(undefined, catalogue)).toBe(catalogue);
    expect(onBench('', catalogue)).toBe(catalogue);
    expect(onBench(TEXT, catalogue)).toBe(own);
  });
  it('are taken by a plan that names one, where the records can be narrowed', () => {
    expect(recordsOn(TEXT, catalogue)).toBe(catalogue);
    const narrowed = { ...catalogue, onBench };
    expect(recordsOn(undefined, narrowed)).toBe(narrowed);
    expect(recordsOn(TEXT, narrowed).techniques.get('brush-full')!.coat.middle).toBe(63);
  });
  it.for(['moon-brush_coat_54_63_73', 'water_grabs_0.5_0.6_0.7', 'not a bench'])('%s changes nothing', (text) => {
    const same = onBench(text, catalogue);
    expect(same.techniques).toEqual(catalogue.techniques);
    expect(same.ingredients).toEqual(catalogue.ingredients);
  });
});
