/** What the workshop sheet asks besides the project itself, and what stands there at first. */
import { PAPER_TEXT, RECORD_ID } from '../base/record-id';
import { usualOf, type FieldTable, type PlanOf } from '../link/fields';
import { lengthField } from '../link/length-field';
import { A_PAPER } from '../paper/own-paper';
import { BENCH_FIELD, BOARD_KIND, TOOL_FIELD, WET_ADHESIVE } from '../records/kinds';
import { MAKE_FIELDS, type MakeField, type MakePlan } from '../make/fields';
import type { Stock } from '../make/piece';
import { STOCK_GRAINS } from '../cut/layout-types';

/** Fixed order: links are written in it. The project's own fields come first, under its own keys. */
export const CLASS_FIELDS = {
  ...MAKE_FIELDS,
  people: {
    kind: 'number',
    key: 'people',
    label: 'People',
    what: 'The number of people',
    low: 1,
    high: 60,
    unit: '',
    whole: true,
    usual: 8,
  },
  spare: {
    kind: 'number',
    key: 'spare',
    label: 'Spare kits',
    what: 'The spare kits',
    low: 0,
    high: 20,
    unit: '',
    whole: true,
    usual: 1,
  },
  day: { kind: 'text', key: 'day', what: 'The day', pattern: /^(\d{4}-\d{2}-\d{2})?$/, usual: '' },
  time: { kind: 'text', key: 'at', what: 'The time', pattern: /^\d{1,2}:\d{2}$/, usual: '14:00' },
  hours: {
    kind: 'number',
    key: 'hours',
    label: 'It lasts',
    what: 'The length of the class',
    low: 0.5,
    high: 12,
    unit: 'h',
    usual: 3,
  },
  paper: {
    kind: 'text',
    key: 'paper',
    label: 'The covering is most like',
    what: 'The covering paper',
    pattern: PAPER_TEXT,
    record: A_PAPER,
    usual: 'marbled',
  },
  on: {
    kind: 'text',
    key: 'on',
    label: 'On',
    what: 'The board',
    pattern: RECORD_ID,
    record: BOARD_KIND,
    usual: 'binders-board',
  },
  adhesive: {
    kind: 'text',
    key: 'glue',
    label: 'The adhesive',
    what: 'The adhesive',
    pattern: RECORD_ID,
    record: WET_ADHESIVE,
    usual: 'pva-mc-1-1',
  },
  tool: TOOL_FIELD,
  loss: {
    kind: 'number',
    key: 'loss',
    label: 'Left in the pots',
    what: 'What stays in pots and brushes',
    low: 0,
    high: 60,
    unit: '%',
    usual: 15,
  },
  celsius: {
    kind: 'number',
    key: 'celsius',
    label: 'Room',
    what: 'The temperature of the room',
    low: 1,
    high: 40,
    unit: '°C',
    usual: 20,
  },
  humidity: {
    kind: 'number',
    key: 'rh',
    label: 'Humidity',
    what: 'The humidity',
    low: 5,
    high: 95,
    unit: '%',
    usual: 50,
  },
  boardWide: lengthField({
    key: 'board-wide',
    label: 'Width',
    what: 'The width of a board',
    low: 50,
    high: 5000,
    usual: 700,
  }),
  boardHigh: lengthField({
    key: 'board-high',
    label: 'Height',
    what: 'The height of a board',
    low: 50,
    high: 5000,
    usual: 1000,
  }),
  boardGrain: {
    kind: 'one-of',
    key: 'board-grain',
    label: 'Grain',
    what: 'The grain of the board',
    of: STOCK_GRAINS,
    usual: 'long',
  },
  paperWide: lengthField({
    key: 'paper-wide',
    label: 'Width',
    what: 'The width of a sheet',
    low: 50,
    high: 5000,
    usual: 640,
  }),
  paperHigh: lengthField({
    key: 'paper-high',
    label: 'Height',
    what: 'The height of a sheet',
    low: 50,
    high: 5000,
    usual: 970,
  }),
  paperGrain: {
    kind: 'one-of',
    key: 'paper-grain',
    label: 'Grain',
    what: 'The grain of the paper',
    of: STOCK_GRAINS,
    usual: 'long',
  },
  clothWide: lengthField({
    key: 'cloth-wide',
    label: 'Width',
    what: 'The width of the cloth',
    low: 50,
    high: 5000,
    usual: 700,
  }),
  clothHigh: lengthField({
    key: 'cloth-high',
    label: 'Height',
    what: 'The length of the cloth',
    low: 50,
    high: 5000,
    usual: 1000,
  }),
  clothGrain: {
    kind: 'one-of',
    key: 'cloth-grain',
    label: 'Grain',
    what: 'The grain of the cloth',
    of: STOCK_GRAINS,
    usual: 'long',
  },
  liningWide: lengthField({
    key: 'lining-wide',
    label: 'Width',
    what: 'The width of a lining sheet',
    low: 50,
    high: 5000,
    usual: 700,
  }),
  liningHigh: lengthField({
    key: 'lining-high',
    label: 'Height',
    what: 'The height of a lining sheet',
    low: 50,
    high: 5000,
    usual: 1000,
  }),
  liningGrain: {
    kind: 'one-of',
    key: 'lining-grain',
    label: 'Grain',
    what: 'The grain of the lining',
    of: STOCK_GRAINS,
    usual: 'long',
  },
  bench: BENCH_FIELD,
} as const satisfies FieldTable;

export type ClassPlan = PlanOf<typeof CLASS_FIELDS>;
export type ClassField = keyof typeof CLASS_FIELDS;

export const DEFAULT_CLASS: ClassPlan = usualOf(CLASS_FIELDS);

/** The three fields that say in which sheets a stock is bought. */
export const SHEET_FIELDS: Readonly<Record<Stock, readonly [ClassField, ClassField, ClassField]>> = {
  board: ['boardWide', 'boardHigh', 'boardGrain'],
  paper: ['paperWide', 'paperHigh', 'paperGrain'],
  cloth: ['clothWide', 'clothHigh', 'clothGrain'],
  lining: ['liningWide', 'liningHigh', 'liningGrain'],
};

/**
 * The project alone, for the calculators that know of nothing else. An accordion's strips are as long as the inside
 * sheet gives across its grain, unless the teacher said otherwise: folds run with the grain.
 */
export function projectOf(plan: ClassPlan): MakePlan {
  const fields = Object.keys(MAKE_FIELDS) as MakeField[];
  const project = Object.fromEntries(fields.map((field) => [field, plan[field]])) as MakePlan;
  const [short, long] = [Math.min(plan.liningWide, plan.liningHigh), Math.max(plan.liningWide, plan.liningHigh)];
  return plan.project === 'accordion' && plan.sheet === undefined
    ? { ...project, sheet: plan.liningGrain === 'long' ? short : long }
    : project;
}

/** One kit for each person, and the spare ones. */
export const kitsOf = ({ people, spare }: ClassPlan): number => people + spare;
