/** The chooser of its own page, over this site's own records: one for all the islands of the page. */
import { encodeJob } from '../../core/choose/write-link';
import { DEFAULT_JOB, settleJob, type SettledJob } from '../../core/choose/job';
import type { Ranked } from '../../core/choose/finding';
import { rankInTurns } from '../../core/choose/ranking';
import { decodeJob } from '../../core/choose/read-link';
import { catalogue } from '../../data/catalogue';
import type { TypedInto } from '../shared/typed';
import { jobOfTexts, jobTextsTyped } from './choose';
import { createChoosePage, type ChoosePageStore } from './choose-page';
import { fetchBench, waitsForBench, withBenches } from '../shared/on-bench';
import { answersAhead } from '../shared/time-slice';

const records = withBenches(catalogue);
const ahead = answersAhead(encodeJob, (job: SettledJob) => rankInTurns(job, records));
const answers = {
  now: ahead.now,
  inTurns(job: SettledJob, done: (choices: readonly Ranked[]) => void): () => void {
    if (!waitsForBench(job)) return ahead.inTurns(job, done);
    let stop = () => {};
    let stopped = false;
    void fetchBench().then(() => {
      if (!stopped) stop = ahead.inTurns(job, done);
    });
    return () => {
      stopped = true;
      stop();
    };
  },
};

const jobIn = (link: string) => (link === '' ? DEFAULT_JOB : decodeJob(link).job);
/** A link sets the fields itself. */
const textsIn = (link: string, into: TypedInto) => (link === '' ? jobTextsTyped(DEFAULT_JOB, into) : undefined);

/** Works out the first answer, that of a link where there is one, before the page needs it. */
export async function prepareChoosePage(link: string, into: TypedInto): Promise<void> {
  const texts = textsIn(link, into);
  const { job } = settleJob((texts && jobOfTexts(texts, catalogue).job) ?? jobIn(link), catalogue);
  if (waitsForBench(job)) await fetchBench();
  await ahead.prepare(job);
}

let shared: ChoosePageStore | undefined;

/** The one chooser of this page. `link`: the tail that it opens with; it starts at the usual job where that is empty. */
export function openChoosePage(link = '', into: TypedInto = { prefix: '' }): ChoosePageStore {
  shared ??= createChoosePage(records, jobIn(link), answers, textsIn(link, into));
  return shared;
}

/** When the page is left, so that the next begins afresh. */
export function leaveChoosePage(): void {
  shared = undefined;
}
