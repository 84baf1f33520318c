/** The calculator of warp: what it says agrees with the bench's common sense, and with a sum by hand. */
import fc from 'fast-check';
import { describe, expect, test, it } from 'vitest';
import { encodePlan } from '../../../src/core/link/plan-link';
import { fingerprint, sameFigures } from '../../../src/core/link/pairs';
import { decodePlan } from '../../../src/core/link/read-plan-link';
import { BOND_CONSTANTS } from '../../../src/core/joint/constants';
import { flatAnswer, type FlatAnswer } from '../../../src/core/flat/answer';
import { makingOf } from '../../../src/core/flat/making';
import { DEFAULT_FLAT, FLAT_FIELDS, type FlatPlan } from '../../../src/core/flat/plan';
import { flatPaper } from '../../../src/core/flat/plies';
import { remediesFor } from '../../../src/core/flat/remedies';
import { bowsAt, farEnd, leftPulling, middlingBow, worseOf } from '../../../src/core/flat/stages';
import { bowWords } from '../../../src/core/flat/words';
import { readCatalogue } from '../../tools/read-content';
import { anyPlan } from '../support/any-plan';

const catalogue = readCatalogue();
const NONSENSE = /NaN|undefined|Infinity|not known|\[object/;

const told = (change: Partial<FlatPlan> = {}): FlatAnswer => {
  const found = flatAnswer({ ...DEFAULT_FLAT, ...change }, catalogue);
  if (!found.ok) throw new Error(found.errors[0]?.message);
  return found.value;
};
const laterMiddle = (change: Partial<FlatPlan> = {}) => told(change).bows.later.width.middle;
const ids = (of: ReadonlyMap<string, unknown>) => fc.constantFrom(...of.keys());
const boards = new Map([...catalogue.substrates].filter(([, { limp }]) => !limp));

const plans: fc.Arbitrary<FlatPlan> = fc
  .tuple(
    anyPlan(FLAT_FIELDS, DEFAULT_FLAT),
    fc.record({
      paper: ids(catalogue.papers),
      board: ids(boards),
      liningPaper: ids(catalogue.papers),
      adhesive: ids(catalogue.adhesives),
      tool: ids(catalogue.techniques),
    }),
  )
  .map(([plan, records]) => ({ ...plan, ...records }));

describe('which way, and how far', () => {
  test('just laid, the paper pushes the board away; dry, it pulls it hollow', () => {
    const { wet, dry } = told().bows;
    expect(wet.width.high).toBeLessThan(0);
    expect(dry.width.low).toBeGreaterThan(0);
  });
  test('at the middle of every range the dry bow is Timoshenko’s, worked out here in full', () => {
    // wove text, wetted by paste, on glass: no grain, no growth of the board, nothing drunk by it; the air stays as it is
    const plan: FlatPlan = { ...DEFAULT_FLAT, paper: 'wove-text', board: 'glass', adhesive: 'wheat-starch-paste-thin' };
    const still = { ...plan, tool: 'brush-full', press: 24, later: plan.humidity };
    const { wetExpansion, grammage, density, tensileIndex } = catalogue.papers.get('wove-text')!;
    const { thickness, modulus } = catalogue.substrates.get('glass')!;
    // nine parts of water in ten of the coat; soaked at soakedWater grams to the gram of fibre; pressing leaves 0.3
    const water = 0.9 * catalogue.techniques.get('brush-full')!.coat.middle;
    const wetted = water / (BOND_CONSTANTS.soakedWater * grammage.middle);
    const strain = wetExpansion.middle * wetted * 0.3;
    // 105 MPa for each N·m/g and g/cm³; g/m² over g/cm³ is µm
    const [t1, e1] = [grammage.middle / density.middle / 1000, 105 * tensileIndex.middle * density.middle];
    const [m, n, h] = [t1 / thickness.middle, e1 / modulus.middle, t1 + thickness.middle];
    const curvature = (6 * strain * (1 + m) ** 2) / (h * (3 * (1 + m) ** 2 + (1 + m * n) * (m ** 2 + 1 / (m * n))));
    const byHand = (curvature * plan.width ** 2) / 8;
    expect(wetted).toBeLessThan(1);
    expect(middlingBow(makingOf(still, catalogue)) / byHand).toBeCloseTo(1, 6);
    const { dry } = told(still).bows;
    expect(dry.width.low).toBeLessThan(byHand);
    expect(dry.width.high).toBeGreaterThan(byHand);
  });
  test('twice the width bows four times as far', () => {
    expect(laterMiddle({ width: 296 }) / laterMiddle({ width: 148 })).toBeCloseTo(4, 6);
  });
  test('the same paper on both faces lies flat, wet, dry and later', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const { paper, paperWeight, paperGrain } = plan;
        const liningGrain = paperGrain;
        const both = { ...plan, lining: 'paper', liningPaper: paper, liningWeight: paperWeight, liningGrain } as const;
        const found = told(both).bows;
        for (const { width, height } of Object.values(found))
          for (const bow of [width, height]) expect(farEnd(bow)).toBeLessThan(1e-6 * bow.span);
      }),
      { numRuns: 15 },
    );
  });
  test('grain turned, the bow turns with it', () => {
    const square = { width: 200, height: 200, board: 'glass', celsius: 20, later: 50 } as const;
    const [up, across] = [told(square).bows.dry, told({ ...square, paperGrain: 'width' }).bows.dry];
    expect(across.height.middle).toBeCloseTo(up.width.middle, 9);
    expect(across.width.middle).toBeCloseTo(up.height.middle, 9);
  });
  test('no water and no change of air: no bow', () => {
    const { dry, later } = told({ adhesive: 'film-double-sided', later: 50 }).bows;
    for (const bow of [dry.width, dry.height, later.width, later.height]) expect(farEnd(bow)).toBe(0);
    expect(bowWords(dry.width)).toMatch(/^flat within/);
  });
  test('drier air where it will live pulls a cover further, damper air lets it go', () => {
    expect(laterMiddle({ later: 25 })).toBeGreaterThan(laterMiddle({ later: 50 }));
    expect(laterMiddle({ later: 75 })).toBeLessThan(laterMiddle({ later: 50 }));
  });
  test('weight takes out its share by the next day, and no more after', () => {
    expect([0, 12, 24, 336].map((hours) => Number(leftPulling(hours, 0.3).toFixed(9)))).toEqual([1, 0.65, 0.3, 0.3]);
  });
  test('a grain that is not known spans both', () => {
    const [up, across, open] = (['height', 'width', 'unknown'] as const).map((paperGrain) =>
      bowsAt(makingOf({ ...DEFAULT_FLAT, paperGrain }, catalogue), 'dry'),
    );
    expect(open!.width.high).toBeGreaterThan(across!.width.high);
    expect(open!.width.low).toBeLessThan(up!.width.low);
    expect(told({ paperGrain: 'unknown' }).warnings.join()).toMatch(/spans both grains/);
  });
});

describe('what helps', () => {
  test('each remedy is the bow of its own plan, the flattest first', () => {
    const remedies = remediesFor({ ...DEFAULT_FLAT, press: 4 }, catalogue);
    expect(remedies.length).toBeGreaterThanOrEqual(8);
    for (const { plan, bow } of remedies) {
      const { later } = told(plan).bows;
      expect(bow).toEqual(later[worseOf(later)]);
    }
    const ends = remedies.map(({ bow }) => farEnd(bow));
    expect(ends).toEqual(ends.toSorted((a, b) => a - b));
    expect(remedies[0]!.what).toBe('Both faces covered alike');
  });
  test('no other weight of the lining lies flatter at the middle of the ranges', () => {
    const best = remediesFor(DEFAULT_FLAT, catalogue).find(({ what }) => what.startsWith('Lined inside'))!;
    const worst = (liningWeight: number) => {
      const { width, height } = told({ ...best.plan, liningWeight }).bows.later;
      return Math.max(Math.abs(width.middle), Math.abs(height.middle));
    };
    // the search looks at the middle of every range, the answer at the middle of the draws: within a tenth of a millimetre
    for (const other of [30, 60, 150, 250]) expect(worst(best.plan.liningWeight!)).toBeLessThan(worst(other) + 0.1);
  });
  test('what is already done is not offered', () => {
    const done = told({ press: 48, later: 50, adhesive: 'film-double-sided', paper: 'lokta-light' }).remedies;
    expect(done.map(({ what }) => what).join()).not.toMatch(
      /under weight|air it will live in|Glued with|thinner|paper’s/,
    );
  });
});

describe('paper', () => {
  test('is looked up in one place: by kind, with a weight, or one’s own', () => {
    expect(flatPaper(catalogue, 'copy')?.grammage.middle).toBe(80);
    expect(flatPaper(catalogue, 'copy', 120)?.grammage.middle).toBe(120);
    expect(flatPaper(catalogue, 'copy~92gsm~115um')?.grammage.middle).toBe(92);
    expect(flatPaper(catalogue, 'copy~92gsm~115um', 500)?.grammage.middle).toBe(500);
    expect(flatPaper(catalogue, 'moon-paper')).toBe(undefined);
  });
  test('an id that is not on the shelf, or a limp board, is named beside its field', () => {
    const found = flatAnswer({ ...DEFAULT_FLAT, paper: 'moon-paper', board: 'leather', tool: 'spoon' }, catalogue);
    expect(found.ok ? [] : found.errors.map(({ field }) => field)).toEqual(['paper', 'board', 'tool']);
  });
});

describe('links and nonsense', () => {
  test('every plan has an answer in words and travels whole', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const found = told(plan);
        expect(JSON.stringify(found)).not.toMatch(/NaN|Infinity|null/);
        const words = [
          found.sentence,
          found.brief,
          found.facts,
          found.warnings,
          found.remedies.map((r) => [r.what, r.note ?? '', bowWords(r.bow)]),
        ];
        expect(JSON.stringify(words)).not.toMatch(NONSENSE);
        const seen = fingerprint(1, found.figures);
        expect(sameFigures(seen, seen)).toBe(true);
        const link = encodePlan(plan, FLAT_FIELDS, seen);
        expect(decodePlan(link, FLAT_FIELDS)).toMatchObject({ plan, dropped: [], seen });
      }),
      { numRuns: 60 },
    );
  });
  test('any text for a link gives a plan that is answered or faulted, and never throws', () => {
    const key = fc.constantFrom(...Object.values(FLAT_FIELDS).map((spec) => spec.key), 'v', 'seen');
    const value = fc.oneof(fc.string(), fc.constantFrom('NaN', '1e999', '-0', '०', '%', 'height', '0', '__proto__'));
    const pairs = fc.array(fc.tuple(key, value).map(([k, v]) => `${k}=${v}`)).map((all) => all.join('&'));
    fc.assert(
      fc.property(fc.oneof(fc.string(), pairs), (text) => {
        const { plan } = decodePlan(text, FLAT_FIELDS);
        const found = flatAnswer(plan, catalogue);
        if (found.ok) expect(JSON.stringify([found.value.sentence, found.value.facts])).not.toMatch(NONSENSE);
        else expect(found.errors.every(({ field }) => field in FLAT_FIELDS)).toBe(true);
      }),
      { numRuns: 200 },
    );
  });
});

describe('warp', () => {
  const told = (change: Partial<FlatPlan> = {}) => {
    const found = flatAnswer({ ...DEFAULT_FLAT, ...change }, catalogue);
    if (!found.ok) throw new Error(found.errors[0]?.message);
    return found.value;
  };
  const warned = (change: Partial<FlatPlan> = {}) => told(change).warnings.join(' ');
  it('says what was asked, for the form that is folded', () => {
    const asked = told({ paper: 'marbled', unit: 'in', width: 101.6, height: 203.2 }).asked;
    expect(asked.replace(/\u00a0/g, ' ')).toBe('Marbled paper, 4 × 8 in');
  });
  it('says how it lies twice: long, and short for a strip', () => {
    const { verdict, sentence, why, brief, boardMm, lined, cautions } = told();
    expect(sentence).toBe(`${verdict}. ${why}`);
    expect(brief[0]).toBe(verdict);
    expect(brief[1].length).toBeGreaterThan(0);
    expect(boardMm).toBe(2);
    expect(lined).toBe(false);
    expect(told({ lining: 'paper' }).lined).toBe(true);
    expect(cautions).toContain('valued-original');
    expect(told({ adhesive: 'animal-glue-hot' }).cautions).toEqual(
      expect.arrayContaining(['hot-liquid', 'animal-allergen', 'spoilage', 'press']),
    );
  });
  it('carries the bow dry and later, with 1 for towards the paper and 2 for away', () => {
    const pulled = told();
    expect(pulled.figures).toEqual([
      ...[Number(pulled.bows.dry[pulled.direction].middle.toFixed(2)), 1],
      ...[Number(pulled.bows.later[pulled.direction].middle.toFixed(2)), 1],
    ]);
    // without water nothing pulls, and in damp air the paper pushes
    const pushed = told({ adhesive: 'film-double-sided', board: 'glass', later: 95 });
    expect(pushed.figures[1]).toBe(1);
    expect(pushed.figures[2]).toBeGreaterThan(0);
    expect(pushed.figures[3]).toBe(2);
  });
  it('warns of what the sum does not show, and of nothing else', () => {
    expect(told().warnings).toEqual([]);
    expect(warned({ paperGrain: 'unknown' })).toMatch(/spans both grains/);
    expect(told({ paperGrain: 'unknown', paper: 'lokta-light' }).warnings).toEqual([]);
    expect(warned({ boardGrain: 'width' })).toMatch(/crosses the board’s/);
    expect(warned({ boardGrain: 'unknown' })).not.toMatch(/crosses/);
    expect(warned({ paperGrain: 'none', boardGrain: 'width' })).not.toMatch(/crosses/);
    expect(warned({ boardGrain: 'width', board: 'glass' })).not.toMatch(/crosses/);
    expect(warned({ boardGrain: 'width', paper: 'lokta-light' })).not.toMatch(/crosses/);
    const lined = { lining: 'paper', liningPaper: 'wove-text' } as const;
    expect(warned({ ...lined, liningGrain: 'width' })).toMatch(/lining crosses the cover’s/);
    expect(warned({ ...lined, liningGrain: 'height' })).not.toMatch(/crosses/);
    expect(warned({ ...lined, liningGrain: 'width', liningPaper: 'lokta-light' })).not.toMatch(/crosses/);
    expect(warned({ liningGrain: 'width' })).not.toMatch(/crosses/);
    expect(warned({ press: 0.9 })).toMatch(/Without weight/);
    expect(warned({ press: 1 })).not.toMatch(/Without weight/);
    expect(warned({ press: 0, adhesive: 'film-double-sided' })).not.toMatch(/Without weight/);
    expect(warned({ boardThick: 0.3, width: 900, adhesive: 'wheat-starch-paste-thin', press: 0 })).toMatch(/roll up/);
  });
});
