/** Long work cut into turns, so that a page can let a thumb in between. */

/**
 * Work that stops now and then. A plain stop may go on at once while there is time; at a `'rest'` something has
 * been handed over that is to be drawn, and the turn ends.
 */
export type InTurns<T> = Generator<undefined | 'rest', T>;

/** The result of such work, all of it done in one go. */
export function atOnce<T>(work: InTurns<T>): T {
  for (;;) {
    const turn = work.next();
    if (turn.done) return turn.value;
  }
}
