/** Small formulas at their edges: expected values by hand, by integration in small steps, or by a limit the module states. */
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { dilutionProblem } from '../../src/core/mix/dilution-input';
import { asOneDrop, parseDrops, readDrops, showDrops } from '../../src/core/paper/drop-test';
import { findGrain, type Seen } from '../../src/core/paper/grain-tests';
import { thicknessWords } from '../../src/core/mix/words';
import { figuresIn, fingerprint, parsePairs, sameFigures, writePairs } from '../../src/core/link/pairs';
import { isPaper, paperInSentence, paperName, readPaper, writePaper } from '../../src/core/paper/own-paper';
import { coolingSeconds } from '../../src/core/adhesive/cooling';
import { densityIsPossible, grammageFromThousand, thousandFromGrammage } from '../../src/core/paper/paper';
import { lowDiscrepancyPoints, seededUniform } from '../../src/core/base/random';
import { dropFromSorptivity, sorptivityFromDrop } from '../../src/core/paper/sorption';
import { duration, durationSpan, figure } from '../../src/core/base/format';
import { asTyped, inUnit, lengthSpec, parseLength } from '../../src/core/base/length-text';
import { parseNumber } from '../../src/core/base/number-text';
import { jugStep, roundUpForJug } from '../../src/core/base/rounding';
import { alone, asAdhesive, blend, partsForSolids } from '../../src/core/adhesive/blend';
import { read, type Spec } from '../../src/core/link/fields';
import { takenUp, timeToLose, type Flow } from '../../src/core/joint/water-loss';
import { catalogue } from '../../src/data/catalogue';

describe('water leaving a coat', () => {
  const base: Flow = { paper: 2, substrate: 1, air: 0.01, capacity: 20, drainable: 60 };
  /** What is lost after t, from the rates, in small steps of √t: an independent reckoning. */
  function lost({ paper, substrate, air, capacity, drainable }: Flow, seconds: number): number {
    const steps = 20_000;
    const root = Math.sqrt(seconds);
    let [sheet, board] = [0, 0];
    for (let i = 0; i < steps; i += 1) {
      const left = drainable - sheet - board;
      if (left <= 0) break;
      const drinks = sheet < capacity ? Math.min((paper * root) / steps, capacity - sheet, left) : 0;
      sheet += drinks;
      board += Math.min((substrate * root) / steps, left - drinks);
    }
    return sheet + board + air * seconds;
  }
  test.each([
    ['both drink', base, 10],
    ['the sheet is full', base, 40],
    ['suction has had all', base, 75],
    ['the sheet has room for all', { ...base, capacity: 100 }, 70],
    ['nothing goes into the sheet', { ...base, paper: 0 }, 30],
    ['only the sheet drinks', { ...base, substrate: 0 }, 25],
    ['only the air', { ...base, paper: 0, substrate: 0 }, 5],
    ['the room takes what suction leaves', base, 80],
    ['the room takes what suction leaves of a sheet with room', { ...base, capacity: 100 }, 80],
  ] as const)('is lost when it should be: %s', (_, flow, grams) => {
    const seconds = timeToLose(flow, grams);
    expect(Math.abs(lost(flow, seconds) - grams)).toBeLessThan(0.02);
  });
  it('takes no time for nothing, and for ever without a way out', () => {
    expect(timeToLose(base, 0)).toBe(0);
    expect(timeToLose(base, -1)).toBe(0);
    const shut = { ...base, air: 0 };
    // by suction alone it gives 60 and no more
    expect(timeToLose(shut, 60)).toBeLessThan(Infinity);
    expect(timeToLose(shut, 61)).toBe(Infinity);
    expect(timeToLose({ ...shut, paper: 0, substrate: 0 }, 1)).toBe(Infinity);
    expect(timeToLose({ ...shut, paper: 0, substrate: 0 }, 0)).toBe(0);
  });
  it('a sheet without pores that drinks nothing leaves all to the board, then to the room', () => {
    const solid = { ...base, paper: 0, capacity: 0 };
    expect(timeToLose({ ...solid, air: 0 }, 60)).toBe(60 ** 2);
    expect(timeToLose({ ...solid, air: 0 }, 61)).toBe(Infinity);
    // 60 by suction and 40 by the room at 0.01 a second, which is longer than the board takes
    expect(timeToLose(solid, 100)).toBeCloseTo(4000, 9);
  });
  it('is shared between the sides until the sheet is full and the coat has given all', () => {
    expect(takenUp(base, 5)).toEqual({ paper: 10, substrate: 5 });
    expect(takenUp(base, 15)).toEqual({ paper: 20, substrate: 15 });
    // 20 in the sheet and 40 in the board: all that suction draws, at √t = 40
    expect(takenUp(base, 100)).toEqual({ paper: 20, substrate: 40 });
    // room for all: 60 at 3 a step is √t = 20
    expect(takenUp({ ...base, capacity: 100 }, 100)).toEqual({ paper: 40, substrate: 20 });
    expect(takenUp({ ...base, capacity: 40 }, 100)).toEqual({ paper: 40, substrate: 20 });
    expect(takenUp({ ...base, substrate: 0 }, 100)).toEqual({ paper: 20, substrate: 0 });
    expect(takenUp({ ...base, paper: 0, substrate: 0 }, 9)).toEqual({ paper: 0, substrate: 0 });
    // a coat without water between two closed sides
    expect(takenUp({ ...base, paper: 0, substrate: 0, drainable: 0 }, 9)).toEqual({ paper: 0, substrate: 0 });
  });
});

describe('key=value pairs', () => {
  const map = (text: unknown) => Object.fromEntries(parsePairs(text).query);
  it('reads pairs with or without a mark before them', () => {
    expect(map('a=1&b=two+words&c=%C3%A9')).toEqual({ a: '1', b: 'two words', c: 'é' });
    expect(map('?a=1')).toEqual({ a: '1' });
    expect(map('#a=1')).toEqual({ a: '1' });
    expect(map('a?=1&b=?')).toEqual({ 'a?': '1', b: '?' });
    expect(map('=1&x&y=')).toEqual({ y: '' });
    expect(map(7)).toEqual({});
  });
  it('names what cannot be read', () => {
    expect(parsePairs('a=%E0%A4%A&b=1')).toEqual({ query: new Map([['b', '1']]), broken: ['a'] });
  });
  it('cuts a text of more than 4000 characters between two pairs, and says so', () => {
    const fits = `a=1&b=${'9'.repeat(3994)}`;
    expect(fits).toHaveLength(4000);
    expect(parsePairs(fits).broken).toEqual([]);
    const long = `a=1&b=${'9'.repeat(3995)}`;
    expect(map(long)).toEqual({ a: '1' });
    expect(parsePairs(long).broken).toEqual(['all past its first 4000 characters']);
    expect(map('9'.repeat(5000))).toEqual({});
    // the mark before a pair that begins at the very end counts as the end of the last
    expect(Object.keys(map(`a=${'1'.repeat(3998)}&b=2`))).toEqual(['a']);
  });
  it('writes what it reads', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), (text) => {
        expect(map(writePairs([['k', text]]))).toEqual({ k: text });
      }),
    );
  });
  it('knows an answer by its figures, to 2 %', () => {
    expect(fingerprint(3, [1234.5, 0.5])).toBe('3_1230_0.5');
    expect(figuresIn('3_1230_0.5')).toEqual([1230, 0.5]);
    for (const text of ['', '3', 'x_1', '3_1_2_3_4_5_6_7', '3_-1', '3_1e9']) expect(figuresIn(text)).toBeUndefined();
    expect(sameFigures('1_100_50', '2_102_50')).toBe(true);
    expect(sameFigures('1_100_50', '1_103_50')).toBe(false);
    expect(sameFigures('1_103', '1_100')).toBe(false);
    expect(sameFigures('1_98', '1_100')).toBe(true);
    expect(sameFigures('1_97', '1_100')).toBe(false);
    expect(sameFigures('1_100', '1_100_50')).toBe(false);
    expect(sameFigures('nonsense', 'nonsense')).toBe(false);
    expect(sameFigures('1_0', '1_0')).toBe(true);
  });
});

describe('one field of a plan', () => {
  const measured = { key: 'k', low: 2, high: 5, unit: 'mm', what: 'The joint' } as const;
  const code = (spec: Spec, text: string) => {
    const found = read('joint', spec, text);
    return found.ok ? found.value : found.errors[0]!.code;
  };
  it('takes numbers from its low to its high', () => {
    const spec: Spec = { ...measured, kind: 'number' };
    expect(['2', '5', ' 3,5 '].map((text) => code(spec, text))).toEqual([2, 5, 3.5]);
    expect(['1.99', '5.01', '', 'x'].map((text) => code(spec, text))).toEqual([
      ...['too-small', 'too-large', 'empty', 'not-a-number'],
    ]);
    const found = read('joint', spec, '9');
    expect(found.ok ? [] : found.errors).toEqual([
      {
        ...{ field: 'joint', code: 'too-large', limits: { low: 2, high: 5, unit: 'mm' } },
        message: 'The joint must be a number from 2 to 5\u00a0mm.',
      },
    ]);
  });
  it('takes whole numbers where it is counted', () => {
    const spec: Spec = { ...measured, kind: 'number', unit: '', whole: true };
    expect(code(spec, '3')).toBe(3);
    expect(code(spec, '3.5')).toBe('not-a-number');
    const found = read('joint', spec, '3.5');
    expect(found.ok ? '' : found.errors[0]!.message).toBe('The joint must be a whole number from 2 to 5.');
  });
  it('may be left empty only where it says so', () => {
    expect(code({ ...measured, kind: 'maybe' }, ' ')).toBeUndefined();
    expect(code({ ...measured, kind: 'maybe' }, '9')).toBe('too-large');
  });
  it('is one of its list, or fits its pattern', () => {
    const one: Spec = { kind: 'one-of', key: 'k', of: ['a', 'b'], what: 'It' };
    expect(code(one, ' b ')).toBe('b');
    expect(code(one, 'c')).toBe('unknown-id');
    const text: Spec = { kind: 'text', key: 'k', pattern: /^[ab]+$/, what: 'It' };
    expect(code(text, 'abba')).toBe('abba');
    expect(code(text, 'abc')).toBe('unknown-id');
    const said = (spec: Spec) => {
      const found = read('f', spec, 'c');
      return found.ok ? '' : found.errors[0]!.message;
    };
    expect([said(one), said(text)]).toEqual(['It: choose one from the list.', 'It cannot be read.']);
  });
});

describe('strengths and amounts that are typed', () => {
  it('says why a figure cannot be', () => {
    const code = (value: number) => dilutionProblem('haveMillilitres', value)?.code;
    // from 1 to 100 000 ml, as the field's own limits say
    expect([1, 100_000].map(code)).toEqual([undefined, undefined]);
    expect([0, -1, 0.5, 100_001, NaN, Infinity].map(code)).toEqual([
      ...['not-positive', 'not-positive', 'too-small', 'too-large', 'not-a-number', 'not-a-number'],
    ]);
  });
  it('says how thick a mix is beside its base', () => {
    const words = (thinner: number) => thicknessWords(thinner, 'paste');
    expect([0.85, 1, 1.2].map(words)).toEqual(Array(3).fill('about as thick as paste'));
    expect(words(0.5)).toBe('about 2 times as thick as paste');
    expect(words(0.84)).toMatch(/^about 1\.2 times/);
    expect(words(1.3)).toBe('a little thinner than paste');
    expect(words(2)).toBe('about half as thick as paste');
    expect(words(6.2)).toBe('about a sixth as thick as paste');
    expect(words(30.4)).not.toContain('far thinner');
    expect(words(31)).toBe('far thinner than paste');
  });
});

describe('grain by Bayes’ rule', () => {
  const untried = { bend: 'untried', strips: 'untried', damp: 'untried', tear: 'untried' } as const;
  const chances = (seen: Partial<Record<keyof typeof untried, Seen>>, kind: 'none' | 'weak' | 'marked') =>
    findGrain({ ...untried, ...seen }, kind);
  it('starts from how marked such a paper’s grain is', () => {
    const { chances: before, likeliest, settled, against } = chances({}, 'weak');
    expect(before.height).toBeCloseTo(0.35, 12);
    expect(before.width).toBeCloseTo(0.35, 12);
    expect(before.none).toBeCloseTo(0.3, 12);
    expect({ likeliest, settled, against }).toEqual({ likeliest: 'height', settled: false, against: [] });
    expect(chances({}, 'none')).toMatchObject({ likeliest: 'none', settled: true });
  });
  it('weighs one test as it is trusted, worked by hand', () => {
    // height 0.35 × 0.85, width 0.35 × 0.05, none 0.3 × 0.2: 0.2975 : 0.0175 : 0.06
    const bent = chances({ bend: 'height' }, 'weak').chances;
    expect(bent.height).toBeCloseTo(0.2975 / 0.375, 12);
    expect(bent.width).toBeCloseTo(0.0175 / 0.375, 12);
    // unclear: 0.35 × 0.2, twice, against 0.3 × 0.6
    const torn = chances({ tear: 'unclear' }, 'weak').chances;
    expect(torn.height).toBeCloseTo(0.07 / 0.32, 12);
    expect(torn.none).toBeCloseTo(0.18 / 0.32, 12);
  });
  it('multiplies what two tests say, and names the one that says otherwise', () => {
    // marked: 0.475 × 0.9 × 0.1, 0.475 × 0.05 × 0.7, 0.05 × 0.2 × 0.2
    const found = chances({ damp: 'height', tear: 'width' }, 'marked');
    const [height, width, none] = [0.475 * 0.09, 0.475 * 0.035, 0.05 * 0.04];
    expect(found.chances.height).toBeCloseTo(height / (height + width + none), 12);
    expect(found).toMatchObject({ likeliest: 'height', settled: false, against: ['tear'], next: 'bend' });
    expect(chances({ strips: 'unclear', damp: 'width' }, 'marked').against).toEqual([]);
    expect(chances({ damp: 'width', tear: 'height' }, 'marked').against).toEqual(['tear']);
  });
});

describe('drops', () => {
  it('takes one to ten, each from 0.2 to 120 s', () => {
    expect(parseDrops('0.2 120')).toEqual({ ok: true, value: '0.2_120' });
    expect(parseDrops('1 2 3 4 5 6 7 8 9 10').ok).toBe(true);
    const said = (typed: string) => {
      const found = parseDrops(typed);
      return found.ok ? undefined : `${found.errors[0]!.code}: ${found.errors[0]!.message}`;
    };
    expect(said(' ')).toMatch(/^empty: Give the seconds of 1 to 10 drops/);
    expect(said('0.19')).toMatch(/^not-a-number: “0\.19” is not a time/);
    expect(said('20 soon')).toMatch(/“soon” is not a time/);
    expect(said('120.5')).toContain('choose hard-sized');
    expect(said(`${'x'.repeat(25)}`)).toContain(`“${'x'.repeat(20)}”`);
  });
  it('keeps hundredths, and shows what it kept', () => {
    expect(parseDrops('1.234')).toEqual({ ok: true, value: '1.23' });
    expect(showDrops('28_34_31.5')).toBe('28 34 31.5');
    expect(readDrops('0.2_120')).toEqual([0.2, 120]);
    for (const kept of ['', '0.19', '120.01', '1_', 'x', '1_0.1']) expect(readDrops(kept), kept).toBeUndefined();
    expect(asOneDrop([7])).toEqual({ seconds: 7, factor: 1 });
    // (1 × 10 × 100)^(1/3)
    expect(asOneDrop([1, 10, 100])).toEqual({ seconds: 10, factor: 100 });
  });
});

describe('a paper as text', () => {
  it('takes each measure from its low to its high', () => {
    for (const part of ['5gsm', '600gsm', '10um', '3000um', '0.2s', '120s', '1cobb', '400cobb'])
      expect(readPaper(`wove-text~${part}`), part).toBeDefined();
    for (const part of ['4.9gsm', '601gsm', '9um', '3001um', '0.1s', '121s', '0.9cobb', '401cobb', '5', 'gsm', 'x'])
      expect(readPaper(`wove-text~${part}`), part).toBeUndefined();
  });
  it('reads words, and a name of up to forty letters', () => {
    expect(readPaper('kozo~92gsm~140um~25s~30cobb~textured~sized~runs~side~named Grey')).toEqual({
      ...{ family: 'kozo', grammage: 92, caliper: 140, dropSeconds: 25, cobb: 30 },
      ...{ surface: 'textured', sizing: 'sized', coloursRun: true, grain: 'width', name: 'Grey' },
    });
    expect(readPaper('kozo~fast~nograin')).toEqual({ family: 'kozo', coloursRun: false, grain: 'none' });
    expect(readPaper(`kozo~named ${'a'.repeat(40)}`)?.name).toHaveLength(40);
    expect(readPaper(`kozo~named ${'a'.repeat(41)}`)).toBeUndefined();
    expect(readPaper('kozo~named ')).toBeUndefined();
    expect(readPaper('kozo~constructor')).toBeUndefined();
    expect(readPaper('Kozo')).toBeUndefined();
    expect(writePaper({ family: 'kozo' })).toBe('kozo');
  });
  it('is a paper only when its density can be', () => {
    const usual = catalogue.papers.get('wove-text')!.grammage.middle;
    expect(isPaper('wove-text', catalogue)).toBe(true);
    // by its kind's weight at 10 µm it would be denser than cellulose (1.5 g/cm³), whatever that weight is
    expect(usual / 10).toBeGreaterThan(1.5);
    expect(isPaper('wove-text~10um', catalogue)).toBe(false);
    expect(isPaper('wove-text~10gsm~10um', catalogue)).toBe(true);
  });
  it('is called by its own name in quotation marks, or by its kind', () => {
    const kind = catalogue.papers.get('wove-text')!.name;
    expect(paperName('wove-text~80gsm', catalogue)).toBe(kind);
    expect(paperName('wove-text~named Grey', catalogue)).toBe('Grey');
    expect(paperInSentence('wove-text~named Grey', catalogue)).toBe('“Grey”');
    expect(paperInSentence('wove-text', catalogue)).toBe(kind[0]!.toLowerCase() + kind.slice(1));
  });
});

describe('points and draws', () => {
  it('steps by the golden ratio in one dimension and by the plastic number’s powers in two (published)', () => {
    const near = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThan(1e-9);
    const line = lowDiscrepancyPoints(3, 1);
    expect(line).toHaveLength(3);
    // 0.5 + n × 0.6180339887498949, without the whole part
    [0.1180339887498949, 0.7360679774997898, 0.3541019662496847].forEach((x, i) => near(line[i]!, x));
    const plane = lowDiscrepancyPoints(2, 2);
    expect(plane).toHaveLength(4);
    // steps 0.7548776662466927 and 0.5698402909980532
    [0.2548776662466927, 0.0698402909980532, 0.0097553324933854, 0.6396805819961064].forEach((x, i) =>
      near(plane[i]!, x),
    );
  });
  it('draws what the recipe draws when it is done with whole numbers of any size', () => {
    const mask = 0xffffffffn;
    const product = (a: bigint, b: bigint) => (a * b) & mask;
    let state = 11n;
    const uniform = seededUniform(11);
    for (let i = 0; i < 20; i += 1) {
      state = (state + 0x6d2b79f5n) & mask;
      let t = product(state ^ (state >> 15n), state | 1n);
      t ^= (t + product(t ^ (t >> 7n), t | 61n)) & mask;
      expect(uniform()).toBe(Number((t ^ (t >> 14n)) & mask) / 2 ** 32);
    }
  });
});

describe('sheets, drops and cooling', () => {
  it('takes what a stain holds only where both drop and stain were measured', () => {
    // 0.05 ml on a spot of 10 mm: 0.05 g / 78.54 mm² is 636.6 g/m², over √25
    const measured = { dropMillilitres: 0.05, stainMm: 10 };
    expect(sorptivityFromDrop(25, measured)).toBeCloseTo(0.05 / (Math.PI * 25e-6) / 5, 6);
    const ordinary = sorptivityFromDrop(25);
    expect(sorptivityFromDrop(25, { dropMillilitres: 0.05 })).toBe(ordinary);
    expect(sorptivityFromDrop(25, { stainMm: 10 })).toBe(ordinary);
  });
  it('turns round: the drop of a sorptivity is the drop it came from', () => {
    for (const seconds of [1, 8, 60]) expect(dropFromSorptivity(sorptivityFromDrop(seconds))).toBeCloseTo(seconds, 9);
    expect(dropFromSorptivity(0)).toBe(Infinity);
    expect(() => dropFromSorptivity(-1)).toThrow(/sorptivity/);
    expect(() => dropFromSorptivity(1001)).toThrow(/sorptivity/);
  });
  it('gels only what is used hotter than its gel, in a room that is colder', () => {
    // half-way from 60 to 20 °C is 40: 20 s × ln 2
    expect(coolingSeconds(60, 40, 20)).toBeCloseTo(20 * Math.LN2, 9);
    for (const [used, gel, room] of [
      ...([
        [40, 40, 20],
        [39, 40, 20],
        [60, 40, 40],
        [60, 40, 41],
        [undefined, 40, 20],
        [60, undefined, 20],
      ] as const),
    ])
      expect(coolingSeconds(used, gel, room)).toBe(Infinity);
  });
  it('refuses sheets and weights that are none', () => {
    for (const bad of [0, -1, NaN]) {
      expect(() => grammageFromThousand(bad, 788, 1091)).toThrow(/kilograms/);
      expect(() => grammageFromThousand(70, bad, 1091)).toThrow(/widthMm/);
      expect(() => grammageFromThousand(70, 788, bad)).toThrow(/heightMm/);
      expect(() => thousandFromGrammage(bad)).toThrow(/gsm/);
      expect(() => thousandFromGrammage(80, bad)).toThrow(/widthMm/);
    }
  });
  it('takes a density up to that of cellulose itself', () => {
    // published: 1.5 g/cm³, so 150 g/m² cannot be thinner than 100 µm
    expect(densityIsPossible(150, 100)).toBe(true);
    expect(densityIsPossible(150, 99)).toBe(false);
  });
});

describe('lengths in words', () => {
  const limits = { field: 'wide', what: 'The width', low: 25.4, high: 254 };
  const typed = (text: string, unit: 'mm' | 'cm' | 'in') => {
    const found = parseLength(text, { ...limits, unit });
    return found.ok ? Number(found.value.toFixed(6)) : found.errors[0]!;
  };
  it('takes both limits, in whatever unit', () => {
    expect([typed('1', 'in'), typed('10', 'in'), typed(' 10 in ', 'mm')]).toEqual([25.4, 254, 254]);
    expect([typed('2.54', 'cm'), typed('25.4', 'cm'), typed('25,4 cm', 'in')]).toEqual([25.4, 254, 254]);
  });
  it('says the limits in the unit that was asked for', () => {
    // an inch is 25.4 mm
    expect(typed('11', 'in')).toMatchObject({
      field: 'wide',
      code: 'too-large',
      limits: { low: 1, high: 10, unit: 'in' },
    });
    expect(typed('1', 'cm')).toMatchObject({ code: 'too-small', limits: { low: 2.54, high: 25.4, unit: 'cm' } });
    expect(typed('', 'mm')).toMatchObject({ limits: { low: 25.4, high: 254, unit: 'mm' } });
  });
  it('reads fractions whole: nothing before them, nothing after, and no top as great as its bottom', () => {
    expect([typed('2 1/2', 'in'), typed('2-1/2', 'in'), typed('2   1 / 2', 'in'), typed('5/4', 'in')]).toEqual([
      ...[63.5, 63.5, 63.5, 31.75],
    ]);
    for (const bad of ['2 2/2', '2 3/2', '1/0', 'x 1/2', '1/2 3', '1/2/3', '5 mm 2'])
      expect(typed(bad, 'in'), bad).toHaveProperty('code');
  });
  it('shows millimetres to a tenth, centimetres to a hundredth, inches by the 32nd where they are near one', () => {
    expect([inUnit(12.345, 'mm'), inUnit(123.45, 'cm')]).toEqual(['12.3', '12.35']);
    expect([inUnit(25.4 / 32, 'in'), inUnit(25.4 * 1.5, 'in'), inUnit(254, 'in')]).toEqual(['1/32', '1 1/2', '10']);
    // 0.1 mm is 0.004 in, for which no 32nd stands
    expect(inUnit(0.1, 'in')).toBe('0.004');
    expect(inUnit(0, 'in')).toBe('0');
  });
  it('shows what was typed exactly where the rounded figure would be another', () => {
    expect([asTyped(12.345, 'mm'), asTyped(12.3, 'mm'), asTyped(123.456, 'cm')]).toEqual(['12.345', '12.3', '12.3456']);
    expect([asTyped(38.1, 'in'), asTyped(38, 'in')]).toEqual(['1 1/2', '1.49606']);
  });
  it('is a field of a plan that reads and shows itself', () => {
    const spec = lengthSpec('length', 'w', 'The width', 25.4, 254);
    expect(spec.parse('10', 'in', 'wide')).toEqual({ ok: true, value: 254 });
    const found = spec.parse('11', 'in', 'wide');
    expect(found.ok ? undefined : found.errors[0]).toMatchObject({ field: 'wide', limits: { low: 1, high: 10 } });
    expect(spec).toMatchObject({ kind: 'length', key: 'w', low: 25.4, high: 254, unit: 'mm' });
    expect(spec.show(254, 'in')).toBe('10');
  });
});

describe('numbers as they are typed and shown', () => {
  it('reads signs only at the front and any number of decimals', () => {
    expect([' \u22122,5 ', '+3', '.25', '1 200'].map(parseNumber)).toEqual([-2.5, 3, 0.25, 1200]);
    for (const bad of ['3\u22122', '1,2,3', '', '.', 'e5', '1e5']) expect(parseNumber(bad), bad).toBeUndefined();
  });
  it('shows no more digits than asked, and no noughts that say nothing', () => {
    expect([figure(0), figure(2.0004), figure(100), figure(0.1 + 0.2)]).toEqual(['0', '2', '100', '0.3']);
    expect([figure(2, 3), figure(NaN), figure(-0.5)]).toEqual(['2.00', 'not known', '-0.5']);
  });
  it('says seconds, minutes and hours at their turning points', () => {
    const said = (seconds: number) => duration(seconds).replace('\u00a0', ' ');
    expect([0.9, 1, 9.4, 10, 12, 114, 115, 3599, 3600].map(said)).toEqual([
      ...['under 1 s', '1 s', '9 s', '10 s', '10 s', '115 s', '2 min', '60 min', 'an hour or more'],
    ]);
    const span = (low: number, high: number) => durationSpan(low, high).replaceAll('\u00a0', ' ');
    expect(span(50, 110)).toBe('50 to 110 s');
    expect(span(0.5, 30)).toBe('under 1 s to 30 s');
    expect(span(40, 180)).toBe('40 s to 3 min');
    expect(span(600, 3600)).toBe('10 min or more');
    expect(span(3600, 7200)).toBe('an hour or more');
  });
  it('has the steps of a jug (the module’s own, common practice)', () => {
    expect([49, 50, 499, 500, 1999, 2000].map(jugStep)).toEqual([1, 5, 5, 10, 10, 50]);
    expect([0, 1, 5, 5.1, 42, 101, 850, 851].map(roundUpForJug)).toEqual([0, 5, 5, 10, 45, 105, 850, 860]);
    // a twentieth is 50, 500.6, 49.95 and 5 million ml
    expect([1001, 10_012, 999, 100_000_001].map(roundUpForJug)).toEqual([1050, 10_500, 1000, 105_000_000]);
  });
});

describe('stretching', () => {
  const base = { base: 'pva', extender: 'water', baseParts: 1, extenderParts: 1, by: 'mass' } as const;
  const solids = catalogue.ingredients.get('pva')!.solids.middle * 100;
  it('halves the solids when as much water goes in, and leaves the rest as water', () => {
    const made = blend(base, catalogue);
    expect(made.solidsPercent).toBeCloseTo(solids / 2, 9);
    expect(made.waterPercent).toBeCloseTo(100 - solids / 2, 9);
    expect(made.baseShare).toBeCloseTo(1, 12);
    expect(made.grams).toBeCloseTo(2, 12);
    expect(blend({ ...base, base: 'water', extenderParts: 0 }, catalogue).baseShare).toBe(0);
  });
  it('finds the parts for a strength, up to that of the base and down to above that of the extender', () => {
    expect(partsForSolids('pva', 'water', solids / 2, catalogue)).toBeCloseTo(1, 9);
    expect(partsForSolids('pva', 'water', solids, catalogue)).toBeCloseTo(0, 9);
    expect(() => partsForSolids('pva', 'water', solids + 0.1, catalogue)).toThrow(/solids/);
    expect(() => partsForSolids('pva', 'water', 0, catalogue)).toThrow(RangeError);
    const thin = blend(base, catalogue).solidsPercent;
    expect(() => partsForSolids('pva', 'pva', thin, catalogue)).toThrow(/can have from/);
  });
  it('leaves an extender of no parts out, and knows what can be poured', () => {
    expect(asAdhesive({ ...base, extenderParts: 0 }, catalogue).parts).toEqual([{ of: 'pva', parts: 1 }]);
    expect(asAdhesive(base, catalogue).parts).toHaveLength(2);
    expect(alone('pva', catalogue)).toBe(catalogue.adhesives.get('pva'));
    expect(alone('wheat-starch', catalogue)).toMatchObject({
      ...{ id: 'wheat-starch', form: 'wet', by: 'mass', parts: [{ of: 'wheat-starch', parts: 1 }] },
    });
    expect(() => alone('no-such', catalogue)).toThrow(/no-such/);
    expect(() => alone('wheat-starch', { ...catalogue, adhesives: new Map() })).toThrow(/no wet adhesive/);
  });
});
