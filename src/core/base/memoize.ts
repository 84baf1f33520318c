/** Answers that are remembered: the one way in which anything here keeps what it once worked out. */

/**
 * `work`, which works out each question once and after that gives the same answer. `keyOf` tells questions apart by what it
 * gives (its first argument, where it is left out); `most` answers are kept, of which the oldest goes first. A `work`
 * that throws is asked again the next time. Not for work whose answer depends on more than it is asked.
 */
export function memoize<Asked extends readonly unknown[], Answer>(
  work: (...asked: Asked) => Answer,
  keyOf: (...asked: Asked) => unknown = (...asked) => asked[0],
  most = Infinity,
): (...asked: Asked) => Answer {
  const known = new Map<unknown, Answer>();
  return (...asked) => {
    const key = keyOf(...asked);
    if (known.has(key)) return known.get(key) as Answer;
    const answer = work(...asked);
    if (known.size >= most) known.delete(known.keys().next().value);
    known.set(key, answer);
    return answer;
  };
}
