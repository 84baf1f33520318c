/**
 * What the model said of a pair when it was asked blind, with that paper left out of its fitting, and was wrong. An
 * answer for the same pair says so.
 */
import { chanceInTen } from '../base/format';
import type { Catalogue } from '../records/records';
import type { Ranked } from './finding';
import type { Job } from './job';
import { taskOf } from './sampling';
import { sheetOf } from '../paper/sheet';

export interface Blind {
  readonly paper: string;
  /** g/m² */
  readonly grammage: number;
  readonly adhesive: string;
  readonly substrate: string;
  readonly thing: 'spread' | 'lift';
  /** chance that it was given blind, 0–1 */
  readonly said: number;
  readonly happened: boolean;
}

/** A sheet whose weight is within this share of that on the bench is the same for our purpose. Judgement of ours. */
const SAME_WEIGHT = 0.2;

/** The miss that bears most on this answer: the one that was farthest from what happened. */
export function blindFor(blind: readonly Blind[], best: Ranked, job: Job, catalogue: Catalogue): Blind | undefined {
  if (taskOf(job) !== 'cover' || best.method.face !== 'sheet') return undefined;
  const weight = sheetOf(job, catalogue).grammage.middle;
  const here = blind.filter(
    (one) =>
      one.paper === job.paper.family &&
      one.adhesive === best.adhesiveId &&
      one.substrate === job.substrate &&
      Math.abs(weight / one.grammage - 1) <= SAME_WEIGHT,
  );
  const off = ({ said, happened }: Blind) => Math.abs(said - Number(happened));
  return here.reduce<Blind | undefined>((worst, one) => (worst && off(worst) >= off(one) ? worst : one), undefined);
}

const ASKED = {
  spread: 'it would spread without dragging',
  lift: 'the sheet would come up clean after 20\u00a0s',
} as const;

/** "Before the model had seen this pair, it gave a chance of about 2 in 10 that … On the bench it did." */
export const blindSentence = ({ thing, said, happened }: Blind): string =>
  `Before the model had seen this pair, it gave a chance of ${chanceInTen(said)} that ${ASKED[thing]}. On the bench it ${happened ? 'did' : 'did not'}.`;
