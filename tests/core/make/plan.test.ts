/** Measures that cannot be, refused beside their own field. */
import { describe, expect, test } from 'vitest';
import { DEFAULT_MAKE, type MakePlan } from '../../../src/core/make/fields';
import { type MakePiece } from '../../../src/core/make/piece';
import { makePieces } from '../../../src/core/make/pieces';
const plan = (given: Partial<MakePlan>): MakePlan => ({ ...DEFAULT_MAKE, ...given });

function pieces(given: Partial<MakePlan>): readonly MakePiece[] {
  const found = makePieces(plan(given));
  if (!found.ok) throw new Error(found.errors[0]?.message);
  return found.value;
}

const errorOf = (given: Partial<MakePlan>) => {
  const found = makePieces(plan(given));
  return found.ok ? undefined : found.errors[0]?.field;
};

describe('says no in the right place', () => {
  test.each([
    ['joint', { joint: 2, board: 3 }],
    ['joint', { width: 20, joint: 20 }],
    ['onBoard', { cover: 'quarter', onBoard: 200 }],
    ['lap', { cover: 'quarter', onBoard: 10, lap: 20 }],
    ['sheet', { project: 'accordion', sheet: 100 }],
    ['lidDepth', { project: 'lidded-box', lidDepth: 100 }],
    ['leaves', { thicknessFrom: 'leaves', leaves: 5000, caliper: 3000 }],
  ] as const)('%s', (field, given) => {
    expect(errorOf(given)).toBe(field);
  });
  test('a measure set for one project does not bear on another', () => {
    expect(pieces({ slackWidth: 30, lidDepth: 200, tab: 60 })).toEqual(pieces({}));
  });
});
