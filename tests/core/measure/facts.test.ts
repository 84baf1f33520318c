/** What is said of one's own paper: a sheet of 80 g/m² and 100 µm, whose density is 0.8 and of which 7/15 is air (fibre 1.5 g/cm³, published). */
import { describe, expect, it, test } from 'vitest';
import type { GrainFinding } from '../../../src/core/paper/grain-tests';
import { drinkFacts, grainFact, soundness, thicknessFacts, weightFact } from '../../../src/core/measure/facts';
import { EXAMPLE_MEASURE, type MeasurePlan } from '../../../src/core/measure/plan';
import type { Sheet } from '../../../src/core/paper/sheet';
import { measureAnswer } from '../../../src/core/measure/answer';
import { catalogue } from '../../../src/data/catalogue';
const range = (low: number, middle: number, high: number, basis: 'measured' | 'from-memory' = 'from-memory') =>
  ({ low, middle, high, basis }) as const;

const SHEET = {
  grammage: range(60, 80, 100),
  density: range(0.5, 0.8, 1.25),
  sorptivity: range(1, 2, 4),
} as unknown as Sheet;

const plainly = (text = '') => text.replaceAll('\u00a0', ' ');

const said = ({ value, note }: { value: string; note?: string }) => `${plainly(value)} | ${plainly(note)}`;

const finding = (change: Partial<GrainFinding> = {}): GrainFinding => ({
  chances: { height: 0.9, width: 0.06, none: 0.04 },
  likeliest: 'height',
  settled: true,
  against: [],
  ...change,
});

function answered(change: Partial<MeasurePlan>) {
  const found = measureAnswer({ ...EXAMPLE_MEASURE, ...change }, catalogue);
  if (!found.ok) throw new Error(found.errors[0]?.message);
  return found.value;
}

const fact = (change: Partial<MeasurePlan>, label: string) => {
  const found = answered(change).facts.find((one) => one.label === label);
  if (!found) throw new Error(`no ${label}`);
  return `${found.value} (${found.note})`.replaceAll('\u00a0', ' ');
};

describe('its weight', () => {
  it('as given, or as its kind usually weighs', () => {
    const given = { ...SHEET, grammage: range(76.8, 80, 83.2, 'measured') };
    expect(said(weightFact(given, undefined))).toMatch(/^80\.0 g\/m² \| as given/);
    expect(said(weightFact(SHEET, undefined))).toMatch(/^60 to 100 g\/m² \| as its kind/);
  });
  it('as weighed, with its ±, and how many sheets would halve that', () => {
    // 8 g on 0.1 m² are 80 g/m²; a scale of 1 g is out by 2 · 1 g · √2 / √12 of the 8 g, the cut by nothing
    const weighing = { grams: 8, widthMm: 250, heightMm: 400, cutMm: 0, scaleStepGrams: 1 };
    expect(said(weightFact(SHEET, weighing))).toMatch(/^80\.0 ± 8\.2 g\/m² \| .*weigh 2 pieces together/);
    const cut = { ...weighing, cutMm: 5, scaleStepGrams: 0.001 };
    expect(said(weightFact(SHEET, cut))).toMatch(/more sheets would not help.*cut larger/);
  });
});

describe('its thickness', () => {
  const facts = (paper: { caliper?: number }) =>
    Object.fromEntries(
      thicknessFacts(SHEET, { family: 'x', ...paper }).map((fact) => [fact.label, said(fact)] as const),
    );
  it('from what was measured', () => {
    expect(facts({ caliper: 100 })).toEqual({
      // 25.4 µm to the thousandth of an inch
      Caliper: expect.stringMatching(/^100 µm \| 3\.9 thousandths/),
      'Apparent density': expect.stringMatching(/^0\.8 g\/cm³ \| bulk 1\.25 cm³\/g, from its thickness/),
      // 7/15 of 100 µm
      'Room for water': expect.stringMatching(/^47 g\/m² \| 47 % of the sheet is air/),
    });
  });
  it('else by its kind: from the lightest and densest to the heaviest and loosest', () => {
    expect(facts({})).toEqual({
      Caliper: expect.stringMatching(/^48 to 200 µm \| by the density of its kind/),
      'Apparent density': expect.stringMatching(/^0\.8 g\/cm³ \|.*by the density of its kind/),
      'Room for water': expect.stringMatching(/^47 g\/m²/),
    });
  });
});

describe('how it drinks', () => {
  const drunk = (sheet: Sheet, seconds?: number, count = 1, plan: Partial<MeasurePlan> = {}) =>
    drinkFacts(
      { ...EXAMPLE_MEASURE, ...plan },
      sheet,
      seconds === undefined ? undefined : { seconds, factor: 1 },
      count,
    ).map(said);
  const drinks = (sheet: Sheet, seconds?: number, count = 1) => drunk(sheet, seconds, count)[0]!;
  it('the drop: its volume, and its stain or the rule of thumb in its place', () => {
    expect(drunk(SHEET, 30)[1]).toMatch(/^50 µl, its stain not measured \| read by a rule of thumb/);
    expect(drunk(SHEET, 30, 1, { dropsPerMl: 25 })[1]).toMatch(/^40 µl/);
    // 50 mg over π·25²/4 mm² is 102 g/m²; of that 0.055 · 16 ÷ 2 dry, 0.4 %
    expect(drunk(SHEET, 16, 1, { stain: 25 })[1]).toMatch(
      /^50 µl in a stain of 25 mm: 100 g\/m² \| so .*about 0\.4 % of it dried/,
    );
    expect(drunk(SHEET)).toHaveLength(1);
  });
  it('from drops: one, or the middle of several, with the Cobb figure that goes with them', () => {
    // 2 g/m² per √s over 60 s is 15.5 g/m²
    expect(drinks(SHEET, 30)).toMatch(/^1 to 4 g\/m² per √s \| from one drop, good to.*Cobb 60 of about 15 g\/m²/);
    expect(drinks(SHEET, 30, 3)).toMatch(/from 3 drops, middle 30 s/);
  });
  it('from a Cobb figure, with how long a drop would take', () => {
    const cobb = { ...SHEET, sorptivity: range(1.7, 2, 2.3, 'measured') };
    expect(drinks(cobb)).toMatch(/from your Cobb figure; a drop would take about [\d.]+ s to sink in/);
    const thirsty = { ...SHEET, sorptivity: range(17, 20, 23, 'measured') };
    const seconds = (text: string) => Number(/about ([\d.]+)/.exec(text.replace(/\u202f/g, ''))![1]);
    // ten times as thirsty, a hundred times as fast
    expect(seconds(drinks(cobb)) / seconds(drinks(thirsty))).toBeCloseTo(100, -1);
  });
  it('else by its kind', () => {
    expect(drinks(SHEET)).toMatch(/by its kind or sizing; a Cobb 60 of about 15/);
  });
});

describe('its grain', () => {
  it('before any test it is not tried, and what its kind makes likely is said as that', () => {
    expect(said(grainFact(finding(), 'taller', false))).toBe(
      'not tried yet | before any test, by its kind: up and down 90 %, side to side 6 %, none 4 %; an estimate',
    );
  });
  it('the likeliest way with its chance, what a shop calls it, and all three', () => {
    expect(said(grainFact(finding(), 'taller', true))).toMatch(
      /^up and down, about 9 in 10 \| as you hold it, so grain long; up and down 90 %, side to side 6 %, none 4 %; an estimate$/,
    );
    expect(said(grainFact(finding(), 'wider', true))).toMatch(/grain short/);
    expect(said(grainFact(finding(), 'square', true))).toMatch(/\| up and down 90 %/);
    const across = finding({ likeliest: 'width', chances: { height: 0.06, width: 0.9, none: 0.04 } });
    expect(said(grainFact(across, 'taller', true))).toMatch(/^side to side, about 9 in 10 \|.*grain short/);
    const none = finding({ likeliest: 'none', chances: { height: 0.1, width: 0.1, none: 0.8 } });
    expect(said(grainFact(none, 'taller', true))).toMatch(/^no grain, about 8 in 10 \| up and down 10 %/);
  });
  test.for([
    [0.009, 'under 1 %'],
    [0.01, '1 %'],
    [0.99, '99 %'],
    [0.991, 'over 99 %'],
  ] as const)('%s is %s: four tests at a bench are no proof', ([chance, words]) => {
    const { note } = grainFact(finding({ chances: { height: chance, width: 0.5, none: 0.5 } }), 'square', true);
    expect(note!.startsWith(`up and down ${words},`)).toBe(true);
  });
});

describe('what to look out for', () => {
  const warned = (
    change: {
      plan?: Partial<MeasurePlan>;
      weighing?: { grams: number; widthMm: number; heightMm: number; cutMm?: number; scaleStepGrams?: number };
      factor?: number;
      grain?: Partial<GrainFinding>;
      gsm?: number | undefined;
    } = {},
  ) =>
    soundness({
      plan: { ...EXAMPLE_MEASURE, drinkBy: 'drop', ...change.plan },
      weighing: change.weighing,
      drop: change.factor === undefined ? undefined : { seconds: 30, factor: change.factor },
      grain: finding(change.grain),
      gsm: 'gsm' in change ? change.gsm : 80,
      sheet: SHEET,
    });
  it('a slow drop, and a stain that holds more than the sheet can', () => {
    // SHEET has room for 47 g/m²; 50 mg in 25 mm are 102, in 40 mm 40
    expect(warned({ factor: 1, plan: { stain: 25 } })).toEqual([
      expect.stringMatching(/would hold 100\sg\/m².*about 47/),
    ]);
    expect(warned({ factor: 1, plan: { stain: 40 } })).toEqual([]);
    const slow = soundness({
      plan: EXAMPLE_MEASURE,
      weighing: undefined,
      drop: { seconds: 121, factor: 1 },
      grain: finding(),
      gsm: 80,
      sheet: SHEET,
    });
    expect(slow).toEqual([expect.stringMatching(/^Past 120 s/)]);
  });
  it('nothing, where all is sound', () => {
    expect(warned({ weighing: { grams: 100, widthMm: 1000, heightMm: 1000 }, factor: 1.2 })).toEqual([]);
  });
  it('a weight that is good to less than 4 %', () => {
    // cuts out of account, ± is 0.8165 g of what a 1 g scale shows: 4 % of 20.4 g
    const scale = (grams: number) => warned({ weighing: { grams, widthMm: 1000, heightMm: 1000, cutMm: 0.001 } });
    expect(scale(20.5)).toEqual([]);
    expect(scale(20.3)).toHaveLength(1);
    expect(scale(10)[0]).toMatch(/good to ± 8\.2 % only.*Weigh more/);
  });
  it('a Cobb figure of a sheet under 50 g/m², which the standard leaves out', () => {
    const cobb = (gsm: number | undefined) => warned({ plan: { drinkBy: 'cobb' }, gsm });
    expect(cobb(49.9)).toEqual([expect.stringMatching(/Cobb.*under 50 g\/m².*ISO 535/)]);
    expect(cobb(50)).toEqual([]);
    expect(cobb(undefined)).toEqual([]);
    expect(warned({ gsm: 30 })).toEqual([]);
  });
  it('drops that lie further apart than two and a half times', () => {
    expect(warned({ factor: 2.5 })).toEqual([]);
    expect(warned({ factor: 3 })).toEqual([expect.stringMatching(/slowest drop took 3 times as long/)]);
  });
  it('tests that say otherwise, but not where no grain is the likeliest', () => {
    expect(warned({ grain: { against: ['tear'] } })).toEqual([
      expect.stringMatching(/^Tearing said otherwise\. Do it again/),
    ]);
    expect(warned({ grain: { against: ['bend', 'damp'] } })).toEqual([
      expect.stringMatching(/^Bending and damping a square said otherwise\. Do them again/),
    ]);
    expect(warned({ grain: { against: ['tear'], likeliest: 'none' } })).toEqual([]);
  });
  it('the test to try next, while the grain is not settled; and when none is left, to do without', () => {
    const next = warned({ grain: { settled: false, next: 'tear' } });
    // seven in ten, an estimate
    expect(next).toEqual([expect.stringMatching(/try tearing next: .*7 times in 10/)]);
    expect(warned({ grain: { settled: false } })).toEqual([expect.stringMatching(/as a sheet without grain/)]);
    expect(warned({ grain: { settled: true } })).toEqual([]);
  });
});

describe('facts', () => {
  it('gives a weight as it was given, or as its kind has it', () => {
    expect(fact({ weightBy: 'metric', gsm: 92 }, 'Grammage')).toBe(
      '92.0 g/m² (as given; a mill’s lots differ by about 4 %)',
    );
    expect(fact({ weightBy: 'kind' }, 'Grammage')).toMatch(/^\d+ to \d+ g\/m² \(as its kind usually weighs\)$/);
    // 34 g over six A4: 34 / (6 × 0.06237 m²) = 90.9 g/m²
    expect(fact({}, 'Grammage')).toMatch(/^90\.9 ± [\d.]+ g\/m² \(95 in 100; weigh \d+ pieces together/);
  });
  it('says when the cut and not the scale is what is uncertain', () =>
    expect(fact({ step: 0.001, pieces: 2000, grams: 11300 }, 'Grammage')).toContain('cut larger pieces'));
  it('gives the caliper in thousandths of an inch beside its own, or by the kind’s density', () => {
    // 127 µm is five thousandths of an inch
    expect(fact({ thickBy: 'gauge', caliper: 127 }, 'Caliper')).toBe('127 µm (5 thousandths of an inch (points))');
    expect(fact({ thickBy: 'kind' }, 'Caliper')).toMatch(/^\d+ to \d+ µm \(by the density of its kind\)$/);
    // 80 g/m² at 100 µm is 0.8 g/cm³, a bulk of 1.25
    const given = { weightBy: 'metric', gsm: 80, thickBy: 'gauge', caliper: 100 } as const;
    expect(fact(given, 'Apparent density')).toBe('0.8 g/cm³ (bulk 1.25 cm³/g, from its thickness)');
    expect(fact({ thickBy: 'kind' }, 'Apparent density')).toContain('by the density of its kind');
  });
  it('says whence the absorbency is known', () => {
    expect(fact({ drops: [30] }, 'Absorbency')).toContain('from one drop, good to a factor of 1.6');
    expect(fact({}, 'Absorbency')).toContain('from 3 drops, middle 31 s');
    expect(fact({ drinkBy: 'cobb' }, 'Absorbency')).toContain('from your Cobb figure; a drop would take about');
    expect(fact({ drinkBy: 'kind' }, 'Absorbency')).toContain('by its kind or sizing; a Cobb 60');
  });
  it('carries what was chosen of surface, sizing and colours', () => {
    expect(answered({ surface: 'embossed', sizing: 'sized', colours: 'yes', drinkBy: 'cobb' }).paper).toMatchObject({
      surface: 'embossed',
      sizing: 'sized',
      coloursRun: true,
      cobb: 25,
    });
    expect(answered({ colours: 'no' }).paper.coloursRun).toBe(false);
    const usual = answered({ drinkBy: 'kind' }).paper;
    for (const key of ['surface', 'sizing', 'coloursRun', 'cobb', 'dropSeconds', 'name'])
      expect(usual).not.toHaveProperty(key);
  });
});
