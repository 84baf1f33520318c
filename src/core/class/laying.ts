/**
 * What the chooser makes of the gluing of a class: how long each piece can be moved, what to look out for, what each
 * student is told. It is most of the reckoning of a class, and what is bought, cut and mixed does without it.
 */
import { nearestWithin } from '../base/limits';
import type { Choice } from '../choose/choose';
import type { Ranked } from '../choose/finding';
import { DEFAULT_JOB, JOB_FIELDS, type Job } from '../choose/job';
import { judge } from '../choose/judge';
import { secondsNeeded } from '../choose/sampling';
import { seenIn } from '../choose/seen';
import { encodeJob } from '../choose/write-link';
import { cutSizeOf, type MakePiece } from '../make/piece';
import { readPaper } from '../paper/own-paper';
import type { Catalogue, WetAdhesive } from '../records/records';
import { gravestFirst, type Caution } from '../safety/hazards';
import { handoutOf, type Handout } from './handout';
import type { ClassPlan } from './plan';
import type { ClassSheet } from './sheet';
import { classWarnings, slipWarnings, slowerOnes, type SlipOf } from './warnings';

export interface ClassLaying {
  /** of the whole class: time first, then the adhesive and the room, then what is made, cut and covered */
  readonly warnings: readonly string[];
  /** of all that is cut, mixed, laid and pressed, the gravest first */
  readonly cautions: readonly Caution[];
  readonly handout: Handout;
  /** tail of the link to the chooser */
  readonly chooserTail: string;
}

/**
 * What the gluing of this class asks for. `choice`: the chooser's word on the adhesive of the class, for `chooserJob`;
 * `choices`: every adhesive for it.
 */
export function classLaying(
  plan: ClassPlan,
  sheet: ClassSheet,
  choice: Choice,
  choices: readonly Ranked[],
  catalogue: Catalogue,
): ClassLaying {
  const { pieces } = sheet.project;
  const adhesive = catalogue.adhesives.get(plan.adhesive) as WetAdhesive;
  const slips = slipsFor(plan, pieces, adhesive, catalogue);
  const longest = Math.max(0, ...slips.map(({ needed }) => needed));
  const slower = slowerOnes(choices, longest, catalogue).filter((short) => short !== adhesive.short);
  return {
    warnings: [...slipWarnings(slips, adhesive, slower), ...classWarnings(plan, choice), ...sheet.warnings],
    cautions: gravestFirst([...sheet.cautions, ...choice.cautions]),
    handout: handoutOf(plan, choice, sheet.project, catalogue),
    chooserTail: encodeJob(chooserJob(plan, pieces), seenIn(choice)),
  };
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
