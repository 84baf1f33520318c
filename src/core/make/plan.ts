/** The projects, which of their fields a plan is asked, and its measures. */
import type { MakeField, ProjectId, MakePlan } from './fields';
import { measuresFor, usualMeasures, type ForMeasures, type Measured, type MeasureId } from './measures';

interface Project {
  readonly title: string;
  /** what the sizes are those of: "of the text block" */
  readonly of: string;
  /** fields besides the sizes */
  readonly asks: readonly MakeField[];
  readonly measures: readonly MeasureId[];
}

const EDGES = ['turnIn', 'corner'] as const;
const SLACK = ['slackWidth', 'slackHeight', 'slackThickness'] as const;

/** The five things that can be made: what each asks and which measures bear on it. */
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

/** Fields this plan is asked; a slip anywhere else is out of sight. */
export function askedOfMake(plan: Pick<MakePlan, 'project' | 'cover' | 'thicknessFrom' | 'ties'>): MakeField[] {
  const { asks, measures } = PROJECTS[plan.project];
  const known = plan.thicknessFrom === 'measured' ? (['thickness'] as const) : (['leaves', 'caliper'] as const);
  const thick = plan.project === 'accordion' ? [] : (['thicknessFrom', ...known] as const);
  return ['project', 'unit', 'width', 'height', ...thick, 'board', 'stock', ...asks, ...measures.filter(bearsOn(plan))];
}

/** Quarter bindings have spine cloth, ties a length: a measure that does not bear is not asked. */
const bearsOn =
  ({ cover, ties, project }: Pick<MakePlan, 'project' | 'cover' | 'ties'>) =>
  (id: MeasureId): boolean =>
    id === 'onBoard' || id === 'lap' ? cover === 'quarter' : id !== 'tie' || (project === 'portfolio' && ties !== '0');

/** mm, measured or reckoned from leaves. */
export const thicknessOf = ({ thicknessFrom, thickness, leaves, caliper }: MakePlan): number =>
  thicknessFrom === 'measured' ? thickness : (leaves * caliper) / 1000;

const givenBy = (plan: MakePlan): ForMeasures => ({
  project: plan.project,
  width: plan.width,
  board: plan.board,
  thick: thicknessOf(plan),
  // What was set for another project, or is not asked now, does not bear on this one.
  own: Object.fromEntries(PROJECTS[plan.project].measures.filter(bearsOn(plan)).map((id) => [id, plan[id]])),
});

/** Every measure of this plan, mm: the reader's own, else the usual one. */
export const measuresOf = (plan: MakePlan): Measured => measuresFor(givenBy(plan));

/** What stands as placeholder in each measure's field, mm. */
export const usualFor = (plan: MakePlan): Measured => usualMeasures(givenBy(plan));
