/** The workshop sheet over this site's own records. */
import { chooseInTurns } from '../core/chooser';
import { encodeJob } from '../core/encode-job';
import type { Job } from '../core/job';
import { slowQuestions } from '../core/workshop-answer';
import { DEFAULT_WORKSHOP } from '../core/workshop-plan';
import { catalogue } from '../data/catalogue';
import { answersAhead } from './in-turns';
import { madeAhead, nextTurn } from './made-ahead';
import { createWorkshop, rememberingParts, type WorkshopStore } from './workshop';

const choices = answersAhead(encodeJob, (job: Job) => chooseInTurns(job, catalogue));
const slow = rememberingParts(choices.now);
const sheet = madeAhead(() => createWorkshop(catalogue, DEFAULT_WORKSHOP, slow));

/** Works out the first answer before the page needs it, its slow parts each in turns of their own. */
export async function prepareWorkshop(): Promise<void> {
  const questions = slowQuestions(DEFAULT_WORKSHOP);
  if (questions) {
    await choices.prepare(questions.job);
    await nextTurn();
    slow.cut(questions.cut);
  }
  await sheet.prepare();
}

export const openWorkshop = (): WorkshopStore => sheet.take();
