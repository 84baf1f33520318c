/** Pieces that no sheet holds, and why. */
import { describe, expect, it } from 'vitest';
import { fitProblems } from '../../../src/core/cut/layout-fit';
import type { PieceGrain, SheetPiece, StockSheet } from '../../../src/core/cut/layout-types';
const piece = (widthMm: number, heightMm: number, count = 1, grain: PieceGrain = 'either', name = ''): SheetPiece => ({
  name,
  widthMm,
  heightMm,
  count,
  grain,
});

const sheet = (widthMm: number, heightMm: number, more: Partial<StockSheet> = {}): StockSheet => ({
  widthMm,
  heightMm,
  grain: 'none',
  ...more,
});

describe('what does not fit', () => {
  const said = (stock: StockSheet, pieces: readonly SheetPiece[], kits = 1) =>
    fitProblems(stock, pieces, kits).map(({ field, message }) => `${field}: ${message}`);
  it('fits to the last hair', () => {
    expect(said(sheet(100, 50), [piece(100, 50), piece(50, 100)])).toEqual([]);
    expect(said(sheet(100, 50), [piece(100.1, 50)])).toHaveLength(1);
  });
  it('whole kits from one, two thousand pieces at most, and a millimetre within the trim', () => {
    expect(said(sheet(100, 50), [piece(1, 1)], 1.5)[0]).toMatch(/^kits: /);
    expect(said(sheet(100, 50), [piece(1, 1, 1000)], 2)).toEqual([]);
    expect(said(sheet(100, 50), [piece(1, 1, 2001)])[0]).toMatch(/^pieces: That is 2001 pieces/);
    expect(said(sheet(100, 50), [piece(1, 1, 0)])[0]).toMatch(/^pieces: Give at least one/);
    expect(said(sheet(100, 50, { trimMm: 24.5 }), [piece(1, 1)])).toEqual([]);
    expect(said(sheet(100, 50, { trimMm: 24.6 }), [piece(0.1, 0.1)])[0]).toMatch(/^trim: /);
    expect(said(sheet(50, 100, { trimMm: 24.6 }), [piece(0.1, 0.1)])[0]).toMatch(/^trim: /);
  });
  it('each by the side that is too long, said in the way that fails by less, with its name', () => {
    const stock = sheet(200, 300);
    expect(said(stock, [piece(150, 310, 1, 'either', 'spine')])[0]).toMatch(
      /^0-high: “spine” is larger.*10 mm too long for the sheet’s height/,
    );
    expect(said(stock, [piece(310, 150)])[0]).toMatch(/^0-wide: Piece 1 .*10 mm too long for the sheet’s height/);
    expect(said(stock, [piece(1, 1), piece(210, 299)])[0]).toMatch(
      /^1-wide: Piece 2 .*: 10 mm too long for the sheet’s width/,
    );
    expect(said({ ...stock, grain: 'long' }, [piece(150, 250, 1, 'width')])[0]).toMatch(
      /^0-grain: .* it is 50 mm too long for the sheet’s width\. Turned/,
    );
  });
});
