/** What the chooser has on its own page besides: the link it came by, and whatever else has a say in the answer. */
import { atom, computed } from 'nanostores';
import type { Draws } from '../../core/choose/draws';
import type { Ranked } from '../../core/choose/finding';
import { rankInTurns } from '../../core/choose/ranking';
import { encodeJob } from '../../core/choose/write-link';
import { DEFAULT_JOB, JOB_PAPER_FIELDS, planOfJob, settleJob, type Job, type SettledJob } from '../../core/choose/job';
import { atOnce } from '../../core/base/turns';
import type { JobPaper } from '../../core/paper/asked-paper';
import type { Catalogue } from '../../core/records/records';
import { decodeTaught, sameAnswer, seenIn, type Seen, type TaughtAnswer } from '../../core/choose/seen';
import { decodeJob, jobPartInLink } from '../../core/choose/read-link';
import { createChoose, textsOfJob, type Answering, type JobTexts } from './choose';

/** Something that has a say besides the model: what it makes of the answer, and what it adds to the link. */
export interface Adjust {
  readonly choices: (choices: readonly Ranked[], job: Job) => readonly Ranked[];
  readonly tail: string;
  /** the draws that swatches have made of the even ones, for what else is worked out for the job, such as the best ratio */
  readonly learned?: Draws;
}

export type ChoosePageStore = ReturnType<typeof createChoosePage>;

/** How answers are come by: at once, and in turns. */
interface Answers {
  readonly now: (job: SettledJob) => readonly Ranked[];
  readonly inTurns?: Answering<Ranked>;
}

export function createChoosePage(
  catalogue: Catalogue,
  start: Job = DEFAULT_JOB,
  answers: Answers = { now: (job) => atOnce(rankInTurns(job, catalogue)) },
  texts?: JobTexts,
) {
  const chooser = createChoose<Ranked>(catalogue, answers.now, start, answers.inTurns, texts);
  const { $texts, $job, $choices: $modelChoices } = chooser;
  const $adjust = atom<Adjust | undefined>(undefined);
  const $choices = computed([$job, $modelChoices, $adjust], (job, choices, adjust) =>
    adjust ? adjust.choices(choices, job) : choices,
  );
  const $tail = computed(
    [$job, $choices, $adjust],
    (job, choices, adjust) => encodeJob(job, seenIn(choices[0]!)) + (adjust?.tail ?? ''),
  );
  /** what a link could not be read for, and what its sender saw */
  const $link = atom<{ readonly dropped: readonly string[]; readonly seen?: Seen; readonly taught?: TaughtAnswer }>({
    dropped: [],
  });
  /** what the swatches of a link's sender showed; null until the link has been read */
  const $sentEvidence = atom<string | undefined | null>(null);
  /** digest of what was learned from the swatches on this device, '' for nothing; undefined until that is known */
  const $taughtHere = atom<string | undefined>(undefined);
  /** set when a link's sender saw another answer than today's, until the job is changed */
  const $otherAnswer = computed([$link, $choices], ({ seen }, choices) =>
    seen && !sameAnswer(seen, seenIn(choices[0]!)) ? seen : undefined,
  );
  let loading = false;
  $texts.listen(() => {
    // Once the job is the reader's own, what a link said no longer bears on it.
    const { seen, taught, dropped } = $link.get();
    if (!loading && (seen || taught || dropped.length > 0)) $link.set({ dropped: [] });
  });

  /** Takes a link's tail; empty text leaves everything as it is. */
  const load = (text: string): void => {
    if (text.replace(/^[?#]/, '') === '') return;
    const { job, dropped, seen } = decodeJob(text);
    const settled = settleJob(job, catalogue);
    loading = true;
    $texts.set(textsOfJob(settled.job));
    // What was not in the records is named as the link named it.
    const unknown = settled.dropped.map((field) => jobPartInLink(field, planOfJob(job)));
    const taught = decodeTaught(new URLSearchParams(text).get('ls'));
    $link.set({ dropped: [...dropped, ...unknown], ...(seen && { seen }), ...(taught && { taught }) });
    loading = false;
  };

  /** Another paper altogether, with all that is known of it. */
  const takePaper = (paper: JobPaper): void => {
    const ofPaper = Object.entries(textsOfJob({ ...start, paper })).filter(([field]) => field in JOB_PAPER_FIELDS);
    $texts.set({ ...$texts.get(), ...Object.fromEntries(ofPaper) });
  };

  return {
    ...chooser,
    takePaper,
    $modelChoices,
    $adjust,
    $choices,
    $tail,
    $link,
    $sentEvidence,
    $taughtHere,
    $otherAnswer,
    load,
  };
}
