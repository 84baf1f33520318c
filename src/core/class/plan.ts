/** What the workshop sheet asks besides the project itself, and what stands there at first. */
import { PAPER_TEXT, RECORD_ID } from '../base/record-id';
import { lengthSpec } from '../base/length-text';
import type { PlanOf } from '../link/fields';
import { DEFAULT_MAKE, makeSpecs, type MakeField, type MakePlan } from '../make/fields';
import type { Stock } from '../make/piece';
import { askedOfMake } from '../make/plan';
import { STOCK_GRAINS } from '../cut/layout-types';

const side = (key: string, what: string) => lengthSpec({}, key, what, 50, 5000);
const grain = (key: string, what: string) => ({ kind: 'one-of', key, of: STOCK_GRAINS, what }) as const;

/** Fixed order: links are written in it. The project's own fields come first, under its own keys. */
export const CLASS_SPECS = {
  ...makeSpecs,
  people: { kind: 'number', key: 'people', low: 1, high: 60, unit: '', what: 'The number of people', whole: true },
  spare: { kind: 'number', key: 'spare', low: 0, high: 20, unit: '', what: 'The spare kits', whole: true },
  day: { kind: 'text', key: 'day', pattern: /^(\d{4}-\d{2}-\d{2})?$/, what: 'The day' },
  time: { kind: 'text', key: 'at', pattern: /^\d{1,2}:\d{2}$/, what: 'The time' },
  hours: { kind: 'number', key: 'hours', low: 0.5, high: 12, unit: 'h', what: 'The class' },
  paper: { kind: 'text', key: 'paper', pattern: PAPER_TEXT, what: 'The covering paper' },
  on: { kind: 'text', key: 'on', pattern: RECORD_ID, what: 'The board' },
  adhesive: { kind: 'text', key: 'glue', pattern: RECORD_ID, what: 'The adhesive' },
  tool: { kind: 'text', key: 'tool', pattern: RECORD_ID, what: 'The tool' },
  loss: { kind: 'number', key: 'loss', low: 0, high: 60, unit: '%', what: 'What stays in pots and brushes' },
  celsius: { kind: 'number', key: 'celsius', low: 1, high: 40, unit: '°C', what: 'The room' },
  humidity: { kind: 'number', key: 'rh', low: 5, high: 95, unit: '%', what: 'The humidity' },
  ...{ boardWide: side('board-wide', 'The width of a board'), boardHigh: side('board-high', 'The height of a board') },
  boardGrain: grain('board-grain', 'The grain of the board'),
  ...{ paperWide: side('paper-wide', 'The width of a sheet'), paperHigh: side('paper-high', 'The height of a sheet') },
  paperGrain: grain('paper-grain', 'The grain of the paper'),
  ...{
    clothWide: side('cloth-wide', 'The width of the cloth'),
    clothHigh: side('cloth-high', 'The length of the cloth'),
  },
  clothGrain: grain('cloth-grain', 'The grain of the cloth'),
  ...{
    liningWide: side('lining-wide', 'The width of a lining sheet'),
    liningHigh: side('lining-high', 'The height of a lining sheet'),
  },
  liningGrain: grain('lining-grain', 'The grain of the lining'),
} as const;

export type ClassPlan = PlanOf<typeof CLASS_SPECS>;
export type ClassField = keyof typeof CLASS_SPECS;

export const DEFAULT_CLASS: ClassPlan = {
  ...DEFAULT_MAKE,
  people: 8,
  spare: 1,
  day: '',
  time: '14:00',
  hours: 3,
  paper: 'marbled',
  on: 'binders-board',
  adhesive: 'pva-mc-1-1',
  tool: 'brush-full',
  loss: 15,
  celsius: 20,
  humidity: 50,
  boardWide: 700,
  boardHigh: 1000,
  boardGrain: 'long',
  paperWide: 640,
  paperHigh: 970,
  paperGrain: 'long',
  clothWide: 700,
  clothHigh: 1000,
  clothGrain: 'long',
  liningWide: 700,
  liningHigh: 1000,
  liningGrain: 'long',
};

const OWN = [
  ...['people', 'spare', 'day', 'time', 'hours', 'paper', 'on', 'adhesive', 'tool', 'loss', 'celsius', 'humidity'],
] as readonly ClassField[];

/** The three fields that say in which sheets a stock is bought. */
export const SHEET_FIELDS: Readonly<Record<Stock, readonly [ClassField, ClassField, ClassField]>> = {
  board: ['boardWide', 'boardHigh', 'boardGrain'],
  paper: ['paperWide', 'paperHigh', 'paperGrain'],
  cloth: ['clothWide', 'clothHigh', 'clothGrain'],
  lining: ['liningWide', 'liningHigh', 'liningGrain'],
};

/** Fields this plan is asked; a slip anywhere else is out of sight. */
export const askedOfClass = (plan: ClassPlan): readonly ClassField[] => [
  ...askedOfMake(plan),
  ...OWN,
  ...Object.values(SHEET_FIELDS).flat(),
];

/**
 * The project alone, for the calculators that know of nothing else. An accordion's strips are as long as the inside
 * sheet gives across its grain, unless the teacher said otherwise: folds run with the grain.
 */
export function projectOf(plan: ClassPlan): MakePlan {
  const fields = Object.keys(makeSpecs) as MakeField[];
  const project = Object.fromEntries(fields.map((field) => [field, plan[field]])) as MakePlan;
  const [short, long] = [Math.min(plan.liningWide, plan.liningHigh), Math.max(plan.liningWide, plan.liningHigh)];
  return plan.project === 'accordion' && plan.sheet === undefined
    ? { ...project, sheet: plan.liningGrain === 'long' ? short : long }
    : project;
}

/** One kit for each person, and the spare ones. */
export const kitsOf = ({ people, spare }: ClassPlan): number => people + spare;
