/** What a class needs: what to buy, cut and mix, and what is done when. How it is glued follows (`laying.ts`). */
import { adhesiveCautions } from '../adhesive/hazards';
import { formatAmount, lowerFirst } from '../base/format';
import { fail, ok, type Result } from '../base/result';
import type { CoverAnswer } from '../cover/answer';
import type { CutAnswer } from '../cut/answer';
import { cutTailFor, type CutPlan } from '../cut/plan';
import { unknownRecords } from '../link/fields';
import { makeAnswer, type MakeAnswer } from '../make/answer';
import { PROJECTS } from '../make/projects';
import type { Catalogue } from '../records/records';
import { cautionsFor, gravestFirst, type Caution } from '../safety/hazards';
import { momentText, startOf, type Start } from './clock';
import { besideSheet, classCutPlan } from './cutting';
import { batchesFor, classCover, classCoverage, type Batch } from './glue';
import { CLASS_FIELDS, kitsOf, projectOf, type ClassPlan } from './plan';
import { scheduleFor } from './schedule';
import { materials, tools, type Item } from './shopping';

export interface ClassSheet {
  readonly sentence: string;
  /** what was asked, in a few words: it stands for the form where that is folded */
  readonly asked: string;
  readonly brief: readonly [what: string, amount: string];
  readonly project: MakeAnswer;
  readonly title: string;
  readonly materials: readonly Item[];
  readonly tools: readonly Item[];
  readonly cut: CutAnswer;
  readonly coverage: CoverAnswer;
  readonly batches: readonly Batch[];
  readonly schedule: readonly { readonly when: string; readonly what: string }[];
  /** of the project, the cutting and the covering */
  readonly warnings: readonly string[];
  /** of all that is cut, mixed and pressed, the gravest first */
  readonly cautions: readonly Caution[];
  /** tail of the link to the cutting plan */
  readonly cutTail: string;
  readonly figures: readonly number[];
}

/** What is to be cut for this class, to be asked ahead; nothing where its project cannot be made. */
export function classToCut(plan: ClassPlan): CutPlan | undefined {
  const project = makeAnswer(projectOf(plan));
  return project.ok ? classCutPlan(plan, project.value.pieces) : undefined;
}

/** In the place of a project’s own cutting out. */
const LAY_OUT = 'Lay out the pieces of the kit and find the grain of each: the list says how it runs.';

/** All but the gluing. Faults name the field of the class that they come from. `cutting` answers what is to be cut. */
export function classSheet(
  plan: ClassPlan,
  catalogue: Catalogue,
  cutting: (plan: CutPlan) => Result<CutAnswer>,
): Result<ClassSheet> {
  const unknown = unknownRecords(plan, CLASS_FIELDS, catalogue);
  const start = startOf(plan.day, plan.time);
  const project = makeAnswer(projectOf(plan));
  const wrong = [...unknown, ...(start.ok ? [] : start.errors), ...(project.ok ? [] : project.errors)];
  const adhesive = catalogue.adhesives.get(plan.adhesive);
  if (wrong.length > 0 || !start.ok || !project.ok || adhesive?.form !== 'wet') return fail(wrong);
  const { pieces } = project.value;
  // the pieces are cut beforehand and put up as kits: see the schedule
  const steps = [LAY_OUT, ...project.value.stepsFromKit];
  const cutPlan = classCutPlan(plan, pieces);
  const cut = cutting(cutPlan);
  if (!cut.ok) return fail(besideSheet(cut.errors, pieces));
  const cover = classCover(plan, pieces);
  const coverage = classCoverage(cover, catalogue);
  if (!coverage.ok) return coverage;

  const batches = batchesFor(cover, coverage.value.buyMillilitres, catalogue);
  const title = PROJECTS[plan.project].title;
  const kits = kitsOf(plan);
  const buy = `${formatAmount(coverage.value.buyMillilitres, 9)}\u00a0ml`;
  const sheets = cut.value.stocks.map(({ name, layout }) => `${formatAmount(layout.sheets, 9)} of ${name}`).join(', ');
  return ok({
    sentence: `For ${kits} kits of the ${lowerFirst(title)}: sheets, ${sheets}; adhesive, ${buy} of ${adhesive.short}.`,
    asked: `${plan.people === 1 ? '1 person' : `${plan.people} people`}: ${lowerFirst(title)}, with ${adhesive.short}`,
    brief: [`${kits} kits`, buy],
    project: { ...project.value, steps },
    title,
    materials: materials(plan, cut.value, coverage.value, batches, adhesive, catalogue),
    tools: tools(plan),
    cut: cut.value,
    coverage: coverage.value,
    batches,
    schedule: said(start.value, plan, { cut: cut.value, batches, adhesive, steps }),
    warnings: [...project.value.warnings, ...cut.value.warnings, ...coverage.value.warnings],
    cautions: gravestFirst([
      ...project.value.cautions,
      ...batches.flatMap(({ mix }) => mix.cautions),
      // the glue of a class is kept from one meeting to the next, and boards are cut from whatever they are
      ...adhesiveCautions(adhesive, catalogue),
      ...cut.value.cautions,
      ...cautionsFor({
        steps: [{ does: ['cut', 'shear'] }],
        natures: catalogue.substrates.get(plan.on)!.hazards ?? [],
      }),
    ]),
    cutTail: cutTailFor(cutPlan),
    figures: [cut.value.figures[0]!, coverage.value.buyMillilitres, kits],
  });
}

function said(
  start: Start,
  plan: ClassPlan,
  rest: Pick<Parameters<typeof scheduleFor>[0], 'cut' | 'batches' | 'adhesive' | 'steps'>,
) {
  const length = Math.round(plan.hours * 60);
  const tasks = scheduleFor({ ...rest, length, startsAt: start.minute });
  return tasks.map(({ at, what }) => ({
    // in the class itself people go by the minute
    when: at > 0 && at <= length ? `${momentText(start, at)}, minute ${at}` : momentText(start, at),
    what,
  }));
}
