/** The fields of the project calculator, and what stands in them at first. */
import { lengthSpec as length } from '../base/length-text';
import { MEASURES, type MeasureId } from './measures';
import type { PlanOf } from '../link/fields';

const own = (id: MeasureId) => {
  const { key, what, low, high } = MEASURES[id];
  return length({ optional: true }, key, what, low, high);
};
const oneOf = <const T extends readonly string[]>(key: string, of: T, what: string) =>
  ({ kind: 'one-of', key, of, what }) as const;

export const PROJECT_IDS = ['notebook', 'accordion', 'slip-case', 'lidded-box', 'portfolio'] as const;
export type ProjectId = (typeof PROJECT_IDS)[number];

/** Fixed order: links are written in it. Lengths are mm here, whatever unit the reader types in. */
export const makeSpecs = {
  project: oneOf('make', PROJECT_IDS, 'What you make'),
  unit: oneOf('in', ['mm', 'cm', 'in'], 'The unit'),
  width: length({}, 'wide', 'The width', 20, 1000),
  height: length({}, 'high', 'The height', 20, 1000),
  thicknessFrom: oneOf('thick-by', ['measured', 'leaves'], 'How the thickness is known'),
  thickness: length({}, 'thick', 'The thickness', 1, 200),
  leaves: { kind: 'number', key: 'leaves', low: 1, high: 5000, unit: '', what: 'The number of leaves', whole: true },
  caliper: { kind: 'number', key: 'caliper', low: 10, high: 3000, unit: 'µm', what: 'The caliper of one leaf' },
  board: length({}, 'board', 'The board’s thickness', 0.3, 10),
  cover: oneOf('cover', ['full', 'quarter'], 'How it is covered'),
  stock: oneOf('with', ['cloth', 'paper'], 'What it is covered with'),
  back: oneOf('spine-lining', ['none', 'lining', 'hollow'], 'The back of the block'),
  panels: { kind: 'number', key: 'panels', low: 2, high: 60, unit: '', what: 'The number of panels', whole: true },
  sheet: length({ optional: true }, 'sheet', 'The longest strip', 30, 5000),
  lined: oneOf('lined', ['yes', 'no'], 'The lining'),
  ties: oneOf('ties', ['0', '1', '3'], 'The ties'),
  ...{ square: own('square'), joint: own('joint'), spine: own('spine'), turnIn: own('turnIn') },
  ...{ corner: own('corner'), onBoard: own('onBoard'), lap: own('lap'), tab: own('tab') },
  ...{ slackWidth: own('slackWidth'), slackHeight: own('slackHeight'), slackThickness: own('slackThickness') },
  ...{ lidDepth: own('lidDepth'), lidRoom: own('lidRoom'), covering: own('covering') },
  ...{ margin: own('margin'), flap: own('flap'), tie: own('tie') },
} as const;

export type MakePlan = PlanOf<typeof makeSpecs>;
export type MakeField = keyof typeof makeSpecs;

const NONE = Object.fromEntries(Object.keys(MEASURES).map((id) => [id, undefined])) as Record<MeasureId, undefined>;

export const DEFAULT_MAKE: MakePlan = {
  project: 'notebook',
  unit: 'mm',
  width: 148,
  height: 210,
  thicknessFrom: 'measured',
  thickness: 12,
  leaves: 96,
  caliper: 110,
  board: 2.5,
  cover: 'full',
  stock: 'paper',
  back: 'none',
  panels: 12,
  sheet: undefined,
  lined: 'yes',
  ties: '1',
  ...NONE,
};
