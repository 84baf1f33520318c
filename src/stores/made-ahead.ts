/** Something that an island needs whole when it wakes, made before that in a turn of its own. */
export function madeAhead<T>(make: () => T) {
  let made: T | undefined;
  return {
    prepare: (): Promise<void> =>
      new Promise((resolve) =>
        setTimeout(() => {
          made = make();
          resolve();
        }),
      ),
    /** What was made, the first time; after that, and when nothing was, another. */
    take(): T {
      const one = made ?? make();
      made = undefined;
      return one;
    },
  };
}
