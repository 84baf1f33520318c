/**
 * Another's trial joined to one's own. Every swatch keeps who judged it, when, and which trial it comes
 * from. Nothing is overwritten: where both judged the same swatch differently, the caller must say whose stays.
 */
import { madeBy, methodOf } from './method';
import {
  TRIAL_LIMITS,
  nameIn,
  type Question,
  type Swatch,
  type Trial,
  type TrialGlue,
  type TrialPaper,
} from './record';
import { fillsBlanks, filled, overruled, saysNoMore } from './same-card';

export interface Conflict {
  readonly number: number;
  readonly mine: Swatch;
  readonly theirs: Swatch;
}

export interface Merged {
  readonly trial: Trial;
  readonly added: number;
  /** swatches that both hold and that say the same */
  readonly same: number;
  readonly conflicts: readonly Conflict[];
  /** swatches that did not fit */
  readonly left: number;
}

/** `keep` decides conflicts; while it is undefined they stay as they are in `mine` and are reported. */
export function mergeTrials(mine: Trial, theirs: Trial, keep?: 'mine' | 'theirs'): Merged {
  const papers = [...mine.papers];
  const glues = [...mine.glues];
  const questions = [...mine.questions];
  const paperIds = idMap(papers, theirs.papers, TRIAL_LIMITS.papers, 'paper', samePaper);
  const glueIds = idMap(glues, theirs.glues, TRIAL_LIMITS.glues, 'glue', sameGlue);
  // a doubt that either of us has stays until it is settled
  const doubted = new Set(theirs.glues.flatMap(({ id, doubtful }) => (doubtful ? [glueIds.get(id)] : [])));
  const sifted = glues.map((glue) => (doubted.has(glue.id) ? { ...glue, doubtful: true as const } : glue));
  const questionIds = idMap(questions, theirs.questions, TRIAL_LIMITS.questions, 'q', sameQuestion);
  const swatches = [...mine.swatches];
  const conflicts: Conflict[] = [];
  let [added, same, left] = [0, 0, 0];
  for (const swatch of theirs.swatches) {
    const paper = paperIds.get(swatch.paper);
    const glue = glueIds.get(swatch.glue);
    if (paper === undefined || glue === undefined) {
      left += 1;
      continue;
    }
    const outcomes = Object.fromEntries(
      Object.entries(swatch.outcomes).flatMap(([id, outcome]) => {
        const known = questionIds.get(id);
        return known === undefined ? [] : [[known, outcome]];
      }),
    );
    const from = swatch.from ?? { trial: theirs.id, name: theirs.name, number: swatch.number };
    // A swatch is the same one when it goes back to the same card of the same trial.
    const at = swatches.findIndex((one) =>
      one.from
        ? one.from.trial === from.trial && one.from.number === from.number
        : mine.id === from.trial && one.number === from.number,
    );
    const known = at < 0 ? undefined : swatches[at]!;
    if (known === undefined) {
      if (swatches.length >= TRIAL_LIMITS.swatches) {
        left += 1;
        continue;
      }
      const { by = theirs.by } = swatch;
      const number = 1 + swatches.reduce((most, one) => Math.max(most, one.number), 0);
      const fresh = { ...swatch, number, paper, glue, outcomes, ...(by && { by }), from };
      swatches.push(madeBy(fresh, methodOf(swatch, theirs), mine));
      added += 1;
      continue;
    }
    // a card that both hold was made in one way: as whoever judged it first says
    const blank = Object.keys(known.outcomes).length === 0;
    const made = blank ? methodOf(swatch, theirs) : methodOf(known, mine);
    const card = madeBy({ ...swatch, number: known.number, paper, glue, outcomes }, made, mine);
    if (saysNoMore(card, known)) {
      same += 1;
    } else if (fillsBlanks(card, known)) {
      swatches[at] = filled(known, card);
      added += 1;
    } else {
      conflicts.push({ number: known.number, mine: known, theirs: card });
      if (keep === 'theirs') swatches[at] = overruled(known, card);
    }
  }
  const holds = [...new Set([...mine.holds, ...theirs.holds])].sort((a, b) => a - b).slice(0, TRIAL_LIMITS.holds);
  return { trial: { ...mine, papers, glues: sifted, questions, holds, swatches }, added, same, conflicts, left };
}

const samePaper = (a: TrialPaper, b: TrialPaper) =>
  a.name === b.name && a.grammage === b.grammage && a.family === b.family;

const sameGlue = (a: TrialGlue, b: TrialGlue) => a.name === b.name && a.record === b.record;
const sameQuestion = (a: Question, b: Question) => a.text === b.text && a.kind === b.kind;

/** Their ids to mine; what is new to me is added to the list under a fresh id while there is room. */
function idMap<T extends { readonly id: string }>(
  mine: T[],
  theirs: readonly T[],
  most: number,
  kind: string,
  isSame: (a: T, b: T) => boolean,
): ReadonlyMap<string, string> {
  const ids = new Map<string, string>();
  for (const one of theirs) {
    const known = mine.find((own) => isSame(own, one));
    if (known) ids.set(one.id, known.id);
    else if (mine.length < most) {
      const taken = new Set(mine.map(({ id }) => id));
      let number = mine.length + 1;
      while (taken.has(`${kind}-${number}`)) number += 1;
      const id = taken.has(one.id) ? `${kind}-${number}` : one.id;
      mine.push({ ...one, id });
      ids.set(one.id, id);
    }
  }
  return ids;
}

/** One line on a conflict: "Swatch 4, lokta with PVA". */
export const conflictName = (trial: Trial, { number, mine }: Conflict): string =>
  `Swatch ${number}, ${nameIn(trial.papers, mine.paper)} with ${nameIn(trial.glues, mine.glue)}`;
