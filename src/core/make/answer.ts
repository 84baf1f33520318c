/** The project calculator's answer: what to cut, drawn and in a table, in which order, and what to look out for. */
import { asTyped, inUnit, sizeText, type LengthUnit } from '../base/length-text';
import { atMarks, cutText, withMark } from './cut';
import type { MakePlan } from './fields';
import type { ProjectId } from './projects';
import { pictureOf, type Picture } from './picture';
import { cutSizeOf, type Grain, type MakePiece, type Stock } from './piece';
import type { MeasureId } from './measures';
import { makePieces } from './pieces';
import { measuresOf, thicknessOf, usualFor } from './plan';
import { bearsOn, PROJECTS } from './projects';
import { makeSteps } from './steps';
import { makeWarnings } from './warnings';
import { SKETCHES } from './sketches';
import { ok, type Result } from '../base/result';
import { carefully, type Caution } from '../safety/hazards';

interface PieceRow {
  readonly name: string;
  /** cut size, turn-ins included, in the reader's unit */
  readonly size: string;
  readonly count: number;
  /** what it is cut from, and along which side the grain runs */
  readonly from: string;
}

export interface MakeAnswer {
  readonly sentence: string;
  /** what was asked, in a few words: it stands for the form where that is folded */
  readonly asked: string;
  readonly brief: readonly [what: string, size: string];
  readonly pieces: readonly MakePiece[];
  readonly rows: readonly PieceRow[];
  /** "millimetres" */
  readonly unitWord: string;
  readonly pictures: readonly Picture[];
  readonly steps: readonly string[];
  /** the same for whoever finds the pieces cut */
  readonly stepsFromKit: readonly string[];
  readonly warnings: readonly string[];
  /** what its steps call for, the gravest first */
  readonly cautions: readonly Caution[];
  /** the measures that bear on this plan, each with what is usual in the reader's unit */
  readonly measures: readonly { readonly id: MeasureId; readonly usual: string }[];
  readonly figures: readonly number[];
}

const GRAIN_WORDS: Readonly<Record<Grain, string>> = {
  height: 'grain along its height',
  width: 'grain along its width',
  either: 'grain either way',
};
const STOCK_WORDS: Readonly<Record<Stock, string>> = {
  board: 'board',
  paper: 'paper',
  cloth: 'cloth',
  lining: 'lining paper',
};
const UNIT_WORDS: Readonly<Record<LengthUnit, string>> = { mm: 'millimetres', cm: 'centimetres', in: 'inches' };
/** what the first piece is called in the sentence */
const FIRST_PIECES: Readonly<Record<ProjectId, string>> = {
  notebook: 'two boards',
  accordion: 'two boards',
  'slip-case': 'two sides',
  'lidded-box': 'the base of the tray',
  portfolio: 'two boards',
};

/** Everything cut for one thing, with a drawing and the order of making. Faults name the field. */
export function makeAnswer(plan: MakePlan): Result<MakeAnswer> {
  const found = makePieces(plan);
  if (!found.ok) return found;
  const { unit } = plan;
  const pieces = found.value.map((one) => atMarks(one, unit));
  const m = measuresOf(plan);
  const steps = makeSteps(plan, m);
  const what = FIRST_PIECES[plan.project];
  const head = pieces[0]!;
  const covering = pieces.find((one) => one.stock !== 'board')!;
  const count = pieces.reduce((sum, one) => sum + one.count, 0);
  const size = `${cutText(head, unit)}\u00a0${unit}`;
  const cutBig = cutSizeOf(covering);
  return ok({
    sentence: `${given(plan)}: ${what} of ${size}; the ${covering.name} is cut ${cutText(covering, unit)}\u00a0${unit}. ${count} pieces in all, each with its grain below.${fromLeaves(plan)}`,
    asked: `${PROJECTS[plan.project].title}, ${sizeText(plan.width, plan.height, unit)}`,
    brief: [what, size],
    pieces,
    rows: pieces.map((one) => ({
      name: one.name,
      size: cutText(one, unit),
      count: one.count,
      from: `${STOCK_WORDS[one.stock]}, ${GRAIN_WORDS[one.grain]}`,
    })),
    unitWord: UNIT_WORDS[unit],
    pictures: SKETCHES[plan.project](plan, m).map((sketch) => pictureOf(sketch, unit)),
    ...carefully(steps),
    stepsFromKit: steps.filter(({ cutsOut }) => !cutsOut).map(({ text }) => text),
    warnings: makeWarnings(plan, m),
    measures: PROJECTS[plan.project].measures
      .filter((id) => bearsOn(id, plan))
      .map((id) => ({ id, usual: usualText(id, usualFor(plan)[id], unit) })),
    figures: [head.widthMm, head.heightMm, cutBig.widthMm, cutBig.heightMm, count],
  });
}

/** What was given, so that a printed sheet says what it is for: "For the text block of 148 × 210 × 12 mm, in board of 2.5 mm". */
function given(plan: MakePlan): string {
  const { unit, project, width, height, board } = plan;
  const sizes = [width, height, ...(project === 'accordion' ? [] : [thicknessOf(plan)])];
  const say = unit === 'in' ? inUnit : asTyped;
  const said = sizes.map((mm) => say(mm, unit)).join(' × ');
  return `For ${PROJECTS[project].of} of ${said}\u00a0${unit}, in board of ${say(board, unit)}\u00a0${unit}`;
}

/** As a rule shows it, but thin layers as they are. */
const usualText = (id: MeasureId, mm: number, unit: LengthUnit): string =>
  id === 'covering' ? asTyped(mm, unit) : inUnit(mm, unit);

const fromLeaves = (plan: MakePlan): string =>
  plan.thicknessFrom === 'leaves' && plan.project !== 'accordion'
    ? ` The leaves come to ${withMark(thicknessOf(plan), plan.unit)}, pressed; swelling from sewing comes on top.`
    : '';
