/** What the cutting plan answers. */
import { decodeCutPieces, decodeStocks, stocksIn, cutPiecesIn } from '../support/rows';
import { describe, expect, it } from 'vitest';
import { cutAnswer } from '../../../src/core/cut/answer';

import { DEFAULT_CUT, type CutPlan } from '../../../src/core/cut/plan';

describe('cutting', () => {
  function answered(change: Partial<CutPlan>) {
    const found = cutAnswer({ ...DEFAULT_CUT, kits: 1, ...change });
    if (!found.ok) throw new Error(found.errors[0]?.message);
    return found.value;
  }
  const price = (stocks: string) =>
    answered({ stocks: stocksIn(stocks), pieces: cutPiecesIn('1~a~50x100x3~either_2~b~10x10x1~either') }).facts.find(
      ({ label }) => label.startsWith('Price'),
    );
  it('adds up the sheets that bear a price, and names those that bear none', () => {
    // two sheets at 2.50 and one at 4
    expect(price('board~100x100~long~0~2.5_paper~100x100~long~0~4')).toMatchObject({
      value: '9',
      note: 'In your own currency.',
    });
    expect(price('board~100x100~long~0~2.5_paper~100x100~long')).toMatchObject({
      value: '5',
      note: 'In your own currency, without paper.',
    });
    expect(price('board~100x100~long_paper~100x100~long')).toBeUndefined();
  });
  it('calls what has no name by its row, and counts its sheets', () => {
    const found = answered({ stocks: stocksIn('~100x100~long'), pieces: cutPiecesIn('1~~50x100x2~either'), kerf: 0 });
    expect(found.sentence).toMatch(/^1 sheet of sheet 1\./);
    expect(found.brief).toEqual(['1 sheet 1', '1 sheet']);
    expect(found.asked).toBe('2 pieces');
    expect(found.stocks[0]!.sheets[0]!.title).toBe('Cut one sheet like this');
    const more = answered({ stocks: stocksIn('~100x100~long'), pieces: cutPiecesIn('1~~50x100x8~either'), kerf: 0 });
    expect(more.brief[1]).toBe('4 sheets');
    expect(more.stocks[0]!.sheets[0]!.title).toBe('Cut 4 sheets like this');
  });
  it('says what a cut takes, in the unit that was typed', () => {
    const warned = (kerf: number, unit: CutPlan['unit']) =>
      answered({
        kerf,
        unit,
        stocks: stocksIn('a~100x100~long'),
        pieces: cutPiecesIn('1~p~40x40x1~either'),
      }).warnings.join();
    expect(warned(2, 'mm')).toContain('Each cut takes 2 mm');
    expect(warned(25.4, 'in')).toContain('Each cut takes 1 in');
    expect(warned(0, 'mm')).toBe('');
  });
  it('puts a slip beside its own field', () => {
    const fields = (change: Partial<CutPlan>) => {
      const found = cutAnswer({ ...DEFAULT_CUT, kits: 1, ...change });
      return found.ok ? [] : found.errors.map(({ field }) => field);
    };
    expect(fields({ pieces: [] })).toEqual(['pieces']);
    expect(fields({ stocks: stocksIn('a~100x100~long~60'), pieces: cutPiecesIn('1~p~40x40x1~either') })).toContain(
      'stock-0-trim',
    );
    expect(fields({ stocks: stocksIn('a~100x100~long'), pieces: cutPiecesIn('2~p~40x40x1~either') })).toEqual([
      'piece-0-stock',
    ]);
    expect(
      fields({
        stocks: stocksIn('a~100x100~long_b~50x50~long'),
        pieces: cutPiecesIn('1~p~40x40x1~either_2~q~60x10x1~height'),
      }),
    ).toEqual(['piece-1-wide']);
  });
  it('reads no row with a length out of its limits', () => {
    expect(decodeStocks('a~100x100~long~0~5')).toEqual([
      { name: 'a', widthMm: 100, heightMm: 100, grain: 'long', trimMm: 0, price: 5 },
    ]);
    for (const text of ['a~999999x100~long', 'a~100x0~long', 'a~100x100~long~9999', 'a~100x100~up', ''])
      expect(decodeStocks(text), text).toBeUndefined();
    for (const text of ['0~a~10x10x1~either', '1~a~0x10x1~either', '1~a~10x0x1~either', '1~a~10x10x0~either', 'a'])
      expect(decodeCutPieces(text), text).toBeUndefined();
  });
});
