/** The whole of a class: what to buy, cut and mix, when, what to look out for, and what each student is given. */
import { ok, type Result } from '../base/result';
import { choose, type Choice } from '../choose/choose';
import type { Job } from '../choose/job';
import { cutAnswer, type CutAnswer } from '../cut/answer';
import type { CutPlan } from '../cut/plan';
import type { Catalogue } from '../records/records';
import { chooserJob, classLaying, type ClassLaying } from './laying';
import type { ClassPlan } from './plan';
import { classSheet, type ClassSheet } from './sheet';

export type ClassAnswer = ClassSheet & ClassLaying;

/** The slow parts: handed in, so that whoever asks again for the same sheets or the same job may remember. */
export interface SlowParts {
  readonly cut: (plan: CutPlan) => Result<CutAnswer>;
  /** every adhesive for a job, the one of the class first */
  readonly choose: (job: Job) => readonly Choice[];
}

/** The whole plan of a class. Faults name the field of the class that they come from. */
export function classAnswer(
  plan: ClassPlan,
  catalogue: Catalogue,
  slow: SlowParts = { cut: cutAnswer, choose: (job) => choose(job, catalogue) },
): Result<ClassAnswer> {
  const sheet = classSheet(plan, catalogue, slow.cut);
  if (!sheet.ok) return sheet;
  const choices = slow.choose(chooserJob(plan, sheet.value.project.pieces));
  return ok({ ...sheet.value, ...classLaying(plan, sheet.value, choices[0]!, choices, catalogue) });
}
