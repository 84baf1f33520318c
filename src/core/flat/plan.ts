/** What the calculator of warp asks, and what stands there at first. */
import { PAPER_TEXT, RECORD_ID } from '../base/record-id';
import { usualOf, type FieldTable, type PlanOf } from '../link/fields';
import { LENGTH_UNIT, lengthField } from '../link/length-field';
import { PAPER_LIMITS } from '../paper/limits';
import { A_PAPER } from '../paper/own-paper';
import { BENCH_FIELD, ADHESIVE, TOOL_FIELD } from '../records/kinds';
import type { Catalogue } from '../records/records';

/** Grain of a sheet: up the height of the work, across its width, not known, or none to speak of. */
export const SHEET_GRAINS = ['height', 'width', 'unknown', 'none'] as const;
export type SheetGrain = (typeof SHEET_GRAINS)[number];

const SHEET_WEIGHT = { low: PAPER_LIMITS.grammage.low, high: PAPER_LIMITS.grammage.high, unit: 'g/m²' } as const;
/** What a cover of this kind bends at all: a limp thing is not asked to lie flat. */
const FIRM_BOARD = {
  called: 'a board',
  isOne: (id: string, { substrates }: Catalogue) => substrates.get(id)?.limp === false,
};
const isLined = ({ lining }: { readonly lining: string }) => lining === 'paper';

/** Fixed order: links are written in it. Lengths are mm here, whatever unit the reader types in. */
export const FLAT_FIELDS = {
  paper: {
    kind: 'text',
    key: 'paper',
    label: 'The cover paper is most like',
    what: 'The paper',
    pattern: PAPER_TEXT,
    record: A_PAPER,
    usual: 'marbled',
  },
  paperWeight: {
    kind: 'number',
    key: 'gsm',
    label: 'Paper’s weight',
    what: 'The weight of the cover paper',
    ...SHEET_WEIGHT,
    optional: true,
  },
  paperGrain: {
    kind: 'one-of',
    key: 'grain',
    label: 'Paper’s grain',
    what: 'The grain of the cover paper',
    of: SHEET_GRAINS,
    usual: 'height',
  },
  unit: LENGTH_UNIT,
  width: lengthField({ key: 'wide', label: 'Board’s width', what: 'The width', low: 10, high: 2000, usual: 148 }),
  height: lengthField({ key: 'high', label: 'Board’s height', what: 'The height', low: 10, high: 2000, usual: 216 }),
  board: {
    kind: 'text',
    key: 'board',
    label: 'The board',
    what: 'The board',
    pattern: RECORD_ID,
    record: FIRM_BOARD,
    usual: 'binders-board',
  },
  boardThick: lengthField({
    key: 'thick',
    label: 'Board’s thickness',
    what: 'The thickness of the board',
    low: 0.3,
    high: 20,
    optional: true,
  }),
  boardGrain: {
    kind: 'one-of',
    key: 'board-grain',
    label: 'Board’s grain',
    what: 'The grain of the board',
    of: ['height', 'width', 'unknown'],
    usual: 'height',
  },
  adhesive: {
    kind: 'text',
    key: 'glue',
    label: 'The adhesive',
    what: 'The adhesive',
    pattern: RECORD_ID,
    record: ADHESIVE,
    usual: 'pva-mc-1-1',
  },
  tool: TOOL_FIELD,
  lining: {
    kind: 'one-of',
    key: 'lining',
    label: 'On the inside of the board',
    what: 'The lining',
    of: ['none', 'paper'],
    usual: 'none',
  },
  liningPaper: {
    kind: 'text',
    key: 'inside',
    label: 'The lining is most like',
    what: 'The paper of the lining',
    pattern: PAPER_TEXT,
    record: { ...A_PAPER, called: 'a paper for the lining' },
    usual: 'lining-paper',
    asked: isLined,
  },
  liningWeight: {
    kind: 'number',
    key: 'inside-gsm',
    label: 'Lining’s weight',
    what: 'The weight of the lining',
    ...SHEET_WEIGHT,
    optional: true,
    asked: isLined,
  },
  liningGrain: {
    kind: 'one-of',
    key: 'inside-grain',
    label: 'Lining’s grain',
    what: 'The grain of the lining',
    of: SHEET_GRAINS,
    usual: 'height',
    asked: isLined,
  },
  press: {
    kind: 'number',
    key: 'press',
    label: 'Under weight for',
    what: 'The time under weight',
    low: 0,
    high: 336,
    unit: 'h',
    usual: 24,
  },
  celsius: {
    kind: 'number',
    key: 'room',
    label: 'Your room',
    what: 'The temperature',
    low: 5,
    high: 40,
    unit: '°C',
    usual: 20,
  },
  humidity: {
    kind: 'number',
    key: 'rh',
    label: 'Its humidity',
    what: 'The relative humidity of your room',
    low: 5,
    high: 95,
    unit: '%',
    usual: 50,
  },
  later: {
    kind: 'number',
    key: 'rh-later',
    label: 'Where it will live',
    what: 'The relative humidity where it will live',
    low: 5,
    high: 95,
    unit: '%',
    usual: 35,
  },
  bench: BENCH_FIELD,
} as const satisfies FieldTable;

export type FlatPlan = PlanOf<typeof FLAT_FIELDS>;
export type FlatField = keyof typeof FLAT_FIELDS;

/** The side of an A5 book, covered by the usual means, in an ordinary room; in winter that room is drier. */
export const DEFAULT_FLAT: FlatPlan = usualOf(FLAT_FIELDS);
