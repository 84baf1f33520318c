/** Pieces for a class that no sheet holds. */
import { describe, expect, it } from 'vitest';
import { piece } from '../../../src/core/make/piece';
import { besideSheet } from '../../../src/core/class/cutting';
describe('what a sheet does not hold', () => {
  const pieces = Array.from({ length: 12 }, (_, i) => piece(`p${i}`, i === 11 ? 'cloth' : 'board', 9, 9));
  const said = (...fields: string[]) =>
    besideSheet(
      fields.map((field) => ({ field, code: 'contradiction', message: field })),
      pieces,
    ).map(({ field, message }) => [field, message]);
  it('is said beside the sheet of its stock, once for each field', () => {
    expect(said('piece-0-wide', 'piece-11-high', 'piece-11-grain')).toEqual([
      ['boardWide', 'piece-0-wide'],
      ['clothHigh', 'piece-11-high'],
      ['clothGrain', 'piece-11-grain'],
    ]);
    expect(said('piece-0-wide', 'piece-1-wide')).toEqual([['boardWide', 'piece-0-wide']]);
  });
  it('what is no piece stays where it was, but too many of all are too many people', () => {
    expect(said('kits', 'stock')).toEqual([
      ['people', 'kits'],
      ['stock', 'stock'],
    ]);
    expect(said('pieces')).toEqual([['people', 'pieces']]);
    expect(said('a-piece-0-wide', 'piece-0-wide-')).toEqual([
      ['a-piece-0-wide', 'a-piece-0-wide'],
      ['piece-0-wide-', 'piece-0-wide-'],
    ]);
  });
});
