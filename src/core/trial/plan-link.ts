/** A swatch trial that a link asks for: which sheet, on what, with which adhesives, held for how long. */
import { RECORD_ID } from '../base/record-id';
import { parsePairs } from '../link/pairs';
import { readPaper } from '../paper/own-paper';
import { asPaperText, DEFAULT_PLAN, type PlanText } from './plan-text';

/** What the shelf calls a record; '' for one that it does not hold. */
export interface ShelfNames {
  readonly paper: (id: string) => string;
  readonly adhesive: (id: string) => string;
  readonly substrate: (id: string) => string;
  readonly tool: (id: string) => string;
}

export const MOST_GLUES = 6;

/** The plan of a link's tail as it would have been typed; undefined where the link asks for none. Never throws. */
export function planTextOf(tail: string, names: ShelfNames): PlanText | undefined {
  const { query } = parsePairs(tail);
  const paper = readPaper(query.get('paper') ?? '');
  const glues = (query.get('glue') ?? '')
    .split('.')
    .filter((id) => RECORD_ID.test(id) && names.adhesive(id) !== '')
    .slice(0, MOST_GLUES);
  if (!paper || names.paper(paper.family) === '' || glues.length === 0) return undefined;
  const on = query.get('on') ?? '';
  const tool = query.get('tool') ?? '';
  const sheet = asPaperText(paper);
  return {
    ...DEFAULT_PLAN,
    substrate: names.substrate(on) === '' ? DEFAULT_PLAN.substrate : on,
    tool: names.tool(tool) === '' ? DEFAULT_PLAN.tool : tool,
    papers: [{ ...sheet, name: sheet.name || names.paper(paper.family) }],
    glues: glues.map((record) => ({ name: names.adhesive(record), record, named: '' })),
    // what is no number is shown with its message, as if it had been typed
    holds: query.get('hold') ?? DEFAULT_PLAN.holds,
    celsius: query.get('room') ?? '',
    humidity: query.get('rh') ?? '',
  };
}
