/** What the mixing calculator asks: its kinds of job, their fields, and what stands there at first. */
import { PAPER_TEXT } from '../base/record-id';
import { usualOf, type FieldTable, type PlanOf } from '../link/fields';
import { A_PAPER } from '../paper/own-paper';
import { TOOL_FIELD } from '../records/kinds';
import { BASES, EXTENDERS, POWDERS, STARCHES } from './jars';

export const MIX_KINDS = ['powder', 'paste', 'stretch', 'dilute', 'correct'] as const;
export type MixKind = (typeof MIX_KINDS)[number];

/** What a jar may hold whose strength is to be changed. */
export const JARS = [...POWDERS, ...STARCHES, 'pva', 'eva'] as const;
/** What a paste is cooked in. */
export const VESSELS = ['pan', 'double-boiler', 'microwave'] as const;
export const PASTE_TARGETS = ['as-cooked', 'covering', 'hinging', 'lining'] as const;

interface Asking {
  readonly kind: string;
  readonly aim: string;
  readonly from: string;
}
const forKinds =
  (...kinds: readonly MixKind[]) =>
  ({ kind }: Pick<Asking, 'kind'>): boolean =>
    kinds.some((one) => one === kind);
const byParts = ({ kind, aim }: Asking) => kind === 'stretch' && aim === 'parts';
const fromWhatIsLeft = ({ kind, from }: Asking) => kind === 'stretch' && from === 'have';
/** What is asked wherever the amount follows from the work, and not from what there is. */
const forTheWork = (plan: Asking) => plan.kind !== 'correct' && !fromWhatIsLeft(plan);

/** Fixed order: links are written in it. */
export const MIX_FIELDS = {
  kind: {
    kind: 'one-of',
    key: 'do',
    label: 'What do you want to do?',
    what: 'What to do',
    of: MIX_KINDS,
    usual: 'powder',
  },
  powder: {
    kind: 'one-of',
    key: 'powder',
    label: 'The powder',
    what: 'The powder',
    of: POWDERS,
    usual: 'methylcellulose',
    asked: forKinds('powder'),
  },
  grade: {
    kind: 'number',
    key: 'grade',
    label: 'Grade, if another',
    what: 'The grade',
    low: 15,
    high: 100000,
    unit: 'mPa·s',
    optional: true,
    asked: forKinds('powder'),
  },
  percent: {
    kind: 'number',
    key: 'percent',
    label: 'Strength',
    what: 'The strength',
    low: 0.05,
    high: 40,
    unit: '%',
    usual: 2.5,
    asked: forKinds('powder'),
  },
  basis: {
    kind: 'one-of',
    key: 'per',
    label: 'Per cent means',
    what: 'How per cent is counted',
    of: ['w/v', 'w/w'],
    usual: 'w/v',
    asked: forKinds('powder', 'dilute', 'correct'),
  },
  starch: {
    kind: 'one-of',
    key: 'starch',
    label: 'The starch',
    what: 'The starch',
    of: STARCHES,
    usual: 'wheat-starch',
    asked: forKinds('paste'),
  },
  waterParts: {
    kind: 'number',
    key: 'water',
    label: 'Water to 1 of starch',
    what: 'The water',
    low: 3,
    high: 10,
    unit: 'parts',
    usual: 4,
    asked: forKinds('paste'),
  },
  by: {
    kind: 'one-of',
    key: 'by',
    label: 'Parts by',
    what: 'How parts are measured',
    of: ['mass', 'volume'],
    usual: 'mass',
    asked: forKinds('paste'),
  },
  boiledOff: {
    kind: 'number',
    key: 'steam',
    label: 'Water that boils off',
    what: 'The water boiled off',
    low: 0,
    high: 50,
    unit: '%',
    usual: 10,
    asked: forKinds('paste'),
  },
  use: {
    kind: 'one-of',
    key: 'for',
    label: 'Thin it for',
    what: 'What the paste is for',
    of: PASTE_TARGETS,
    usual: 'lining',
    asked: forKinds('paste'),
  },
  vessel: {
    kind: 'one-of',
    key: 'cook',
    label: 'Cooked in',
    what: 'What it is cooked in',
    of: VESSELS,
    usual: 'pan',
    // A pan goes without saying, and so links of before it was asked stay as they were.
    asked: () => false,
  },
  base: {
    kind: 'one-of',
    key: 'base',
    label: 'Stretch',
    what: 'What is stretched',
    of: BASES,
    usual: 'pva',
    asked: forKinds('stretch'),
  },
  extender: {
    kind: 'one-of',
    key: 'with',
    label: 'with',
    what: 'What it is stretched with',
    of: EXTENDERS,
    usual: 'methylcellulose-1-5',
    asked: forKinds('stretch'),
  },
  aim: {
    kind: 'one-of',
    key: 'aim',
    label: 'Given as',
    what: 'What is given',
    of: ['parts', 'solids'],
    usual: 'parts',
    asked: forKinds('stretch'),
  },
  baseParts: {
    kind: 'number',
    key: 'base-parts',
    label: 'Parts of PVA',
    what: 'The parts of it',
    low: 0.1,
    high: 20,
    unit: 'parts',
    usual: 1,
    asked: byParts,
  },
  extenderParts: {
    kind: 'number',
    key: 'with-parts',
    label: 'Parts added',
    what: 'The parts added',
    low: 0,
    high: 20,
    unit: 'parts',
    usual: 1,
    asked: byParts,
  },
  solids: {
    kind: 'number',
    key: 'solids',
    label: 'Solids of the mix',
    what: 'The solids of the mix',
    low: 1,
    high: 60,
    unit: '%',
    usual: 30,
    asked: (plan: Asking) => plan.kind === 'stretch' && plan.aim === 'solids',
  },
  from: {
    kind: 'one-of',
    key: 'from',
    label: 'Start from',
    what: 'Where to start',
    of: ['need', 'have'],
    usual: 'need',
    asked: forKinds('stretch'),
  },
  haveGrams: {
    kind: 'number',
    key: 'have-g',
    label: 'PVA left',
    what: 'What you have left',
    low: 1,
    high: 50000,
    unit: 'g',
    usual: 80,
    asked: fromWhatIsLeft,
  },
  paper: {
    kind: 'text',
    key: 'paper',
    label: 'To be laid under',
    what: 'The paper',
    pattern: PAPER_TEXT,
    record: A_PAPER,
    usual: 'chiyogami',
    asked: forKinds('stretch'),
  },
  tool: { ...TOOL_FIELD, asked: forKinds('stretch') },
  celsius: {
    kind: 'number',
    key: 'room',
    label: 'Room',
    what: 'The room',
    low: 1,
    high: 40,
    unit: '°C',
    usual: 20,
    asked: forKinds('stretch'),
  },
  jar: {
    kind: 'one-of',
    key: 'jar',
    label: 'In the jar',
    what: 'What is in the jar',
    of: JARS,
    usual: 'methylcellulose',
    asked: forKinds('dilute', 'correct'),
  },
  have: {
    kind: 'number',
    key: 'have',
    label: 'I have',
    what: 'What you have',
    low: 1,
    high: 50000,
    unit: 'ml',
    usual: 120,
    asked: forKinds('correct'),
  },
  stock: {
    kind: 'number',
    key: 'is',
    label: 'It is',
    what: 'Its strength',
    low: 0.05,
    high: 60,
    unit: '%',
    usual: 4,
    asked: forKinds('dilute', 'correct'),
  },
  target: {
    kind: 'number',
    key: 'want',
    label: 'I want',
    what: 'The strength you want',
    low: 0.05,
    high: 60,
    unit: '%',
    usual: 2.5,
    asked: forKinds('dilute', 'correct'),
  },
  need: {
    kind: 'number',
    key: 'need',
    label: 'For the work',
    what: 'The amount on the work',
    low: 1,
    high: 50000,
    unit: 'ml',
    usual: 200,
    asked: forTheWork,
  },
  loss: {
    kind: 'number',
    key: 'loss',
    label: 'Left in the pot',
    what: 'What stays in pot and brush',
    low: 0,
    high: 60,
    unit: '%',
    usual: 10,
    asked: forTheWork,
  },
  scale: {
    kind: 'one-of',
    key: 'scale',
    label: 'Scale steps of',
    what: 'The step of the scale',
    of: ['1', '0.1', '0.01'],
    usual: '0.1',
  },
} as const satisfies FieldTable;

export type MixPlan = PlanOf<typeof MIX_FIELDS>;
export type MixField = keyof typeof MIX_FIELDS;

export const DEFAULT_MIX: MixPlan = usualOf(MIX_FIELDS);
