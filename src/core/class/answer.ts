/** The workshop sheet: what to buy, cut and mix, when, what to look out for, and what each student is given. */
import { unknownRecords } from '../link/fields';
import { choose, type Choice } from '../choose/choose';
import type { CoverAnswer } from '../cover/answer';
import { cutAnswer, type CutAnswer } from '../cut/answer';
import { cutTailFor, type CutPlan } from '../cut/plan';
import { encodeJob } from '../choose/write-link';
import type { Job } from '../choose/job';
import { makeAnswer, type MakeAnswer } from '../make/answer';
import { PROJECTS } from '../make/projects';
import type { Catalogue } from '../records/records';
import { fail, ok, type Result } from '../base/result';
import { adhesiveCautions } from '../adhesive/hazards';
import { cautionsFor, gravestFirst, type Caution } from '../safety/hazards';
import { seenIn } from '../choose/seen';
import { lowerFirst, formatAmount } from '../base/format';
import { momentText, startOf, type Start } from './clock';
import { besideSheet, classCutPlan } from './cutting';
import { batchesFor, chooserJob, classCover, classCoverage, slipsFor, type Batch } from './glue';
import { handoutOf, type Handout } from './handout';
import { CLASS_FIELDS, kitsOf, projectOf, type ClassPlan } from './plan';
import { scheduleFor } from './schedule';
import { materials, tools, type Item } from './shopping';
import { classWarnings, slipWarnings, slowerOnes } from './warnings';

export interface ClassAnswer {
  readonly sentence: string;
  readonly brief: readonly [what: string, amount: string];
  readonly project: MakeAnswer;
  readonly title: string;
  readonly materials: readonly Item[];
  readonly tools: readonly Item[];
  readonly cut: CutAnswer;
  readonly coverage: CoverAnswer;
  readonly batches: readonly Batch[];
  readonly schedule: readonly { readonly when: string; readonly what: string }[];
  readonly warnings: readonly string[];
  /** of all that is cut, mixed, laid and pressed, the gravest first */
  readonly cautions: readonly Caution[];
  readonly handout: Handout;
  /** tails of links to the other calculators */
  readonly tails: { readonly choose: string; readonly cut: string };
  readonly figures: readonly number[];
}

/** The slow parts: handed in, so that whoever asks again for the same sheets or the same job may remember. */
export interface SlowParts {
  readonly cut: (plan: CutPlan) => Result<CutAnswer>;
  /** every adhesive for a job, the one of the class first */
  readonly choose: (job: Job) => readonly Choice[];
}

/** What the slow parts are asked for this class, to be asked ahead; nothing where its project cannot be made. */
export function slowQuestions(plan: ClassPlan): { readonly cut: CutPlan; readonly job: Job } | undefined {
  const project = makeAnswer(projectOf(plan));
  if (!project.ok) return undefined;
  const { pieces } = project.value;
  return { cut: classCutPlan(plan, pieces), job: chooserJob(plan, pieces) };
}

/**
 * The whole plan of a class: what is made, mixed, cut, bought, and done when. Faults name the field of the class that
 * they come from.
 */
export function classAnswer(
  plan: ClassPlan,
  catalogue: Catalogue,
  slow: SlowParts = { cut: cutAnswer, choose: (job) => choose(job, catalogue) },
): Result<ClassAnswer> {
  const unknown = unknownRecords(plan, CLASS_FIELDS, catalogue);
  const start = startOf(plan.day, plan.time);
  const project = makeAnswer(projectOf(plan));
  const wrong = [...unknown, ...(start.ok ? [] : start.errors), ...(project.ok ? [] : project.errors)];
  const adhesive = catalogue.adhesives.get(plan.adhesive);
  if (wrong.length > 0 || !start.ok || !project.ok || adhesive?.form !== 'wet') return fail(wrong);
  const { pieces } = project.value;
  const cutPlan = classCutPlan(plan, pieces);
  const cut = slow.cut(cutPlan);
  if (!cut.ok) return fail(besideSheet(cut.errors, pieces));
  const cover = classCover(plan, pieces);
  const coverage = classCoverage(cover, catalogue);
  if (!coverage.ok) return coverage;

  const batches = batchesFor(cover, coverage.value.buyMillilitres, catalogue);
  const job = chooserJob(plan, pieces);
  const choices = slow.choose(job);
  const choice = choices[0]!;
  const slips = slipsFor(plan, pieces, adhesive, catalogue);
  const longest = Math.max(0, ...slips.map(({ needed }) => needed));
  const slower = slowerOnes(choices, longest, catalogue).filter((short) => short !== adhesive.short);
  const title = PROJECTS[plan.project].title;
  const kits = kitsOf(plan);
  const buy = `${formatAmount(coverage.value.buyMillilitres, 9)}\u00a0ml`;
  const sheets = cut.value.stocks.map(({ name, layout }) => `${formatAmount(layout.sheets, 9)} of ${name}`).join(', ');
  return ok({
    sentence: `For ${kits} kits of the ${lowerFirst(title)}: sheets, ${sheets}; adhesive, ${buy} of ${adhesive.short}.`,
    brief: [`${kits} kits`, buy],
    project: project.value,
    title,
    materials: materials(plan, cut.value, coverage.value, batches, adhesive, catalogue),
    tools: tools(plan),
    cut: cut.value,
    coverage: coverage.value,
    batches,
    schedule: said(start.value, plan, { cut: cut.value, batches, adhesive, steps: project.value.steps }),
    warnings: [
      ...slipWarnings(slips, adhesive, slower),
      ...classWarnings(plan, choice),
      ...project.value.warnings,
      ...cut.value.warnings,
      ...coverage.value.warnings,
    ],
    cautions: gravestFirst([
      ...project.value.cautions,
      ...choice.cautions,
      ...batches.flatMap(({ mix }) => mix.cautions),
      // the glue of a class is kept from one meeting to the next, and boards are cut from whatever they are
      ...adhesiveCautions(adhesive, catalogue),
      ...cut.value.cautions,
      ...cautionsFor({
        steps: [{ does: ['cut', 'shear'] }],
        natures: catalogue.substrates.get(plan.on)!.hazards ?? [],
      }),
    ]),
    handout: handoutOf(plan, choice, project.value, catalogue),
    tails: {
      choose: encodeJob(job, seenIn(choice)),
      cut: cutTailFor(cutPlan),
    },
    figures: [cut.value.figures[0]!, coverage.value.buyMillilitres, kits],
  });
}

function said(
  start: Start,
  plan: ClassPlan,
  rest: Pick<Parameters<typeof scheduleFor>[0], 'cut' | 'batches' | 'adhesive' | 'steps'>,
) {
  const pressed =
    plan.project === 'slip-case' || plan.project === 'lidded-box' ? 'the lined boards' : 'the pasted leaves';
  const length = Math.round(plan.hours * 60);
  const tasks = scheduleFor({ ...rest, length, startsAt: start.minute, pressed });
  return tasks.map(({ at, what }) => ({
    // in the class itself people go by the minute
    when: at > 0 && at <= length ? `${momentText(start, at)}, minute ${at}` : momentText(start, at),
    what,
  }));
}
