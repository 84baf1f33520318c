/** A plan's pieces, or what in it cannot be. */
import { inUnit } from '../base/length-text';
import { accordionPieces } from './accordion';
import { liddedBoxPieces, slipCasePieces } from './box';
import { caseOf, notebookPieces, portfolioPieces } from './case';
import type { MakeField, MakePlan } from './fields';
import type { ProjectId } from './projects';
import type { Measured } from './measures';
import type { MakePiece } from './piece';
import { measuresOf, thicknessOf } from './plan';
import { fail, ok, type InputError, type Result } from '../base/result';

const MAKERS: Readonly<Record<ProjectId, (plan: MakePlan, m: Measured) => MakePiece[]>> = {
  notebook: notebookPieces,
  accordion: accordionPieces,
  'slip-case': slipCasePieces,
  'lidded-box': liddedBoxPieces,
  portfolio: portfolioPieces,
};

/** Every piece to cut, sizes in mm; an error names the field that has to change. */
export function makePieces(plan: MakePlan): Result<readonly MakePiece[]> {
  const m = measuresOf(plan);
  const problems = problemsOf(plan, m);
  if (problems.length > 0) return fail(problems);
  const pieces = MAKERS[plan.project](plan, m);
  const small = pieces.find((one) => Math.min(one.widthMm, one.heightMm) < LEAST);
  if (small === undefined) return ok(pieces);
  return fail([
    {
      field: small.name === 'side' ? 'onBoard' : 'margin',
      code: 'contradiction',
      message: `With these measures the piece “${small.name}” would be narrower than ${say(plan, LEAST)}.`,
    },
  ]);
}

/** mm: narrower than this nothing can be cut or glued. Our own line. */
const LEAST = 1;

const say = ({ unit }: MakePlan, mm: number): string => `${inUnit(mm, unit)}\u00a0${unit}`;

function problemsOf(plan: MakePlan, m: Measured): InputError[] {
  const problem = (field: MakeField, message: string): InputError[] => [{ field, code: 'contradiction', message }];
  const thick = thicknessOf(plan);
  const inCase = plan.project === 'notebook' || plan.project === 'portfolio';
  const board = caseOf(plan, m).board;
  return [
    ...(plan.project !== 'accordion' && (thick < 1 || thick > 200)
      ? problem(
          'leaves',
          `These leaves would be ${say(plan, thick)} thick. The block must be from ${say(plan, 1)} to ${say(plan, 200)}: check the number and the caliper, which is in µm.`,
        )
      : []),
    ...(inCase && m.joint < plan.board
      ? problem(
          'joint',
          `The joint must be at least as wide as the board is thick, ${say(plan, plan.board)}, or the board cannot turn in it.`,
        )
      : []),
    ...(inCase && board.width < 10
      ? problem('joint', `With this joint the boards would be narrower than ${say(plan, 10)}. Give a narrower joint.`)
      : []),
    ...(inCase && plan.cover === 'quarter' && m.onBoard >= board.width
      ? problem('onBoard', `The spine cloth must leave some of the board, which is ${say(plan, board.width)} wide.`)
      : []),
    ...(inCase && plan.cover === 'quarter' && m.lap > m.onBoard
      ? problem('lap', `The sides can lap the cloth by at most what lies on the board, ${say(plan, m.onBoard)}.`)
      : []),
    ...(plan.project === 'accordion' && plan.sheet !== undefined && plan.sheet < plan.width + m.tab
      ? problem('sheet', `A strip must hold one panel and its tab: at least ${say(plan, plan.width + m.tab)}.`)
      : []),
    ...(plan.project === 'lidded-box' && m.lidDepth > thick + m.slackThickness + plan.board
      ? problem(
          'lidDepth',
          `The lid can be as deep as the tray is high, ${say(plan, thick + m.slackThickness + plan.board)}, and no deeper.`,
        )
      : []),
  ];
}
