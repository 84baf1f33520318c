/** What stands below the answer: what would flip it, every place with its reasons, two side by side. Fetched after it. */
import { atom, computed } from 'nanostores';
import { toldOf } from '../../core/choose/choose';
import { DEFAULT_JOB } from '../../core/choose/job';
import { encodeJob } from '../../core/choose/write-link';
import { FLIP_FIELDS, searchFlip, type Flip } from '../../core/choose/tipping-points';
import type { ChoosePageStore } from './choose-page';

export type ChooseRestStore = ReturnType<typeof createChooseRest>;

export function createChooseRest(page: ChoosePageStore) {
  const { $job, $choices, $modelChoices, catalogue } = page;
  const $compared = atom<{ readonly a: string; readonly b: string }>({ a: '', b: '' });
  /** undefined while the job is the one that the page was built with */
  const $flips = atom<readonly Flip[] | 'looking' | undefined>(undefined);

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

  return {
    catalogue,
    $job,
    $choices,
    $tail: page.$tail,
    /** what swatches have made of the model's draws */
    learned: () => page.$adjust.get()?.learned,
    /** every place with its reasons, its technique and its cautions */
    $told: computed($choices, (choices) => choices.map((choice) => toldOf(choice, catalogue))),
    $compared,
    $flips,
    lookForFlips,
    /** whether the job is still the one that every page is built with */
    isAtStart: (): boolean => encodeJob($job.get()) === encodeJob(DEFAULT_JOB),
  };
}
