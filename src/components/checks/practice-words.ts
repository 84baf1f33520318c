/** How often a question about practice is answered with yes, in words. */
import { VERDICT_WORDS } from '../../core/choose/answer-words';
import { lowerFirst } from '../../core/base/format';
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

/** How often a first answer of each word is one that the source accepts: "sound 34 of 49, likely to work 10 of 17". */
export function acceptedByWord(all: readonly Asked[]): string {
  const asked = all.filter(({ first }) => first !== undefined);
  return (['sound', 'likely', 'touch-and-go', 'unlikely'] as const)
    .map((word) => ({ word, said: asked.filter(({ said }) => said === word) }))
    .filter(({ said }) => said.length > 0)
    .map(
      ({ word, said }) =>
        `${lowerFirst(VERDICT_WORDS[word])} ${said.filter(({ first }) => first).length} of ${said.length}`,
    )
    .join(', ');
}
