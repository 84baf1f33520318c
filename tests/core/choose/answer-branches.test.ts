/** The covering and cutting calculators: what they say of plans unlike the usual one. */
import { describe, expect, it } from 'vitest';
import { coverAnswer } from '../../../src/core/cover/answer';
import { flatFacts } from '../../../src/core/handover/cover-flat';
import { DEFAULT_COVER, rowsOf, type CoverPlan } from '../../../src/core/cover/plan';
import { cutAnswer } from '../../../src/core/cut/answer';
import { decodeCutPieces, decodeStocks } from '../../../src/core/cut/codec';
import { DEFAULT_CUT, type CutPlan } from '../../../src/core/cut/plan';
import { classAnswer } from '../../../src/core/class/answer';
import { DEFAULT_CLASS, type ClassPlan } from '../../../src/core/class/plan';
import { cuttingMinutes, scheduleFor } from '../../../src/core/class/schedule';
import { catalogue } from '../../../src/data/catalogue';

const plainly = (text: string) => text.replaceAll('\u00a0', ' ');

describe('covering', () => {
  function answered(change: Partial<CoverPlan>) {
    const found = coverAnswer({ ...DEFAULT_COVER, ...change }, catalogue, flatFacts);
    if (!found.ok) throw new Error(found.errors[0]?.message);
    return found.value;
  }
  const problems = (change: Partial<CoverPlan>) => {
    const found = coverAnswer({ ...DEFAULT_COVER, ...change }, catalogue);
    return found.ok ? [] : found.errors.map(({ field }) => field);
  };
  const fact = (change: Partial<CoverPlan>, label: string) => answered(change).facts.find((one) => one.label === label);

  it('says beside its field what is not in the lists', () => {
    expect(problems({ adhesive: 'no-such' })).toEqual(['adhesive']);
    expect(problems({ tool: 'no-such' })).toEqual(['tool']);
    expect(problems({ paper: 'no-such' })).toEqual(['paper']);
    const dry = [...catalogue.adhesives].find(([, { form }]) => form !== 'wet')!;
    expect(problems({ adhesive: dry[0] })).toEqual(['adhesive']);
    expect(problems({})).toEqual([]);
  });
  it('asks for a piece of one’s own, and covers the one that is given', () => {
    expect(rowsOf({ ...DEFAULT_COVER, thing: 'own', pieces: 'nonsense' })).toEqual([]);
    expect(problems({ thing: 'own', pieces: 'nonsense' })).not.toEqual([]);
    // 200 × 300 mm twice is 0.12 m²
    expect(answered({ thing: 'own', pieces: '200x300x2', makers: 1 }).coverage.squareMetres).toBeCloseTo(0.12, 12);
  });
  it('reckons the bow of the largest of loose pieces', () => {
    const note = (pieces: string) => fact({ thing: 'own', pieces }, 'It dries flat')!.value;
    expect(note('100x100x1_200x300x1')).toBe(note('200x300x1'));
    expect(note('200x300x1_100x100x1')).toBe(note('200x300x1'));
  });
  it('says the class and the cost only where they were asked for', () => {
    expect(fact({ makers: 1 }, 'For the class')).toBeUndefined();
    expect(plainly(fact({ makers: 12, spare: 10 }, 'For the class')!.value)).toBe('12 makers, 10 % spare');
    expect(fact({ bottle: undefined, price: 5 }, 'Bottles')).toBeUndefined();
    const bottles = { bottle: 100, price: undefined } as const;
    expect(plainly(fact(bottles, 'Bottles')!.value)).toMatch(/^\d+ of 100 ml$/);
    expect(fact(bottles, 'Cost')).toBeUndefined();
    const dear = { thing: 'own', pieces: '1000x1000x1', bottle: 1000, price: 123.4, makers: 1 } as const;
    // one bottle of a litre is plenty for a square metre (common practice: 100 to 200 g/m²)
    expect(fact(dear, 'Cost')!.value).toBe('123.4');
    expect(fact({ ...dear, price: 12.34 }, 'Cost')!.value).toBe('12.3');
  });
  it('says whether the room in the sheet was measured', () => {
    expect(fact({ paper: 'wove-text' }, 'Room in the sheet')!.note).toContain('from its records');
    expect(fact({ paper: 'wove-text~80gsm~100um' }, 'Room in the sheet')!.note).toContain('from your measurements');
  });
});

describe('cutting', () => {
  function answered(change: Partial<CutPlan>) {
    const found = cutAnswer({ ...DEFAULT_CUT, kits: 1, ...change });
    if (!found.ok) throw new Error(found.errors[0]?.message);
    return found.value;
  }
  const price = (stocks: string) =>
    answered({ stocks, pieces: '1~a~50x100x3~either_2~b~10x10x1~either' }).facts.find(({ label }) =>
      label.startsWith('Price'),
    );
  it('adds up the sheets that bear a price, and names those that bear none', () => {
    // two sheets at 2.50 and one at 4
    expect(price('board~100x100~long~0~2.5_paper~100x100~long~0~4')).toMatchObject({
      ...{ value: '9', note: 'In your own currency.' },
    });
    expect(price('board~100x100~long~0~2.5_paper~100x100~long')).toMatchObject({
      ...{ value: '5', note: 'In your own currency, without paper.' },
    });
    expect(price('board~100x100~long_paper~100x100~long')).toBeUndefined();
  });
  it('calls what has no name by its row, and counts its sheets', () => {
    const found = answered({ stocks: '~100x100~long', pieces: '1~~50x100x2~either', kerf: 0 });
    expect(found.sentence).toMatch(/^1 sheet of sheet 1\./);
    expect(found.brief).toEqual(['1 sheet 1', '1 sheet']);
    expect(found.stocks[0]!.sheets[0]!.title).toBe('Cut one sheet like this');
    const more = answered({ stocks: '~100x100~long', pieces: '1~~50x100x8~either', kerf: 0 });
    expect(more.brief[1]).toBe('4 sheets');
    expect(more.stocks[0]!.sheets[0]!.title).toBe('Cut 4 sheets like this');
  });
  it('says what a cut takes, in the unit that was typed', () => {
    const warned = (kerf: number, unit: CutPlan['unit']) =>
      answered({ kerf, unit, stocks: 'a~100x100~long', pieces: '1~p~40x40x1~either' }).warnings.join();
    expect(warned(2, 'mm')).toContain('Each cut takes 2 mm');
    expect(warned(25.4, 'in')).toContain('Each cut takes 1 in');
    expect(warned(0, 'mm')).toBe('');
  });
  it('puts a slip beside its own field', () => {
    const fields = (change: Partial<CutPlan>) => {
      const found = cutAnswer({ ...DEFAULT_CUT, kits: 1, ...change });
      return found.ok ? [] : found.errors.map(({ field }) => field);
    };
    expect(fields({ pieces: 'nonsense' })).toEqual(['pieces']);
    expect(fields({ stocks: 'a~100x100~long~60', pieces: '1~p~40x40x1~either' })).toContain('stock-0-trim');
    expect(fields({ stocks: 'a~100x100~long', pieces: '2~p~40x40x1~either' })).toEqual(['piece-0-stock']);
    expect(fields({ stocks: 'a~100x100~long_b~50x50~long', pieces: '1~p~40x40x1~either_2~q~60x10x1~height' })).toEqual([
      'piece-1-wide',
    ]);
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

describe('a class', () => {
  function answered(change: Partial<ClassPlan>) {
    const found = classAnswer({ ...DEFAULT_CLASS, ...change }, catalogue);
    if (!found.ok) throw new Error(found.errors.map(({ field, message }) => `${field}: ${message}`).join('\n'));
    return found.value;
  }
  it('reckons a minute and a half for a cut in board and less in paper, and spreads them over afternoons', () => {
    const sheet = (cuts: number, times: number) => ({ steps: Array(cuts).fill({}), plan: { times } });
    const cut = (times: number) =>
      ({
        stocks: [
          { stock: { name: 'board' }, sheets: [sheet(4, times), sheet(2, 1)] },
          { stock: { name: 'paper' }, sheets: [sheet(5, 2)] },
        ],
      }) as never;
    // (4 × 10 + 2) × 1.5 + 5 × 2 × 0.6 (the module's own minutes)
    expect(cuttingMinutes(cut(10))).toBeCloseTo(69, 9);
    const adhesive = catalogue.adhesives.get('pva') as never;
    const day = { batches: [], adhesive, length: 180, startsAt: 14 * 60, pressed: 'the boards' };
    const said = (times: number) => scheduleFor({ ...day, cut: cut(times) }).map(({ what }) => what);
    const nineOn = (times: number) =>
      scheduleFor({ ...day, cut: cut(times) }).find(({ what }) => /^Mark/.test(what))!.at;
    expect(said(10).join()).not.toContain('spread over');
    // an afternoon is four hours: 600 minutes are three of them, and begin at nine three days before
    expect(said(98).join()).toContain('spread over 3 days');
    expect(nineOn(98)).toBe(-3 * 24 * 60 + 9 * 60 - 14 * 60);
    expect(nineOn(10)).toBe(-24 * 60 + 9 * 60 - 14 * 60);
    expect(said(10).at(-1)).toMatch(/^Dry enough to open/);
  });
  it('names the covering after its stock', () => {
    expect(JSON.stringify(answered({ stock: 'cloth' }))).not.toContain('bookcloth');
    expect(JSON.stringify(answered({ stock: 'paper', cover: 'quarter' }))).toContain('bookcloth');
  });
  it('says beside its field what cannot be', () => {
    const found = classAnswer({ ...DEFAULT_CLASS, joint: 1 }, catalogue);
    expect(found.ok ? [] : found.errors.map(({ field }) => field)).toEqual(['joint']);
    const unknown = classAnswer({ ...DEFAULT_CLASS, adhesive: 'no-such' }, catalogue);
    expect(unknown.ok ? [] : unknown.errors.map(({ field }) => field)).toContain('adhesive');
  });
});
