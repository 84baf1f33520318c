/** What the coverage calculator is handed of a project: pieces made by hand, read back as that calculator reads them. */
import { encodePieces } from '../../../src/core/cover/pieces-link';
import { decodePieces } from '../support/rows';
import { describe, expect, it } from 'vitest';
import { DEFAULT_MAKE } from '../../../src/core/make/fields';
import { piece } from '../../../src/core/make/piece';
import { coverPieces, coverTailFor } from '../../../src/core/handover/make-to-cover';

const handed = (...pieces: Parameters<typeof coverPieces>[0]) => decodePieces(encodePieces(coverPieces(pieces)));

describe('the pieces that are glued', () => {
  it('with their size and each turn-in to a tenth of a millimetre', () => {
    const turnIn = { top: 10.04, right: 11.06, bottom: 12, left: 13.333 };
    expect(handed(piece('cover', 'paper', 100.04, 200.06, { turnIn }))).toEqual([
      { widthMm: 100, heightMm: 200.1, count: 1, turnInMm: { top: 10, right: 11.1, bottom: 12, left: 13.3 } },
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
