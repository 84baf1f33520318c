/** How a class is glued: what the chooser says of its adhesive, in turns. Most edits leave alone what it is asked. */
import type { InTurns } from '../../core/base/turns';
import { toldOf } from '../../core/choose/choose';
import type { Ranked } from '../../core/choose/finding';
import { settleJob } from '../../core/choose/job';
import { rankInTurns } from '../../core/choose/ranking';
import { encodeJob } from '../../core/choose/write-link';
import { chooserJob, classLaying, type ClassLaying } from '../../core/class/laying';
import type { Laying } from './class';

/** One that remembers the last order. */
export function layingInTurns(): Laying {
  let last: { readonly job: string; readonly order: readonly Ranked[] } | undefined;
  return function* (plan, sheet, catalogue): InTurns<ClassLaying> {
    const { job } = settleJob(chooserJob(plan, sheet.project.pieces), catalogue);
    const key = encodeJob(job);
    const order = last?.job === key ? last.order : yield* rankInTurns(job, catalogue);
    last = { job: key, order };
    yield;
    return classLaying(plan, sheet, toldOf(order[0]!, catalogue), order, catalogue);
  };
}
