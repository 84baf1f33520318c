import { describe, expect, it } from 'vitest';
import { BENCH_FIELDS, EXAMPLE_BENCH, benchIsMeasured, isOneJar, UNMEASURED_BENCH } from '../../../src/core/bench/plan';
import { askedOf } from '../../../src/core/link/fields';
import { readCatalogue } from '../../tools/read-content';

const catalogue = readCatalogue();

describe('what is asked', () => {
  it('at first only which of the four were measured, and the bench’s name', () => {
    expect(askedOf(UNMEASURED_BENCH, BENCH_FIELDS)).toEqual(['name', 'coatBy', 'solidsBy', 'boardBy', 'grabBy']);
    expect(benchIsMeasured(UNMEASURED_BENCH)).toBe(false);
  });
  it('with a spoon no scale, with a data sheet no smear', () => {
    const asked = askedOf({ ...UNMEASURED_BENCH, coatBy: 'spoon', solidsBy: 'sheet' }, BENCH_FIELDS);
    expect(asked).toEqual(expect.arrayContaining(['millilitres', 'spread', 'wide', 'high', 'jar', 'percent']));
    expect(asked).not.toEqual(expect.arrayContaining(['before']));
    expect(asked.some((field) => ['before', 'after', 'step', 'dish', 'wet', 'dry'].includes(field))).toBe(false);
  });
  it('the example measures all four', () => {
    expect(benchIsMeasured(EXAMPLE_BENCH)).toBe(true);
    expect(askedOf(EXAMPLE_BENCH, BENCH_FIELDS)).toEqual(
      expect.arrayContaining(['before', 'after', 'dish', 'drops', 'grabbed']),
    );
  });
  it.for([
    ['pva', true],
    ['eva', true],
    ['pva-mc-1-1', false],
    ['wheat-starch-paste-12', false],
    ['film-double-sided', false],
    ['moon-glue', false],
  ] as const)('%s is used as it comes: %s', ([id, expected]) => {
    expect(isOneJar(id, catalogue)).toBe(expected);
  });
});
