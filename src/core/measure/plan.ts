/** What the paper calculator asks, and what stands there at first. */
import { RECORD_ID } from '../base/record-id';
import { SIZINGS, SURFACES } from '../paper/asked-paper';
import { GRAIN_TESTS } from '../paper/grain-tests';
import { parseDrops, showDrops, DROPS_PATTERN } from '../paper/drop-test';
import { BASIC_SHEETS, type Grade } from '../paper/paper';
import { PAPER_NAME } from '../paper/own-paper';
import type { NumberLimits } from '../base/limits';
import { PAPER_LIMITS } from '../paper/limits';
import type { PlanOf } from '../link/fields';

export const GRADES = Object.keys(BASIC_SHEETS) as Grade[];
export const SHOWN = ['untried', 'height', 'width', 'unclear'] as const;
/** A measure of a paper, within the limits that hold everywhere. */
const paperNumber = (key: string, what: string, { low, high, unit }: NumberLimits) =>
  number(key, what, low, high, unit);
const number = (key: string, what: string, low: number, high: number, unit: string) =>
  ({ kind: 'number', key, low, high, unit, what }) as const;
const oneOf = <const T extends readonly string[]>(key: string, what: string, of: T) =>
  ({ kind: 'one-of', key, of, what }) as const;

/** Fixed order: links are written in it. */
export const MEASURE_SPECS = {
  family: { kind: 'text', key: 'paper', pattern: RECORD_ID, what: 'The kind of paper' },
  name: { kind: 'text', key: 'named', pattern: PAPER_NAME, what: 'Its name' },
  weightBy: oneOf('weight', 'How its weight is known', ['kind', 'metric', 'pounds', 'thousand', 'weighed']),
  gsm: paperNumber('gsm', 'The weight', PAPER_LIMITS.grammage),
  pounds: number('lb', 'The pounds', 1, 400, 'lb'),
  grade: oneOf('grade', 'The grade', GRADES),
  kilos: number('kg', 'The kilograms of 1000 sheets', 1, 600, 'kg'),
  sheetWide: number('kgwide', 'The width of those sheets', 100, 2000, 'mm'),
  sheetHigh: number('kghigh', 'The height of those sheets', 100, 2000, 'mm'),
  grams: number('grams', 'What the scale shows', 0.01, 20000, 'g'),
  pieceWide: number('wide', 'The width of one piece', 10, 2000, 'mm'),
  pieceHigh: number('high', 'The height of one piece', 10, 2000, 'mm'),
  pieces: { ...number('sheets', 'The number of pieces', 1, 2000, ''), whole: true },
  step: number('step', 'The step of the scale', 0.001, 10, 'g'),
  thickBy: oneOf('thickness', 'How its thickness is known', ['kind', 'gauge', 'stack', 'bulk']),
  caliper: paperNumber('um', 'The thickness', PAPER_LIMITS.caliper),
  stackMm: number('stack', 'The height of the stack', 0.1, 500, 'mm'),
  stackSheets: { ...number('stacked', 'The sheets in the stack', 1, 5000, ''), whole: true },
  bulk: number('bulk', 'The bulk', 0.7, 12, 'cm³/g'),
  drinkBy: oneOf('drinks', 'How its absorbency is known', ['kind', 'drop', 'cobb']),
  drops: { kind: 'list', key: 'drops', pattern: DROPS_PATTERN, what: 'The drops', parse: parseDrops, show: showDrops },
  cobb: paperNumber('cobb', 'The Cobb 60 figure', PAPER_LIMITS.cobb),
  bend: oneOf('bend', 'What bending showed', SHOWN),
  strips: oneOf('strips', 'What the strips showed', SHOWN),
  damp: oneOf('damp', 'What damping showed', SHOWN),
  tear: oneOf('tear', 'What tearing showed', SHOWN),
  shape: oneOf('held', 'How you hold the sheet', ['taller', 'wider', 'square']),
  surface: oneOf('face', 'Its surface', ['kind', ...SURFACES]),
  sizing: oneOf('size', 'Its sizing', ['kind', ...SIZINGS]),
  colours: oneOf('runs', 'Its colours', ['kind', 'yes', 'no']),
} as const;

export type MeasurePlan = PlanOf<typeof MEASURE_SPECS>;
export type MeasureField = keyof typeof MEASURE_SPECS;

export const DEFAULT_MEASURE: MeasurePlan = {
  family: 'wove-text',
  name: '',
  weightBy: 'weighed',
  gsm: 90,
  pounds: 60,
  grade: 'text',
  kilos: 70,
  sheetWide: 788,
  sheetHigh: 1091,
  grams: 34,
  pieceWide: 210,
  pieceHigh: 297,
  pieces: 6,
  step: 1,
  thickBy: 'stack',
  caliper: 120,
  stackMm: 12,
  stackSheets: 100,
  bulk: 1.3,
  drinkBy: 'drop',
  drops: '28_34_31',
  cobb: 25,
  bend: 'height',
  strips: 'untried',
  damp: 'untried',
  tear: 'height',
  shape: 'taller',
  surface: 'kind',
  sizing: 'kind',
  colours: 'kind',
};

const WEIGHT: Readonly<Record<MeasurePlan['weightBy'], readonly MeasureField[]>> = {
  kind: [],
  metric: ['gsm'],
  pounds: ['pounds', 'grade'],
  thousand: ['kilos', 'sheetWide', 'sheetHigh'],
  weighed: ['grams', 'pieceWide', 'pieceHigh', 'pieces', 'step'],
};
const THICKNESS: Readonly<Record<MeasurePlan['thickBy'], readonly MeasureField[]>> = {
  kind: [],
  gauge: ['caliper'],
  stack: ['stackMm', 'stackSheets'],
  bulk: ['bulk'],
};
const ABSORBENCY: Readonly<Record<MeasurePlan['drinkBy'], readonly MeasureField[]>> = {
  kind: [],
  drop: ['drops'],
  cobb: ['cobb'],
};

/** Fields this plan is asked; a slip anywhere else is out of sight. */
export const askedOfMeasure = ({ weightBy, thickBy, drinkBy }: MeasurePlan): readonly MeasureField[] => [
  'family',
  'name',
  'weightBy',
  ...WEIGHT[weightBy],
  'thickBy',
  ...THICKNESS[thickBy],
  'drinkBy',
  ...ABSORBENCY[drinkBy],
  ...GRAIN_TESTS,
  'shape',
  'surface',
  'sizing',
  'colours',
];
