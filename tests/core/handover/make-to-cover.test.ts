/** What the coverage calculator is handed of a project: pieces made by hand, read back as that calculator reads them. */
import { encodePieces } from '../../../src/core/cover/pieces-link';
import { decodePieces } from '../support/rows';
import { describe, expect, it, test } from 'vitest';
import { DEFAULT_MAKE, MAKE_FIELDS, type MakePlan } from '../../../src/core/make/fields';
import { piece, gluedPieces, type MakePiece } from '../../../src/core/make/piece';
import { coverPieces, coverTailFor } from '../../../src/core/handover/make-to-cover';
import { anyPlan } from '../support/any-plan';
import fc from 'fast-check';
import { areaOf } from '../../../src/core/base/piece';
import { accordionCovers, liddedBox, notebookCase, slipCase } from '../../../src/core/cover/pieces';
import { makePieces } from '../../../src/core/make/pieces';
import { COVER_FIELDS, rowsOf } from '../../../src/core/cover/plan';
import { decodePlan } from '../../../src/core/link/read-plan-link';
const handed = (...pieces: Parameters<typeof coverPieces>[0]) => decodePieces(encodePieces(coverPieces(pieces)));

const plan = (given: Partial<MakePlan>): MakePlan => ({ ...DEFAULT_MAKE, ...given });

function pieces(given: Partial<MakePlan>): readonly MakePiece[] {
  const found = makePieces(plan(given));
  if (!found.ok) throw new Error(found.errors[0]?.message);
  return found.value;
}

/** Any plan that the fields allow. */
export const plans = anyPlan(MAKE_FIELDS, DEFAULT_MAKE);

describe('the pieces that are glued', () => {
  it('with their size and each turn-in to a thousandth of a millimetre', () => {
    const turnIn = { top: 10.0404, right: 11.06, bottom: 12, left: 13.33333 };
    expect(handed(piece('cover', 'paper', 100.0404, 200.06, { turnIn }))).toEqual([
      { widthMm: 100.04, heightMm: 200.06, count: 1, turnInMm: { top: 10.04, right: 11.06, bottom: 12, left: 13.333 } },
    ]);
  });
  it('not the boards that they are glued on', () => {
    const pieces = [piece('board', 'board', 90, 190), piece('cover', 'paper', 100, 200, { count: 2 })];
    expect(handed(...pieces)).toEqual([{ widthMm: 100, heightMm: 200, count: 2, turnInMm: 0 }]);
  });
  it('as often as a face is spread, and only the part that is', () => {
    const hollow = { count: 3, gluedFaces: 2, gluedPart: { widthMm: 12, heightMm: 180 } } as const;
    expect(handed(piece('hollow', 'paper', 36, 180, hollow))).toMatchObject([{ widthMm: 12, heightMm: 180, count: 6 }]);
  });
  it('a strip narrower than a millimetre as one millimetre, for that calculator takes no less', () => {
    expect(handed(piece('a', 'paper', 0.4, 200), piece('b', 'paper', 1.2, 0.9))).toMatchObject([
      { widthMm: 1, heightMm: 200 },
      { widthMm: 1.2, heightMm: 1 },
    ]);
  });
  it('twenty rows of them, which is all that it holds', () => {
    const rows = (many: number) => Array.from({ length: many }, (_, i) => piece(`p${i}`, 'paper', 10 + i, 50));
    expect(handed(...rows(20))).toHaveLength(20);
    expect(handed(...rows(21))!.map(({ widthMm }) => widthMm)).toEqual(Array.from({ length: 20 }, (_, i) => 10 + i));
  });
});

it('the link says that they are pieces of one’s own, in the unit of the project', () => {
  for (const unit of ['mm', 'in'] as const) {
    const tail = new URLSearchParams(coverTailFor({ ...DEFAULT_MAKE, unit }, [piece('a', 'paper', 100, 200)]));
    expect(Object.fromEntries(tail)).toEqual({ v: '1', thing: 'own', in: unit, pieces: '100x200x1' });
  }
});

describe('the cover calculator and the projects cover the same', () => {
  const body = { widthMm: 148, heightMm: 210, thicknessMm: 12, boardMm: 2.5 };
  const area = (all: Parameters<typeof areaOf>[0][]) => all.reduce((sum, one) => sum + areaOf(one), 0);
  test.each([
    ['notebook', notebookCase, {}],
    ['accordion', accordionCovers, {}],
    ['slip-case', slipCase, { lined: 'no' }],
    ['lidded-box', liddedBox, { lined: 'no' }],
  ] as const)('%s', (project, preset, given) => {
    expect(area(gluedPieces(pieces({ project, ...given })))).toBeCloseTo(area(preset(body)), 9);
  });
});

test('the link to the coverage calculator carries every glued piece, for any plan', () => {
  fc.assert(
    fc.property(plans, (one) => {
      const found = makePieces(one);
      if (!found.ok) return;
      const { plan: cover, dropped } = decodePlan(coverTailFor(one, found.value), COVER_FIELDS);
      expect(dropped).toEqual([]);
      expect(cover).toMatchObject({ thing: 'own', unit: one.unit });
      const glued = gluedPieces(found.value).slice(0, 20);
      const rows = rowsOf(cover);
      expect(rows.length).toBe(glued.length);
      // to a thousandth of a millimetre on each side of each piece
      glued.forEach((piece, i) => {
        expect(Math.abs(rows[i]!.piece.widthMm - piece.widthMm)).toBeLessThan(0.00051);
        expect(rows[i]!.piece.count).toBe(piece.count);
      });
    }),
    { numRuns: 300 },
  );
});
