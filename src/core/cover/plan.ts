/** What the coverage calculator asks, and what stands there at first. */
import { PAPER_TEXT, RECORD_ID } from '../base/record-id';
import type { Piece } from '../base/piece';
import { lengthSpec } from '../base/length-text';
import { decodePieces, parseRows, PIECES_PATTERN, showRows } from './pieces-text';
import { PRESETS, type PresetId } from './pieces';
import type { PlanOf } from '../link/fields';

export const THINGS = [
  'notebook',
  'slip-case',
  'lidded-box',
  'accordion',
  'lining',
  'own',
] as const satisfies readonly (PresetId | 'own')[];

/** Fixed order: links are written in it. Lengths are mm here, whatever unit the reader types in. */
export const COVER_SPECS = {
  thing: { kind: 'one-of', key: 'thing', of: THINGS, what: 'What you cover' },
  unit: { kind: 'one-of', key: 'in', of: ['mm', 'cm', 'in'], what: 'The unit' },
  width: lengthSpec({}, 'wide', 'The width', 5, 3000),
  height: lengthSpec({}, 'high', 'The height', 5, 3000),
  thickness: lengthSpec({}, 'thick', 'The thickness', 0.5, 500),
  turnIn: lengthSpec({}, 'turn', 'The turn-in', 0, 100),
  pieces: {
    kind: 'list',
    key: 'pieces',
    pattern: PIECES_PATTERN,
    what: 'The pieces',
    parse: parseRows,
    show: showRows,
  },
  faces: { kind: 'one-of', key: 'faces', of: ['1', '2'], what: 'Faces glued' },
  passes: { kind: 'number', key: 'coats', low: 1, high: 10, unit: '', what: 'The number of coats', whole: true },
  adhesive: { kind: 'text', key: 'glue', pattern: RECORD_ID, what: 'The adhesive' },
  coatFrom: { kind: 'one-of', key: 'coat', of: ['tool', 'weighed'], what: 'How the coat is known' },
  tool: { kind: 'text', key: 'tool', pattern: RECORD_ID, what: 'The tool' },
  before: { kind: 'number', key: 'before', low: 0.01, high: 50000, unit: 'g', what: 'The board before' },
  after: { kind: 'number', key: 'after', low: 0.01, high: 50000, unit: 'g', what: 'The board after' },
  trialArea: { kind: 'number', key: 'trial', low: 1, high: 100000, unit: 'cm²', what: 'The area of the trial' },
  loss: { kind: 'number', key: 'loss', low: 0, high: 60, unit: '%', what: 'What stays in pot and brush' },
  paper: { kind: 'text', key: 'paper', pattern: PAPER_TEXT, what: 'The paper' },
  makers: { kind: 'number', key: 'makers', low: 1, high: 500, unit: '', what: 'The number of makers', whole: true },
  spare: { kind: 'number', key: 'spare', low: 0, high: 200, unit: '%', what: 'What is spare' },
  bottle: { kind: 'number', optional: true, key: 'bottle', low: 1, high: 50000, unit: 'ml', what: 'The bottle' },
  price: { kind: 'number', optional: true, key: 'price', low: 0, high: 100000, unit: '', what: 'The price of one' },
} as const;

export type CoverPlan = PlanOf<typeof COVER_SPECS>;
export type CoverField = keyof typeof COVER_SPECS;

export const DEFAULT_COVER: CoverPlan = {
  thing: 'notebook',
  unit: 'mm',
  width: 148,
  height: 210,
  thickness: 12,
  turnIn: 18,
  pieces: '210x148x1t15_205x145x1',
  faces: '1',
  passes: 1,
  adhesive: 'pva-mc-1-1',
  coatFrom: 'tool',
  tool: 'brush-full',
  before: 120,
  after: 123.2,
  trialArea: 500,
  loss: 15,
  paper: 'chiyogami',
  makers: 1,
  spare: 0,
  bottle: undefined,
  price: undefined,
};

/** Fields this plan is asked; a slip anywhere else is out of sight. */
export function askedOfCover({ thing, coatFrom }: Pick<CoverPlan, 'thing' | 'coatFrom'>): readonly CoverField[] {
  const deep = thing === 'lining' || thing === 'accordion' ? [] : (['thickness'] as const);
  const what = thing === 'own' ? (['pieces'] as const) : (['width', 'height', ...deep, 'turnIn'] as const);
  const coat = coatFrom === 'tool' ? (['tool'] as const) : (['before', 'after', 'trialArea'] as const);
  return [
    'thing',
    'unit',
    ...what,
    'faces',
    'passes',
    'adhesive',
    'coatFrom',
    ...coat,
    'loss',
    'paper',
    'makers',
    'spare',
    'bottle',
    'price',
  ];
}

export interface NamedRow {
  readonly name?: string;
  readonly piece: Piece;
}

/** The pieces this plan covers. A `pieces` text that cannot be is an empty list. */
export function rowsOf({ thing, width, height, thickness, turnIn, pieces }: CoverPlan): readonly NamedRow[] {
  if (thing === 'own') return (decodePieces(pieces) ?? []).map((piece) => ({ piece }));
  const body = { widthMm: width, heightMm: height, thicknessMm: thickness, turnInMm: turnIn };
  return PRESETS[thing].pieces(body).map((piece) => ({ name: piece.name, piece }));
}
