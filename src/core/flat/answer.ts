/** The calculator's answer: how the covered board lies at each stage, what that rests on, and what would help. */
import type { Direction } from '../joint/curl';
import type { Fact } from '../base/fact';
import { sizeText } from '../base/length-text';
import { paperName } from '../paper/own-paper';
import { recordsOn } from '../records/kinds';
import type { Catalogue } from '../records/records';
import { fail, ok, type Result } from '../base/result';
import { unknownRecords } from '../link/fields';
import { makingOf } from './making';
import { FLAT_FIELDS, type FlatPlan } from './plan';
import { flatAnswerFacts } from './facts';
import { isPaperBoard } from './plies';
import { layingCautions } from '../adhesive/hazards';
import { gravestFirst, type Caution } from '../safety/hazards';
import { remediesFor, type Remedy } from './remedies';
import { bowsOf, rollsUp, worseOf, type Bow, type Bows, type FlatMaking } from './stages';
import { ACROSS, bowBrief, bowWords, liesHow, LIES_WORDS, type Lies } from './words';

export interface FlatAnswer {
  readonly lies: Lies;
  readonly verdict: string;
  /** how far and which way, dry and later */
  readonly why: string;
  /** both together */
  readonly sentence: string;
  /** what was asked, in a few words: it stands for the form where that is folded */
  readonly asked: string;
  readonly brief: readonly [what: string, amount: string];
  readonly bows: Bows;
  /** the direction that bows more, later: what is drawn */
  readonly direction: Direction;
  /** mm, for the drawing */
  readonly boardMm: number;
  readonly lined: boolean;
  readonly facts: readonly Fact[];
  readonly warnings: readonly string[];
  /** the gravest first */
  readonly cautions: readonly Caution[];
  readonly remedies: readonly Remedy[];
  readonly figures: readonly number[];
}

/** Which way the work bows and how far, when, and what would help. Faults name the field. */
export function flatAnswer(plan: FlatPlan, catalogue: Catalogue): Result<FlatAnswer> {
  const problems = unknownRecords(plan, FLAT_FIELDS, catalogue);
  if (problems.length > 0) return fail(problems);
  const making = makingOf(plan, recordsOn(plan.bench, catalogue));
  const bows = bowsOf(making);
  const lies = liesHow(bows.later);
  const direction = worseOf(bows.later);
  const [dry, later] = [bows.dry[direction], bows.later[direction]];
  const verdict = LIES_WORDS[lies];
  const why = `The bow ${ACROSS[direction]}: ${bowWords(dry)} when dry, ${bowWords(later)} in the air where it will live.`;
  return ok({
    lies,
    verdict,
    sentence: `${verdict}. ${why}`,
    why,
    asked: `${paperName(plan.paper, catalogue)}, ${sizeText(plan.width, plan.height, plan.unit)}`,
    brief: [verdict, bowBrief(later)],
    bows,
    direction,
    boardMm: making.work.board.thickness.middle,
    lined: making.work.lining !== undefined,
    facts: flatAnswerFacts(plan, making),
    warnings: warningsFor(plan, making, bows),
    cautions: gravestFirst([
      'valued-original',
      ...layingCautions(catalogue.adhesives.get(plan.adhesive)!, catalogue.substrates.get(plan.board)!, catalogue),
    ]),
    remedies: remediesFor(plan, catalogue),
    figures: [...signed(dry), ...signed(later)],
  });
}

/** A link carries no signs: the height of a bow in hundredths, then 1 for towards the paper, 2 for away. */
const signed = ({ middle }: Bow): [number, number] => [Number(Math.abs(middle).toFixed(2)), middle < 0 ? 2 : 1];

function warningsFor(plan: FlatPlan, { work }: FlatMaking, bows: Bows): string[] {
  const { cover, lining, board } = work;
  const known = (grain: string) => grain === 'height' || grain === 'width';
  const crossed = (a: string, b: string) => known(a) && known(b) && a !== b;
  const grained = cover.paper.grain !== 'none';
  return [
    ...(grained && plan.paperGrain === 'unknown'
      ? [
          'The answer spans both grains of the paper. Bend a piece each way: it bends more easily along the grain, and you get a narrower answer.',
        ]
      : []),
    ...(lining && grained && lining.paper.grain !== 'none' && crossed(cover.grain, lining.grain)
      ? [
          'The grain of the lining crosses the cover’s: two bows about two axes make a saddle of the board, which this sum does not show.',
        ]
      : []),
    ...(grained && isPaperBoard(board) && crossed(cover.grain, plan.boardGrain)
      ? ['The grain of the paper crosses the board’s. With both the same way, the work bends about one axis only.']
      : []),
    ...(Object.values(bows.later).some(rollsUp)
      ? ['It would roll up further than a shallow arc, where this sum ends: use a thicker board or less water.']
      : []),
    ...(plan.press < 1 && work.water.middle > 0 ? ['Without weight the whole of the growth is left to pull.'] : []),
  ];
}
