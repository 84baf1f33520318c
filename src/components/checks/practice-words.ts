/** How often a question about practice is answered with yes, in words. */
import { percent } from '../../core/trial/words';
import { shareOf, type Asked, type PracticeQuestion } from '../../data/practice';

/** "53 % (40 of 76)" */
export function shareSaid(all: readonly Asked[], question: PracticeQuestion): string {
  const found = shareOf(all, question);
  return found ? `${percent(found.share)} (${found.yes} of ${found.asked})` : 'not asked';
}

/** The middle nine tenths by source; empty where there is nothing between them. */
export function rangeSaid(all: readonly Asked[], question: PracticeQuestion): string {
  const found = shareOf(all, question);
  return found && found.low < found.high ? `${percent(found.low)} to ${percent(found.high)}` : '';
}
