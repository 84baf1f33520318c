/** A plan as it is typed, and the draft of one that was stored. */
import type { OwnPaper } from '../paper/own-paper';
import { USUAL_METHOD } from './method';

export interface PaperText {
  readonly name: string;
  readonly family: string;
  readonly grammage: string;
  readonly dropSeconds: string;
}

export interface GlueText {
  readonly name: string;
  readonly record: string;
  /** 'yes' once a name was typed; until then it follows the pick from the shelf */
  readonly named: string;
}

/** Everything as typed; numbers are text, so that nothing is ever lost. */
export interface PlanText {
  readonly name: string;
  readonly by: string;
  readonly substrate: string;
  /** id of a tool of the shelf, or 'other' */
  readonly tool: string;
  readonly face: string;
  /** wet, g/m², as typed */
  readonly coat: string;
  readonly papers: readonly PaperText[];
  readonly glues: readonly GlueText[];
  /** seconds, as a list: "20, 60" */
  readonly holds: string;
  readonly replicates: string;
  /** ids of standard questions */
  readonly questions: readonly string[];
  readonly ownQuestions: readonly { readonly text: string; readonly criterion: string }[];
  readonly widthMm: string;
  readonly heightMm: string;
  readonly celsius: string;
  readonly humidity: string;
  readonly batch: string;
  readonly seed: string;
}

export const NO_PAPER: PaperText = { name: '', family: '', grammage: '', dropSeconds: '' };
/** What is known of a paper of one's own, as it would have been typed. */
export const asPaperText = ({ name, family, grammage, dropSeconds }: OwnPaper): PaperText => ({
  name: name ?? '',
  family,
  grammage: grammage === undefined ? '' : String(grammage),
  dropSeconds: dropSeconds === undefined ? '' : String(dropSeconds),
});
export const NO_GLUE: GlueText = { name: '', record: '', named: '' };

export const DEFAULT_PLAN: PlanText = {
  name: '',
  by: '',
  substrate: 'binders-board',
  tool: USUAL_METHOD.tool,
  face: USUAL_METHOD.face,
  coat: '',
  papers: [{ ...NO_PAPER, name: 'My paper', grammage: '60' }],
  glues: [
    { name: 'PVA, as supplied', record: 'pva', named: '' },
    { name: 'Wheat starch paste, thin', record: 'wheat-starch-paste-thin', named: '' },
  ],
  holds: '20',
  replicates: '4',
  questions: ['spread', 'lift'],
  ownQuestions: [],
  widthMm: '50',
  heightMm: '70',
  celsius: '',
  humidity: '',
  batch: '',
  seed: '',
};

/** Any stored value to a plan: a draft that cannot be read starts afresh, one field at a time. */
export function draftOf(value: unknown): PlanText {
  if (typeof value !== 'object' || value === null) return DEFAULT_PLAN;
  const given = value as Record<string, unknown>;
  const kept = Object.entries(DEFAULT_PLAN).map(([key, usual]) => {
    const stored = Object.hasOwn(given, key) ? given[key] : undefined;
    if (!Array.isArray(usual)) return [key, typeof stored === 'string' ? stored : usual];
    const shape: unknown =
      key === 'papers'
        ? NO_PAPER
        : key === 'glues'
          ? NO_GLUE
          : key === 'ownQuestions'
            ? { text: '', criterion: '' }
            : '';
    return [key, Array.isArray(stored) ? stored.slice(0, 24).map((one) => likeShape(one, shape)) : usual];
  });
  const draft = Object.fromEntries(kept) as PlanText;
  return { ...draft, glues: draft.glues.map((glue, i) => withNamed(glue, own(given, i))) };
}

const own = ({ glues }: Record<string, unknown>, i: number): unknown => (Array.isArray(glues) ? glues[i] : undefined);

/** Names that the planner gave by itself before it kept in mind whether one was typed. */
const GIVEN = /^(?:PVA|Wheat starch paste|Adhesive \d+)?$/;

/** A row of an older draft: a name that the planner did not give counts as typed. */
function withNamed(glue: GlueText, stored: unknown): GlueText {
  const older = typeof stored === 'object' && stored !== null && !Object.hasOwn(stored, 'named');
  return older && !GIVEN.test(glue.name) ? { ...glue, named: 'yes' } : glue;
}

function likeShape(value: unknown, shape: unknown): unknown {
  if (typeof shape === 'string') return typeof value === 'string' ? value : shape;
  const given = typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
  return Object.fromEntries(
    Object.keys(shape as object).map((key) => [key, typeof given[key] === 'string' ? given[key] : '']),
  );
}
