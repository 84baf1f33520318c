/** One card that two people filled in: what the one adds to the other, and whether they disagree. */
import { outcomeOf, type Swatch } from './record';

const aside = ({ spoiled }: Swatch): boolean => spoiled === true;
const isBlank = (card: Swatch): boolean => Object.keys(card.outcomes).length === 0 && !aside(card);

/** Is there nothing in theirs that mine does not hold already. */
export const saysNoMore = (theirs: Swatch, mine: Swatch): boolean =>
  Object.entries(theirs.outcomes).every(([id, outcome]) => outcomeOf(mine, id) === outcome) &&
  aside(theirs) === aside(mine);

/** Does it answer only what mine leaves open, so that taking it overwrites nothing. */
export const fillsBlanks = (theirs: Swatch, mine: Swatch): boolean =>
  Object.entries(theirs.outcomes).every(([id, outcome]) => (outcomeOf(mine, id) ?? outcome) === outcome) &&
  (isBlank(mine) || aside(theirs) === aside(mine));

/** Mine with what theirs adds; who judged and what was noted stays mine where I said it, and the later day counts. */
export function filled(mine: Swatch, { from: _origin, ...theirs }: Swatch): Swatch {
  const judgedAt = [mine.judgedAt ?? '', theirs.judgedAt ?? ''].sort()[1];
  return {
    ...theirs,
    ...mine,
    outcomes: { ...theirs.outcomes, ...mine.outcomes },
    ...(judgedAt && { judgedAt }),
    ...(aside(theirs) && { spoiled: true }),
  };
}

/** Theirs in place of mine: set aside only where they say so. What they left open is no judgement, so mine stays there. */
export function overruled({ spoiled: _aside, ...mine }: Swatch, { from: _origin, ...theirs }: Swatch): Swatch {
  return { ...mine, ...theirs, outcomes: { ...mine.outcomes, ...theirs.outcomes } };
}
