/** The chooser of its own page, over this site's own records. */
import { chooseInTurns } from '../core/chooser';
import { encodeJob } from '../core/encode-job';
import { DEFAULT_JOB, settleJob, type Job } from '../core/job';
import { decodeJob } from '../core/share-link';
import { catalogue } from '../data/catalogue';
import { createChooserPage, type ChooserPageStore } from './chooser-page';
import { answersAhead } from './in-turns';
import { madeAhead } from './made-ahead';

const answers = answersAhead(encodeJob, (job: Job) => chooseInTurns(job, catalogue));

const page = madeAhead(() => {
  const store = createChooserPage(catalogue, DEFAULT_JOB, answers);
  store.$map.get();
  return store;
});

/** Works out the first answer with its map, and that of a link, before the page needs them. */
export async function prepareChooserPage(link: string): Promise<void> {
  await answers.prepare(DEFAULT_JOB);
  if (link !== '') await answers.prepare(settleJob(decodeJob(link).job, catalogue).job);
  await page.prepare();
}

export const openChooserPage = (): ChooserPageStore => page.take();
