/** The adhesive of a class: how much of it, its batches, and how long each piece can be moved. */
import { coverAnswer, type CoverAnswer } from '../cover/answer';
import { DEFAULT_COVER, type CoverPlan } from '../cover/plan';
import { mixPlanFor } from '../handover/cover-to-mix';
import { nearestWithin } from '../base/limits';
import { DEFAULT_JOB, JOB_FIELDS, type Job } from '../choose/job';
import { judge } from '../choose/judge';
import type { MixAnswer } from '../mix/answer';
import { mixAnswerer } from '../mix/any';
import { mixStretched } from '../mix/stretch';
import { batchFor } from '../mix/words';
import { roundUpForJug } from '../base/rounding';
import type { MixPlan } from '../mix/plan';
import { readPaper } from '../paper/own-paper';
import { cutSizeOf, type MakePiece } from '../make/piece';
import { coverPieces } from '../handover/make-to-cover';
import type { Catalogue, WetAdhesive } from '../records/records';
import type { Result } from '../base/result';
import { secondsNeeded } from '../choose/sampling';
import type { Percentiles } from '../base/quantity';
import { kitsOf, type ClassPlan } from './plan';

export interface Batch {
  readonly plan: MixPlan;
  readonly mix: MixAnswer;
}

/** How long one piece can be moved, and how long it takes to place. */
export interface SlipOf {
  readonly name: string;
  readonly slip: Percentiles;
  readonly needed: number;
}

/** What the class covers, as the calculator of how much glue asks for it. */
export const classCover = (plan: ClassPlan, pieces: readonly MakePiece[]): CoverPlan => ({
  ...DEFAULT_COVER,
  ...{ thing: 'own', unit: plan.unit, pieces: coverPieces(pieces) },
  ...{ adhesive: plan.adhesive, tool: plan.tool, paper: plan.paper, makers: kitsOf(plan), loss: plan.loss },
  bench: plan.bench,
});

/** How much glue the class takes. */
export const classCoverage = (cover: CoverPlan, catalogue: Catalogue): Result<CoverAnswer> =>
  coverAnswer(cover, catalogue);

/** The mix itself, and before it the jelly or paste that goes into it; none where the adhesive is used as it comes. */
export function batchesFor(cover: CoverPlan, millilitres: number, catalogue: Catalogue): readonly Batch[] {
  const plan = mixPlanFor(cover, millilitres, catalogue);
  const made = plan && batch(plan, catalogue);
  if (!plan || !made) return [];
  if (plan.kind !== 'stretch') return [made];
  const share = plan.extenderParts / (plan.baseParts + plan.extenderParts);
  const added = batchFor(plan.need, plan.loss) * share;
  const before = mixPlanFor({ ...cover, adhesive: plan.extender }, roundUpForJug(batchFor(added, 5)), catalogue);
  const first = before && batch(before, catalogue);
  return first ? [first, made] : [made];
}

const mixAnswer = mixAnswerer((plan, catalogue) => mixStretched(plan, catalogue));

function batch(plan: MixPlan, catalogue: Catalogue): Batch | undefined {
  const mix = mixAnswer(plan, catalogue);
  return mix.ok ? { plan, mix: mix.value } : undefined;
}

/** The largest piece of the covering: what the chooser is asked about. */
function mainPiece(pieces: readonly MakePiece[]): MakePiece {
  const area = (piece: MakePiece) => cutSizeOf(piece).widthMm * cutSizeOf(piece).heightMm;
  const glued = pieces.filter(({ stock, gluedFaces }) => gluedFaces > 0 && stock !== 'board');
  const covering = glued.filter(({ turnIn }) => turnIn.left + turnIn.right + turnIn.top + turnIn.bottom > 0);
  return (covering.length > 0 ? covering : glued).reduce((a, b) => (area(b) > area(a) ? b : a));
}

const within = (mm: number): number => nearestWithin(Math.round(mm), JOB_FIELDS.widthMm);

/** The job of laying this piece in this room. */
function jobFor(plan: ClassPlan, piece: MakePiece): Job {
  const { widthMm, heightMm } = cutSizeOf(piece);
  const { name: _name, grain: _grain, ...paper } = readPaper(plan.paper)!;
  return {
    ...DEFAULT_JOB,
    paper,
    substrate: plan.on,
    widthMm: within(widthMm),
    heightMm: within(heightMm),
    celsius: plan.celsius,
    humidity: plan.humidity,
    tool: plan.tool,
    ...(plan.bench !== undefined && { bench: plan.bench }),
  };
}

/** What the chooser is asked: the main piece, with the adhesive of the class as the one at hand. */
export const chooserJob = (plan: ClassPlan, pieces: readonly MakePiece[]): Job => ({
  ...jobFor(plan, mainPiece(pieces)),
  atHand: [plan.adhesive],
});

/** How long each covering piece can be moved, largest first. */
export function slipsFor(
  plan: ClassPlan,
  pieces: readonly MakePiece[],
  adhesive: WetAdhesive,
  catalogue: Catalogue,
): readonly SlipOf[] {
  const laid = pieces.filter(({ stock, gluedFaces, gluedPart }) => stock !== 'board' && gluedFaces > 0 && !gluedPart);
  return laid
    .map((piece) => {
      const job = jobFor(plan, piece);
      return { name: piece.name, slip: judge(adhesive, job, catalogue).slipSeconds, needed: secondsNeeded(job) };
    })
    .sort((a, b) => b.needed - a.needed);
}
