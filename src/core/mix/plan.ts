/** What the mixing calculator asks: its kinds of job, their fields, and what stands there at first. */
import { PAPER_TEXT, RECORD_ID } from '../base/record-id';
import type { PlanOf } from '../link/fields';

export const MIX_KINDS = ['powder', 'paste', 'stretch', 'dilute', 'correct'] as const;
export type MixKind = (typeof MIX_KINDS)[number];

export const POWDERS = ['methylcellulose', 'methylcellulose-400', 'gelatine'] as const;
export const STARCHES = ['wheat-starch', 'rice-starch'] as const;
export const BASES = ['pva', 'pva-thick', 'eva'] as const;
export const EXTENDERS = [
  'methylcellulose-1-5',
  'methylcellulose-2-5',
  'methylcellulose-4',
  'wheat-starch-paste-thick',
  'wheat-starch-paste-thin',
  'water',
] as const;
/** What a jar may hold whose strength is to be changed. */
export const JARS = [...POWDERS, ...STARCHES, 'pva', 'eva'] as const;
/** What a paste is cooked in. */
export const VESSELS = ['pan', 'double-boiler', 'microwave'] as const;
export const PASTE_TARGETS = ['as-cooked', 'covering', 'hinging', 'lining'] as const;

const percent = (key: string, what: string, low = 0.05, high = 60) =>
  ({ kind: 'number', key, low, high, unit: '%', what }) as const;

/** Fixed order: links are written in it. */
export const MIX_SPECS = {
  kind: { kind: 'one-of', key: 'do', of: MIX_KINDS, what: 'What to do' },
  powder: { kind: 'one-of', key: 'powder', of: POWDERS, what: 'The powder' },
  grade: { kind: 'number', optional: true, key: 'grade', low: 15, high: 100000, unit: 'mPa·s', what: 'The grade' },
  percent: percent('percent', 'The strength', 0.05, 40),
  basis: { kind: 'one-of', key: 'per', of: ['w/v', 'w/w'], what: 'How per cent is counted' },
  starch: { kind: 'one-of', key: 'starch', of: STARCHES, what: 'The starch' },
  waterParts: { kind: 'number', key: 'water', low: 3, high: 10, unit: 'parts', what: 'The water' },
  by: { kind: 'one-of', key: 'by', of: ['mass', 'volume'], what: 'How parts are measured' },
  boiledOff: { kind: 'number', key: 'steam', low: 0, high: 50, unit: '%', what: 'The water boiled off' },
  use: { kind: 'one-of', key: 'for', of: PASTE_TARGETS, what: 'What the paste is for' },
  vessel: { kind: 'one-of', key: 'cook', of: VESSELS, what: 'What it is cooked in' },
  base: { kind: 'one-of', key: 'base', of: BASES, what: 'What is stretched' },
  extender: { kind: 'one-of', key: 'with', of: EXTENDERS, what: 'What it is stretched with' },
  aim: { kind: 'one-of', key: 'aim', of: ['parts', 'solids'], what: 'What is given' },
  baseParts: { kind: 'number', key: 'base-parts', low: 0.1, high: 20, unit: 'parts', what: 'The parts of it' },
  extenderParts: { kind: 'number', key: 'with-parts', low: 0, high: 20, unit: 'parts', what: 'The parts added' },
  solids: percent('solids', 'The solids of the mix', 1, 60),
  from: { kind: 'one-of', key: 'from', of: ['need', 'have'], what: 'Where to start' },
  haveGrams: { kind: 'number', key: 'have-g', low: 1, high: 50000, unit: 'g', what: 'What you have left' },
  paper: { kind: 'text', key: 'paper', pattern: PAPER_TEXT, what: 'The paper' },
  tool: { kind: 'text', key: 'tool', pattern: RECORD_ID, what: 'The tool' },
  celsius: { kind: 'number', key: 'room', low: 1, high: 40, unit: '°C', what: 'The room' },
  jar: { kind: 'one-of', key: 'jar', of: JARS, what: 'What is in the jar' },
  have: { kind: 'number', key: 'have', low: 1, high: 50000, unit: 'ml', what: 'What you have' },
  stock: percent('is', 'Its strength'),
  target: percent('want', 'The strength you want'),
  need: { kind: 'number', key: 'need', low: 1, high: 50000, unit: 'ml', what: 'The amount on the work' },
  loss: { kind: 'number', key: 'loss', low: 0, high: 60, unit: '%', what: 'What stays in pot and brush' },
  scale: { kind: 'one-of', key: 'scale', of: ['1', '0.1', '0.01'], what: 'The step of the scale' },
} as const;

export type MixPlan = PlanOf<typeof MIX_SPECS>;
export type MixField = keyof typeof MIX_SPECS;

export const DEFAULT_MIX: MixPlan = {
  kind: 'powder',
  powder: 'methylcellulose',
  grade: undefined,
  percent: 2.5,
  basis: 'w/v',
  starch: 'wheat-starch',
  waterParts: 4,
  by: 'mass',
  boiledOff: 10,
  use: 'lining',
  vessel: 'pan',
  base: 'pva',
  extender: 'methylcellulose-1-5',
  aim: 'parts',
  baseParts: 1,
  extenderParts: 1,
  solids: 30,
  from: 'need',
  haveGrams: 80,
  paper: 'chiyogami',
  tool: 'brush-full',
  celsius: 20,
  jar: 'methylcellulose',
  have: 120,
  stock: 4,
  target: 2.5,
  need: 200,
  loss: 10,
  scale: '0.1',
};

const AMOUNT = ['need', 'loss', 'scale'] as const;

/** Fields that this plan's kind of job asks for; a slip anywhere else is out of sight. */
export function askedIn({ kind, aim, from }: Pick<MixPlan, 'kind' | 'aim' | 'from'>): readonly MixField[] {
  switch (kind) {
    case 'powder':
      return ['kind', 'powder', 'grade', 'percent', 'basis', ...AMOUNT];
    case 'paste':
      // not the vessel: a pan goes without saying, and so links of before it was asked stay as they were
      return ['kind', 'starch', 'waterParts', 'by', 'boiledOff', 'use', ...AMOUNT];
    case 'stretch': {
      const how = aim === 'parts' ? (['baseParts', 'extenderParts'] as const) : (['solids'] as const);
      const amount = from === 'need' ? AMOUNT : (['haveGrams', 'scale'] as const);
      return ['kind', 'base', 'extender', 'aim', ...how, 'from', ...amount, 'paper', 'tool', 'celsius'];
    }
    case 'dilute':
      return ['kind', 'jar', 'stock', 'target', 'basis', ...AMOUNT];
    case 'correct':
      return ['kind', 'jar', 'have', 'stock', 'target', 'basis', 'scale'];
  }
}
