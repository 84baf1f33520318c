/** The workshop sheet over this site's own records. */
import { chooseInTurns } from '../core/chooser';
import { encodeJob } from '../core/encode-job';
import type { Job } from '../core/job';
import { classJob } from '../core/workshop-answer';
import { DEFAULT_WORKSHOP } from '../core/workshop-plan';
import { catalogue } from '../data/catalogue';
import { answersAhead } from './in-turns';
import { madeAhead } from './made-ahead';
import { createWorkshop, type WorkshopStore } from './workshop';

const choices = answersAhead(encodeJob, (job: Job) => chooseInTurns(job, catalogue));
const sheet = madeAhead(() => createWorkshop(catalogue, DEFAULT_WORKSHOP, choices.now));

/** Works out the first answer before the page needs it, the longest part of it in turns. */
export async function prepareWorkshop(): Promise<void> {
  const job = classJob(DEFAULT_WORKSHOP);
  if (job) await choices.prepare(job);
  await sheet.prepare();
}

export const openWorkshop = (): WorkshopStore => sheet.take();
