/** The fields of the project calculator, and what stands in them at first. */
import { usualOf, type FieldTable, type PlanOf } from '../link/fields';
import { LENGTH_UNIT, lengthField } from '../link/length-field';
import { PAPER_LIMITS } from '../paper/limits';
import { MEASURES, type MeasureId } from './measures';
import { bearsOn, PROJECT_IDS, PROJECTS, type AskedOfSome, type ProjectId } from './projects';

interface Asking {
  readonly project: ProjectId;
  readonly thicknessFrom: string;
  readonly cover: string;
  readonly ties: string;
}
const isThick = ({ project }: Pick<Asking, 'project'>) => project !== 'accordion';
const byLeaves = (plan: Pick<Asking, 'project' | 'thicknessFrom'>) => isThick(plan) && plan.thicknessFrom === 'leaves';
const asks =
  (field: AskedOfSome) =>
  ({ project }: Pick<Asking, 'project'>): boolean =>
    PROJECTS[project].asks.includes(field);
/** A row for a measure that its maker may set; left empty, it is the usual one. */
const own = (id: MeasureId) => {
  const { key, label, what, low, high } = MEASURES[id];
  const asked = (plan: Asking) => bearsOn(id, plan);
  return lengthField({ key, label, what, low, high, optional: true, asked });
};

/** Fixed order: links are written in it. Lengths are mm here, whatever unit the reader types in. */
export const MAKE_FIELDS = {
  project: {
    kind: 'one-of',
    key: 'make',
    label: 'What do you make?',
    what: 'What you make',
    of: PROJECT_IDS,
    usual: 'notebook',
  },
  unit: LENGTH_UNIT,
  width: lengthField({ key: 'wide', label: 'Width', what: 'The width', low: 20, high: 1000, usual: 148 }),
  height: lengthField({ key: 'high', label: 'Height', what: 'The height', low: 20, high: 1000, usual: 210 }),
  thicknessFrom: {
    kind: 'one-of',
    key: 'thick-by',
    label: 'Its thickness',
    what: 'How the thickness is known',
    of: ['measured', 'leaves'],
    usual: 'measured',
    asked: isThick,
  },
  thickness: lengthField({
    key: 'thick',
    label: 'Thickness',
    what: 'The thickness',
    low: 1,
    high: 200,
    usual: 12,
    asked: (plan: Asking) => isThick(plan) && plan.thicknessFrom === 'measured',
  }),
  leaves: {
    kind: 'number',
    key: 'leaves',
    label: 'Leaves',
    what: 'The number of leaves',
    low: 1,
    high: 5000,
    unit: '',
    whole: true,
    usual: 96,
    asked: byLeaves,
  },
  caliper: {
    kind: 'number',
    key: 'caliper',
    label: 'Caliper of one',
    ...PAPER_LIMITS.caliper,
    what: 'The caliper of one leaf',
    usual: 110,
    asked: byLeaves,
  },
  board: lengthField({
    key: 'board',
    label: 'Board, thickness',
    what: 'The board’s thickness',
    low: 0.3,
    high: 10,
    usual: 2.5,
  }),
  cover: {
    kind: 'one-of',
    key: 'cover',
    label: 'Covering',
    what: 'How it is covered',
    of: ['full', 'quarter'],
    usual: 'full',
    asked: asks('cover'),
  },
  stock: { kind: 'one-of', key: 'with', what: 'What it is covered with', of: ['cloth', 'paper'], usual: 'paper' },
  back: {
    kind: 'one-of',
    key: 'spine-lining',
    label: 'Back of the block',
    what: 'The back of the block',
    of: ['none', 'lining', 'hollow'],
    usual: 'none',
    asked: asks('back'),
  },
  panels: {
    kind: 'number',
    key: 'panels',
    label: 'Panels',
    what: 'The number of panels',
    low: 2,
    high: 60,
    unit: '',
    whole: true,
    usual: 12,
    asked: asks('panels'),
  },
  sheet: lengthField({
    key: 'sheet',
    label: 'Longest strip',
    what: 'The longest strip',
    low: 30,
    high: 5000,
    optional: true,
    asked: asks('sheet'),
  }),
  lined: {
    kind: 'one-of',
    key: 'lined',
    label: 'Lined inside',
    what: 'The lining',
    of: ['yes', 'no'],
    usual: 'yes',
    asked: asks('lined'),
  },
  ties: {
    kind: 'one-of',
    key: 'ties',
    label: 'Ties',
    what: 'The ties',
    of: ['0', '1', '3'],
    usual: '1',
    asked: asks('ties'),
  },
  square: own('square'),
  joint: own('joint'),
  spine: own('spine'),
  turnIn: own('turnIn'),
  corner: own('corner'),
  onBoard: own('onBoard'),
  lap: own('lap'),
  tab: own('tab'),
  slackWidth: own('slackWidth'),
  slackHeight: own('slackHeight'),
  slackThickness: own('slackThickness'),
  lidDepth: own('lidDepth'),
  lidRoom: own('lidRoom'),
  covering: own('covering'),
  margin: own('margin'),
  flap: own('flap'),
  tie: own('tie'),
} as const satisfies FieldTable;

export type MakePlan = PlanOf<typeof MAKE_FIELDS>;
export type MakeField = keyof typeof MAKE_FIELDS;

export const DEFAULT_MAKE: MakePlan = usualOf(MAKE_FIELDS);
