/** Work done before an island needs it, in turns that let a thumb in between. */

/** Lets the browser do what waits, and goes on after that. */
export const nextTurn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/** Something that an island needs whole when it wakes, made before that in a turn of its own. */
export function madeAhead<T>(make: () => T) {
  let made: T | undefined;
  return {
    async prepare(): Promise<void> {
      await nextTurn();
      made = make();
    },
    /** What was made, the first time; after that, and when nothing was, another. */
    take(): T {
      const one = made ?? make();
      made = undefined;
      return one;
    },
  };
}
