/** What is counted of a trial, and what things are called. */
import { describe, expect, it } from 'vitest';
import { count, doneCount, glueNames, paperWithWeight } from '../../../src/core/trial/counts';
import { trialOf } from '../support/trial';

describe('counts', () => {
  it('of swatches that are judged to the end', () =>
    expect(doneCount(trialOf(['p a 20 1 pass', 'p b 20 1 fail', 'q a 60 1 -']))).toBe(2));
  it('in words', () =>
    expect([count(0, 'paper'), count(1, 'paper'), count(2, 'swatch', 'swatches')]).toEqual([
      '0 papers',
      '1 paper',
      '2 swatches',
    ]));
});

describe('names', () => {
  it('a paper bears its weight', () => {
    expect(paperWithWeight({ id: 'x', name: 'Lokta', grammage: 55.00001 })).toBe('Lokta, 55\u00a0g/m²');
    expect(paperWithWeight({ id: 'x', name: 'Lokta' })).toBe('Lokta');
  });
  it('an adhesive bears its name on the shelf beside its own, where that is another', () => {
    const glues = [
      { id: 'a', name: 'Old pot', record: 'eva' },
      { id: 'b', name: 'EVA dispersion', record: 'eva' },
      { id: 'c', name: 'Own' },
      { id: 'd', name: 'Gone', record: 'moon-glue' },
    ];
    const shelf = new Map([['eva', 'EVA dispersion']]);
    const names = ['a', 'b', 'c', 'd', 'x'].map((id) => glueNames(trialOf([], { glues }), id, shelf));
    expect(names).toEqual([
      ['Old pot', 'EVA dispersion'],
      ['EVA dispersion', undefined],
      ['Own', undefined],
      ['Gone', undefined],
      ['x', undefined],
    ]);
  });
});
