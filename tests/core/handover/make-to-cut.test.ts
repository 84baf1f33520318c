/** What the cutting plan is handed of a project: pieces made by hand, as they are cut. */
import { expect, it } from 'vitest';
import { DEFAULT_MAKE } from '../../../src/core/make/fields';
import { allRound, piece } from '../../../src/core/make/piece';
import { cutTailOf, toCut } from '../../../src/core/handover/make-to-cut';

const COVER = piece('cover', 'paper', 100, 200, { turnIn: allRound(15), count: 2, grain: 'width' });

it('each piece with its turn-ins, its count, its stock and its grain', () => {
  expect(toCut([COVER, piece('board', 'board', 90, 190)])).toEqual([
    { name: 'cover', stock: 'paper', widthMm: 130, heightMm: 230, count: 2, grain: 'width' },
    { name: 'board', stock: 'board', widthMm: 90, heightMm: 190, count: 1, grain: 'height' },
  ]);
});
it('what lies inside is cut from lining sheets, whatever it is of', () => {
  expect(toCut([piece('endpaper', 'paper', 100, 200, { inside: true })])[0]!.stock).toBe('lining');
});
it('the link is in the unit of the project', () => {
  for (const unit of ['cm', 'in'] as const)
    expect(new URLSearchParams(cutTailOf({ ...DEFAULT_MAKE, unit }, [COVER])).get('in')).toBe(unit);
});
