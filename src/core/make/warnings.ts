/** What to look out for in a project whose pieces can all be cut. */
import { insideOf } from './box';
import { caseOf } from './case';
import { withMark } from './cut';
import type { MakePlan } from './fields';
import type { Measured } from './measures';
import { thicknessOf } from './plan';

/** mm: a spine strip narrower than this cannot be held and laid straight. Common practice, no source. */
const LEAST_SPINE = 4;
/** mm that a turn-in must lie on the board to hold. Common practice, no source. */
const LEAST_HOLD = 8;

/** What is likely to go wrong with these measures, each a sentence. */
export function makeWarnings(plan: MakePlan, m: Measured): string[] {
  const say = (mm: number) => withMark(mm, plan.unit);
  const when = (holds: boolean, words: string): string[] => (holds ? [words] : []);
  const thick = thicknessOf(plan);
  const inCase = plan.project === 'notebook' || plan.project === 'portfolio';
  const holds = plan.project === 'slip-case' || plan.project === 'lidded-box';
  const { board, spine } = caseOf(plan, m);
  const turned = plan.project === 'accordion' || inCase ? Math.min(plan.width, board.height) : plan.width;
  return [
    ...when(
      plan.project !== 'accordion' && thick > plan.width,
      'The contents are thicker than they are wide: check that width and thickness are not exchanged.',
    ),
    ...when(
      inCase && m.square > m.joint,
      `The squares, ${say(m.square)}, are wider than the joints, ${say(m.joint)}: the boards then stand further out at the fore-edge than they stop short of the spine.`,
    ),
    ...when(
      inCase && spine < LEAST_SPINE,
      `A spine strip of ${say(spine)} is hard to hold and lay straight: cut it from card, or leave it out and keep its room.`,
    ),
    ...when(
      inCase && spine < thick,
      `The spine strip, ${say(spine)}, is narrower than what lies behind it, ${say(thick)}: the case will gape at the fore-edge.`,
    ),
    ...when(
      m.turnIn > turned / 2,
      `The turn-ins, ${say(m.turnIn)}, reach past the middle of the board and would lie on each other.`,
    ),
    ...when(
      m.turnIn < plan.board + LEAST_HOLD,
      `A turn-in of ${say(m.turnIn)} goes round a board of ${say(plan.board)} with little left to hold on it.`,
    ),
    ...when(
      m.corner < plan.board,
      `With ${say(m.corner)} left at the corners, less than the board is thick, the point of the board can show.`,
    ),
    ...when(
      m.corner > 2.5 * plan.board,
      `With ${say(m.corner)} left at the corners they will be bulky: one to two thicknesses of the board are usual.`,
    ),
    ...when(
      plan.project === 'accordion' && plan.panels % 2 === 1,
      'With an odd number of panels the two pasted-down ones lie on opposite faces of the strip, and the free ends on opposite sides of the stack.',
    ),
    ...when(
      holds && insideOf(plan, m).thickness - thick < 1,
      'There is less than a millimetre to spare in thickness: paper swells in damp air, and linings and glue take room too.',
    ),
    ...when(
      plan.project === 'lidded-box' && m.lidRoom < 0.5,
      'A lid with so little air under it draws a vacuum and will not come off easily.',
    ),
  ];
}
