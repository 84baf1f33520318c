/** What the coverage calculator asks, and what stands there at first. */
import { LEFT_IN_POT_PERCENT } from '../adhesive/coverage';
import { PAPER_TEXT, RECORD_ID } from '../base/record-id';
import type { Piece } from '../base/piece';
import { encodePieces } from './pieces-link';
import { parseRows, readPieces, showRows } from './pieces-text';
import { PRESETS, type PresetId } from './pieces';
import { usualOf, type FieldTable, type PlanOf } from '../link/fields';
import { LENGTH_UNIT, lengthField } from '../link/length-field';
import { A_PAPER } from '../paper/own-paper';
import { BENCH_FIELD, TOOL_FIELD, WET_ADHESIVE } from '../records/kinds';

export const COVERED_THINGS = [
  'notebook',
  'slip-case',
  'lidded-box',
  'accordion',
  'lining',
  'own',
] as const satisfies readonly (PresetId | 'own')[];

type Asking = { readonly thing: string; readonly coatFrom: string };
const ofAPreset = ({ thing }: Asking) => thing !== 'own';
const byTool = ({ coatFrom }: Asking) => coatFrom === 'tool';
const byWeighing = ({ coatFrom }: Asking) => coatFrom === 'weighed';

/** Fixed order: links are written in it. Lengths are mm here, whatever unit the reader types in. */
export const COVER_FIELDS = {
  thing: {
    kind: 'one-of',
    key: 'thing',
    label: 'What do you cover?',
    of: COVERED_THINGS,
    what: 'What you cover',
    usual: 'notebook',
  },
  unit: LENGTH_UNIT,
  width: lengthField({
    key: 'wide',
    label: 'Its width',
    what: 'The width',
    low: 5,
    high: 3000,
    usual: 148,
    asked: ofAPreset,
  }),
  height: lengthField({
    key: 'high',
    label: 'Its height',
    what: 'The height',
    low: 5,
    high: 3000,
    usual: 210,
    asked: ofAPreset,
  }),
  thickness: lengthField({
    key: 'thick',
    label: 'Its thickness',
    what: 'The thickness',
    low: 0.5,
    high: 500,
    usual: 12,
    asked: (plan: Asking) => ofAPreset(plan) && plan.thing !== 'lining' && plan.thing !== 'accordion',
  }),
  turnIn: lengthField({
    key: 'turn',
    label: 'Turn-in',
    what: 'The turn-in',
    low: 0,
    high: 100,
    usual: 18,
    asked: ofAPreset,
  }),
  pieces: {
    kind: 'rows',
    key: 'pieces',
    what: 'The pieces',
    parse: parseRows,
    show: showRows,
    read: readPieces,
    write: encodePieces,
    usual: [
      { widthMm: 210, heightMm: 148, count: 1, turnInMm: 15 },
      { widthMm: 205, heightMm: 145, count: 1, turnInMm: 0 },
    ],
    asked: (plan: Asking) => !ofAPreset(plan),
  },
  faces: { kind: 'one-of', key: 'faces', label: 'Glue on', of: ['1', '2'], what: 'Faces glued', usual: '1' },
  passes: {
    kind: 'number',
    key: 'coats',
    label: 'Coats',
    low: 1,
    high: 10,
    unit: '',
    what: 'The number of coats',
    whole: true,
    usual: 1,
  },
  adhesive: {
    kind: 'text',
    key: 'glue',
    label: 'The adhesive',
    pattern: RECORD_ID,
    what: 'The adhesive',
    record: WET_ADHESIVE,
    usual: 'pva-mc-1-1',
  },
  coatFrom: {
    kind: 'one-of',
    key: 'coat',
    label: 'Its coat',
    of: ['tool', 'weighed'],
    what: 'How the coat is known',
    usual: 'tool',
  },
  tool: { ...TOOL_FIELD, asked: byTool },
  before: {
    kind: 'number',
    key: 'before',
    label: 'Board before',
    low: 0.01,
    high: 50000,
    unit: 'g',
    what: 'The board before',
    usual: 120,
    asked: byWeighing,
  },
  after: {
    kind: 'number',
    key: 'after',
    label: 'Board after',
    low: 0.01,
    high: 50000,
    unit: 'g',
    what: 'The board after',
    usual: 123.2,
    asked: byWeighing,
  },
  trialArea: {
    kind: 'number',
    key: 'trial',
    label: 'Area glued',
    low: 1,
    high: 100000,
    unit: 'cm²',
    what: 'The area of the trial',
    usual: 500,
    asked: byWeighing,
  },
  loss: {
    kind: 'number',
    key: 'loss',
    label: 'Left in the pot',
    low: 0,
    high: 60,
    unit: '%',
    what: 'What stays in pot and brush',
    usual: LEFT_IN_POT_PERCENT,
  },
  paper: {
    kind: 'text',
    key: 'paper',
    label: 'The paper is most like',
    pattern: PAPER_TEXT,
    what: 'The paper',
    record: A_PAPER,
    usual: 'chiyogami',
  },
  makers: {
    kind: 'number',
    key: 'makers',
    label: 'Makers',
    low: 1,
    high: 500,
    unit: '',
    what: 'The number of makers',
    whole: true,
    usual: 1,
  },
  spare: {
    kind: 'number',
    key: 'spare',
    label: 'Spare',
    low: 0,
    high: 200,
    unit: '%',
    what: 'What is spare',
    usual: 0,
  },
  bottle: {
    kind: 'number',
    optional: true,
    key: 'bottle',
    label: 'One bottle holds',
    low: 1,
    high: 50000,
    unit: 'ml',
    what: 'The bottle',
  },
  price: {
    kind: 'number',
    optional: true,
    key: 'price',
    label: 'and costs',
    low: 0,
    high: 100000,
    unit: '',
    what: 'The price of one',
  },
  bench: BENCH_FIELD,
} as const satisfies FieldTable;

export type CoverPlan = PlanOf<typeof COVER_FIELDS>;
export type CoverField = keyof typeof COVER_FIELDS;

export const DEFAULT_COVER: CoverPlan = usualOf(COVER_FIELDS);

export interface NamedRow {
  readonly name?: string;
  readonly piece: Piece;
}

/** The pieces this plan covers. */
export function rowsOf({ thing, width, height, thickness, turnIn, pieces }: CoverPlan): readonly NamedRow[] {
  if (thing === 'own') return pieces.map((piece) => ({ piece }));
  const body = { widthMm: width, heightMm: height, thicknessMm: thickness, turnInMm: turnIn };
  return PRESETS[thing].pieces(body).map((piece) => ({ name: piece.name, piece }));
}
