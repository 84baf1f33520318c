/** The chooser of its own page, over this site's own records. */
import { chooseInTurns } from '../../core/choose/choose';
import { encodeJob } from '../../core/choose/write-link';
import { DEFAULT_JOB, settleJob, type SettledJob } from '../../core/choose/job';
import { decodeJob } from '../../core/choose/read-link';
import { catalogue } from '../../data/catalogue';
import { createChoosePage, type ChoosePageStore } from './choose-page';
import { answersAhead } from '../shared/time-slice';
import { madeAhead } from '../shared/precompute';

const answers = answersAhead(encodeJob, (job: SettledJob) => chooseInTurns(job, catalogue));

const page = madeAhead(() => {
  const store = createChoosePage(catalogue, DEFAULT_JOB, answers);
  store.$map.get();
  return store;
});

/** Works out the first answer with its map, and that of a link, before the page needs them. */
export async function prepareChoosePage(link: string): Promise<void> {
  await answers.prepare(settleJob(DEFAULT_JOB, catalogue).job);
  if (link !== '') await answers.prepare(settleJob(decodeJob(link).job, catalogue).job);
  await page.prepare();
}

export const openChoosePage = (): ChoosePageStore => page.take();
