/** What the chooser has on its own page besides: the link it came by, what would flip the answer, two side by side. */
import { atom, computed } from 'nanostores';
import { chooseInTurns, type Choice } from '../../core/choose/choose';
import type { Draws } from '../../core/choose/draws';
import { encodeJob } from '../../core/choose/write-link';
import { FLIP_FIELDS, searchFlip, type Flip } from '../../core/choose/tipping-points';
import { DEFAULT_JOB, JOB_PAPER_FIELDS, planOfJob, settleJob, type Job, type SettledJob } from '../../core/choose/job';
import { atOnce } from '../../core/base/turns';
import type { JobPaper } from '../../core/paper/asked-paper';
import type { Catalogue } from '../../core/records/records';
import { decodeTaught, sameAnswer, seenIn, type Seen, type TaughtBy } from '../../core/choose/seen';
import { decodeJob, jobPartInLink } from '../../core/choose/read-link';
import { weightMap } from '../../core/choose/weight-map';
import { createChoose, textsOfJob, type Answering } from './choose';

/** Something that has a say besides the model: what it makes of the answer, and what it adds to the link. */
export interface Adjust {
  readonly choices: (choices: readonly Choice[], job: Job) => readonly Choice[];
  readonly tail: string;
  /** the draws that swatches have made of the even ones, for what else is worked out for the job, such as the best ratio */
  readonly learned?: Draws;
}

export type ChoosePageStore = ReturnType<typeof createChoosePage>;

/** How answers are come by: at once, and in turns. */
interface Answers {
  readonly now: (job: SettledJob) => readonly Choice[];
  readonly inTurns?: Answering<Choice>;
}

export function createChoosePage(
  catalogue: Catalogue,
  start: Job = DEFAULT_JOB,
  answers: Answers = { now: (job) => atOnce(chooseInTurns(job, catalogue)) },
) {
  const chooser = createChoose<Choice>(catalogue, answers.now, start, answers.inTurns);
  const { $texts, $job, $choices: $modelChoices } = chooser;
  const $adjust = atom<Adjust | undefined>(undefined);
  const $choices = computed([$job, $modelChoices, $adjust], (job, choices, adjust) =>
    adjust ? adjust.choices(choices, job) : choices,
  );
  const $tail = computed(
    [$job, $choices, $adjust],
    (job, choices, adjust) => encodeJob(job, seenIn(choices[0]!)) + (adjust?.tail ?? ''),
  );
  /** where the first of them holds */
  const $map = computed([$choices, $job], ([best], job) => weightMap(best!.adhesiveId, job, catalogue));
  const $compared = atom<{ readonly a: string; readonly b: string }>({ a: '', b: '' });
  /** what a link could not be read for, and what its sender saw */
  const $link = atom<{ readonly dropped: readonly string[]; readonly seen?: Seen; readonly taught?: TaughtBy }>({
    dropped: [],
  });
  const $flips = atom<readonly Flip[] | undefined>(undefined);
  /** set when a link's sender saw another answer than today's, until the job is changed */
  const $otherAnswer = computed([$link, $choices], ({ seen }, choices) =>
    seen && !sameAnswer(seen, seenIn(choices[0]!)) ? seen : undefined,
  );
  let loading = false;
  $texts.listen(() => {
    // Once the job is the reader's own, what a link said no longer bears on it.
    if (!loading && ($link.get().seen || $link.get().dropped.length > 0)) $link.set({ dropped: [] });
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

  /** Looks for what would change the answer, one question a turn of `later`, and stops when the job moves on. */
  const lookForFlips = (later: (work: () => void) => void): void => {
    const job = $job.get();
    // What would flip the model; swatches are not asked again for every sheet that might be.
    const now = $modelChoices.get()[0]!.adhesiveId;
    const found: Flip[] = [];
    const searches = FLIP_FIELDS.map((field) => searchFlip(field, now, job, catalogue));
    const turn = () => {
      if ($job.get() !== job) return;
      const [search] = searches;
      if (!search) return $flips.set(found);
      const step = search.next();
      if (step.done) {
        searches.shift();
        if (step.value) found.push(step.value);
      }
      later(turn);
    };
    later(turn);
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
    $map,
    $compared,
    $link,
    $flips,
    $otherAnswer,
    load,
    lookForFlips,
  };
}
