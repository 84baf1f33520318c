/** What the calculator of warp asks, and what stands there at first. */
import { PAPER_TEXT, RECORD_ID } from '../base/record-id';
import { lengthSpec } from '../base/length-text';
import type { PlanOf } from '../link/fields';

/** Grain of a sheet: up the height of the work, across its width, not known, or none to speak of. */
export const SHEET_GRAINS = ['height', 'width', 'unknown', 'none'] as const;
export type SheetGrain = (typeof SHEET_GRAINS)[number];

const weight = { low: 5, high: 600, unit: 'g/m²' } as const;
const humidity = { kind: 'number', low: 5, high: 95, unit: '%' } as const;

/** Fixed order: links are written in it. Lengths are mm here, whatever unit the reader types in. */
export const FLAT_SPECS = {
  paper: { kind: 'text', key: 'paper', pattern: PAPER_TEXT, what: 'The paper' },
  paperWeight: { kind: 'number', optional: true, key: 'gsm', ...weight, what: 'The weight of the cover paper' },
  paperGrain: { kind: 'one-of', key: 'grain', of: SHEET_GRAINS, what: 'The grain of the cover paper' },
  unit: { kind: 'one-of', key: 'in', of: ['mm', 'cm', 'in'], what: 'The unit' },
  width: lengthSpec({}, 'wide', 'The width', 10, 2000),
  height: lengthSpec({}, 'high', 'The height', 10, 2000),
  board: { kind: 'text', key: 'board', pattern: RECORD_ID, what: 'The board' },
  boardThick: lengthSpec({ optional: true }, 'thick', 'The thickness of the board', 0.3, 20),
  boardGrain: {
    kind: 'one-of',
    key: 'board-grain',
    of: ['height', 'width', 'unknown'],
    what: 'The grain of the board',
  },
  adhesive: { kind: 'text', key: 'glue', pattern: RECORD_ID, what: 'The adhesive' },
  tool: { kind: 'text', key: 'tool', pattern: RECORD_ID, what: 'The tool' },
  lining: { kind: 'one-of', key: 'lining', of: ['none', 'paper'], what: 'The lining' },
  liningPaper: { kind: 'text', key: 'inside', pattern: PAPER_TEXT, what: 'The paper of the lining' },
  liningWeight: { kind: 'number', optional: true, key: 'inside-gsm', ...weight, what: 'The weight of the lining' },
  liningGrain: { kind: 'one-of', key: 'inside-grain', of: SHEET_GRAINS, what: 'The grain of the lining' },
  press: { kind: 'number', key: 'press', low: 0, high: 336, unit: 'h', what: 'The time under weight' },
  celsius: { kind: 'number', key: 'room', low: 5, high: 40, unit: '°C', what: 'The temperature' },
  humidity: { ...humidity, key: 'rh', what: 'The relative humidity of your room' },
  later: { ...humidity, key: 'rh-later', what: 'The relative humidity where it will live' },
} as const;

export type FlatPlan = PlanOf<typeof FLAT_SPECS>;
export type FlatField = keyof typeof FLAT_SPECS;

/** The side of an A5 book, covered by the usual means, in an ordinary room; in winter that room is drier. */
export const DEFAULT_FLAT: FlatPlan = {
  paper: 'marbled',
  paperWeight: undefined,
  paperGrain: 'height',
  unit: 'mm',
  width: 148,
  height: 216,
  board: 'binders-board',
  boardThick: undefined,
  boardGrain: 'height',
  adhesive: 'pva-mc-1-1',
  tool: 'brush-full',
  lining: 'none',
  liningPaper: 'lining-paper',
  liningWeight: undefined,
  liningGrain: 'height',
  press: 24,
  celsius: 20,
  humidity: 50,
  later: 35,
};

/** Fields this plan is asked; a slip anywhere else is out of sight. */
export function askedOfFlat({ lining }: Pick<FlatPlan, 'lining'>): readonly FlatField[] {
  const inside = ['liningPaper', 'liningWeight', 'liningGrain'];
  return (Object.keys(FLAT_SPECS) as FlatField[]).filter((field) => lining === 'paper' || !inside.includes(field));
}
