/** The five things that can be made: what each asks and which measures bear on it. */
import type { MeasureId } from './measures';

export const PROJECT_IDS = ['notebook', 'accordion', 'slip-case', 'lidded-box', 'portfolio'] as const;
export type ProjectId = (typeof PROJECT_IDS)[number];
/** Fields that only some projects ask for, besides the sizes and the measures. */
export type AskedOfSome = 'cover' | 'back' | 'panels' | 'sheet' | 'lined' | 'ties';

interface Project {
  readonly title: string;
  /** what the sizes are those of: "of the text block" */
  readonly of: string;
  /** fields besides the sizes */
  readonly asks: readonly AskedOfSome[];
  readonly measures: readonly MeasureId[];
}

const EDGES = ['turnIn', 'corner'] as const;
const SLACK = ['slackWidth', 'slackHeight', 'slackThickness'] as const;

export const PROJECTS: Readonly<Record<ProjectId, Project>> = {
  notebook: {
    title: 'Case-bound notebook',
    of: 'the text block',
    asks: ['cover', 'back'],
    measures: ['square', 'joint', 'spine', ...EDGES, 'onBoard', 'lap'],
  },
  accordion: {
    title: 'Accordion with hard covers',
    of: 'one panel',
    asks: ['panels', 'sheet'],
    measures: ['square', ...EDGES, 'tab'],
  },
  'slip-case': {
    title: 'Slip case',
    of: 'the book that goes in',
    asks: ['lined'],
    measures: [...SLACK, 'turnIn', 'corner', 'margin'],
  },
  'lidded-box': {
    title: 'Lidded box',
    of: 'what goes in',
    asks: ['lined'],
    measures: [...SLACK, 'lidDepth', 'lidRoom', 'covering', 'turnIn', 'corner', 'margin'],
  },
  portfolio: {
    title: 'Portfolio with flaps',
    of: 'what goes in',
    asks: ['cover', 'ties'],
    measures: [...SLACK, 'square', 'joint', 'spine', ...EDGES, 'onBoard', 'lap', 'margin', 'flap', 'tie'],
  },
};

/** Whether a measure bears on a plan: quarter bindings have spine cloth, ties a length. */
export function bearsOn(
  id: MeasureId,
  { project, cover, ties }: { readonly project: ProjectId; readonly cover: string; readonly ties: string },
): boolean {
  if (!PROJECTS[project].measures.includes(id)) return false;
  return id === 'onBoard' || id === 'lap' ? cover === 'quarter' : id !== 'tie' || ties !== '0';
}
