/** What is asked of a bench of one's own: four things to measure, each of which can be left out. */
import { PAPER_TEXT, RECORD_ID } from '../base/record-id';
import { usualOf, type FieldTable, type PlanOf } from '../link/fields';
import { parseDrops, readDrops, showDrops, writeDrops } from '../paper/drop-test';
import { NAME_ALLOWS } from '../paper/name-words';
import { A_PAPER, PAPER_NAME } from '../paper/own-paper';
import { TOOL_FIELD, WET_ADHESIVE } from '../records/kinds';
import type { Catalogue } from '../records/records';
import { grabsBy } from './grabs-by';
import { readings } from './readings';

type Asking = Readonly<Record<'coatBy' | 'solidsBy' | 'boardBy' | 'grabBy', string>>;
const coat = (plan: Asking) => plan.coatBy !== 'none';
const weighed = (plan: Asking) => plan.coatBy === 'weighed';
const spoon = (plan: Asking) => plan.coatBy === 'spoon';
const smear = (plan: Asking) => plan.solidsBy === 'smear';
const drop = (plan: Asking) => plan.boardBy === 'drop';
const grab = (plan: Asking) => plan.grabBy === 'strip';

/** What is used as it comes out of its jar: an adhesive of one part. */
export const isOneJar = (id: string, { adhesives, ingredients }: Catalogue): boolean => {
  const adhesive = adhesives.get(id);
  return adhesive?.form === 'wet' && adhesive.parts.length === 1 && ingredients.has(adhesive.parts[0]!.of);
};
const drinks = (id: string, { substrates }: Catalogue) => (substrates.get(id)?.sorptivity.low ?? 0) > 0;
const grabsAlone = (id: string, catalogue: Catalogue) => {
  const adhesive = catalogue.adhesives.get(id);
  return adhesive?.form === 'wet' && grabsBy(adhesive, catalogue) !== undefined;
};
const GRAMS = { low: 0.01, high: 5000, unit: 'g' } as const;

/** Fixed order: links are written in it. */
export const BENCH_FIELDS = {
  name: {
    kind: 'text',
    key: 'named',
    label: 'What you call this bench',
    what: 'Its name',
    pattern: PAPER_NAME,
    allows: NAME_ALLOWS,
    usual: '',
  },
  coatBy: {
    kind: 'one-of',
    key: 'coat',
    label: 'My coat',
    what: 'How the coat is known',
    of: ['none', 'weighed', 'spoon'],
    usual: 'weighed',
  },
  tool: { ...TOOL_FIELD, asked: (plan: Asking) => coat(plan) || grab(plan) },
  before: {
    ...readings({ field: 'before', what: 'weights', ...GRAMS }),
    key: 'before',
    label: 'Boards before',
    what: 'The weights before',
    usual: [41.2, 40.9, 41.5],
    example: true,
    asked: weighed,
  },
  after: {
    ...readings({ field: 'after', what: 'weights', ...GRAMS }),
    key: 'after',
    label: 'The same brushed',
    what: 'The weights after',
    usual: [43.1, 42.9, 43.6],
    example: true,
    asked: weighed,
  },
  step: {
    kind: 'number',
    key: 'step',
    label: 'Step of the scale',
    what: 'The step of the scale',
    low: 0.001,
    high: 10,
    unit: 'g',
    usual: 0.1,
    example: true,
    asked: weighed,
  },
  seconds: {
    kind: 'number',
    key: 'waited',
    label: 'From the last stroke to the scale',
    what: 'The time to the scale',
    low: 0,
    high: 600,
    unit: 's',
    usual: 20,
    example: true,
    asked: weighed,
  },
  millilitres: {
    kind: 'number',
    key: 'ml',
    label: 'The spoon held',
    what: 'What the spoon held',
    low: 0.5,
    high: 1000,
    unit: 'ml',
    usual: 5,
    example: true,
    asked: spoon,
  },
  spread: {
    kind: 'text',
    key: 'spread',
    label: 'Of this adhesive',
    what: 'What was spread',
    pattern: RECORD_ID,
    record: WET_ADHESIVE,
    usual: 'pva',
    asked: spoon,
  },
  wide: {
    kind: 'number',
    key: 'wide',
    label: 'Brushed area, wide',
    what: 'The width of the brushed area',
    low: 20,
    high: 2000,
    unit: 'mm',
    usual: 148,
    example: true,
    asked: coat,
  },
  high: {
    kind: 'number',
    key: 'high',
    label: 'and high',
    what: 'The height of the brushed area',
    low: 20,
    high: 2000,
    unit: 'mm',
    usual: 210,
    example: true,
    asked: coat,
  },
  solidsBy: {
    kind: 'one-of',
    key: 'solids',
    label: 'My glue’s solids',
    what: 'How the solids are known',
    of: ['none', 'smear', 'sheet'],
    usual: 'smear',
  },
  jar: {
    kind: 'text',
    key: 'jar',
    label: 'The glue in my jar',
    what: 'The glue',
    pattern: RECORD_ID,
    record: { called: 'a glue that is used as it comes', isOne: isOneJar },
    usual: 'pva',
    asked: (plan: Asking) => plan.solidsBy !== 'none',
  },
  dish: {
    kind: 'number',
    key: 'dish',
    label: 'The foil alone',
    what: 'The foil',
    low: 0,
    high: 2000,
    unit: 'g',
    usual: 1.2,
    example: true,
    asked: smear,
  },
  wet: {
    kind: 'number',
    key: 'wet',
    label: 'With the wet smear',
    what: 'The wet smear',
    ...GRAMS,
    usual: 6.2,
    example: true,
    asked: smear,
  },
  dry: {
    kind: 'number',
    key: 'dry',
    label: 'When it is dry',
    what: 'The dry smear',
    ...GRAMS,
    usual: 3.9,
    example: true,
    asked: smear,
  },
  smearStep: {
    kind: 'number',
    key: 'smear-step',
    label: 'Step of that scale',
    what: 'The step of that scale',
    low: 0.001,
    high: 1,
    unit: 'g',
    usual: 0.1,
    example: true,
    asked: smear,
  },
  percent: {
    kind: 'number',
    key: 'percent',
    label: 'Its data sheet says',
    what: 'The solids of the data sheet',
    low: 1,
    high: 100,
    unit: '%',
    usual: 54,
    example: true,
    asked: (plan: Asking) => plan.solidsBy === 'sheet',
  },
  boardBy: {
    kind: 'one-of',
    key: 'board',
    label: 'How my board drinks',
    what: 'How the board is known',
    of: ['none', 'drop'],
    usual: 'drop',
  },
  board: {
    kind: 'text',
    key: 'on',
    label: 'My board is most like',
    what: 'The board',
    pattern: RECORD_ID,
    record: { called: 'a board that drinks', isOne: drinks },
    usual: 'binders-board',
    asked: (plan: Asking) => drop(plan) || grab(plan),
  },
  drops: {
    kind: 'rows',
    key: 'drops',
    label: 'Drops took',
    what: 'The drops',
    parse: parseDrops,
    show: showDrops,
    read: readDrops,
    write: writeDrops,
    usual: [44, 52, 47],
    example: true,
    asked: drop,
  },
  dropsPerMl: {
    kind: 'number',
    optional: true,
    key: 'per-ml',
    label: 'Drops to 1 ml',
    what: 'The drops in a millilitre',
    low: 1,
    high: 200,
    unit: 'drops',
    asked: drop,
  },
  grabBy: {
    kind: 'one-of',
    key: 'grab',
    label: 'How soon my glue grabs',
    what: 'How the grab is known',
    of: ['none', 'strip'],
    usual: 'strip',
  },
  glue: {
    kind: 'text',
    key: 'glue',
    label: 'The glue on the strip',
    what: 'The glue on the strip',
    pattern: RECORD_ID,
    record: { called: 'an adhesive that is no mix', isOne: grabsAlone },
    usual: 'pva',
    asked: grab,
  },
  paper: {
    kind: 'text',
    key: 'paper',
    label: 'The strip is most like',
    what: 'The paper of the strip',
    pattern: PAPER_TEXT,
    record: A_PAPER,
    usual: 'wove-text',
    asked: grab,
  },
  grabbed: {
    ...readings({ field: 'grabbed', what: 'times', low: 1, high: 3000, unit: 's' }),
    key: 'grabbed',
    label: 'It stopped sliding after',
    what: 'The times of the strips',
    usual: [30, 35, 30],
    example: true,
    asked: grab,
  },
  every: {
    kind: 'number',
    key: 'every',
    label: 'You pushed every',
    what: 'The time between two pushes',
    low: 1,
    high: 600,
    unit: 's',
    usual: 5,
    example: true,
    asked: grab,
  },
} as const satisfies FieldTable;

export type BenchPlan = PlanOf<typeof BENCH_FIELDS>;
export type BenchField = keyof typeof BENCH_FIELDS;

/** A bench that was measured, invented; and what a link means by what it leaves out. */
export const EXAMPLE_BENCH: BenchPlan = usualOf(BENCH_FIELDS);

/** The form as it opens: nothing is measured yet. */
export const UNMEASURED_BENCH: BenchPlan = {
  ...EXAMPLE_BENCH,
  coatBy: 'none',
  solidsBy: 'none',
  boardBy: 'none',
  grabBy: 'none',
};

/** Whether a plan says anything of one's own bench. */
export const benchIsMeasured = ({ coatBy, solidsBy, boardBy, grabBy }: BenchPlan): boolean =>
  [coatBy, solidsBy, boardBy, grabBy].some((by) => by !== 'none');
