/** The seconds of several drops: as typed, "28 34 31", as a link has them, "28_34_31", and as one figure. */
import { parseNumber } from '../base/number-text';
import { fail, ok, type Result } from '../base/result';
import { LONGEST_DROP_SECONDS, PAPER_LIMITS } from './limits';

export const MOST_DROPS = 10;
const SHORTEST = PAPER_LIMITS.dropSeconds.low;
const DROPS_PATTERN = /^\d{1,4}(\.\d{1,2})?(_\d{1,4}(\.\d{1,2})?){0,9}$/;

/** Typed drops, apart by spaces or semicolons, to what a plan keeps. */
export function parseDrops(typed: string): Result<readonly number[]> {
  const texts = typed.split(/[\s;]+/).filter(Boolean);
  const problem = (message: string) =>
    fail([{ field: 'drops', code: texts.length ? 'not-a-number' : 'empty', message }]);
  const how = `Give the seconds of 1 to ${MOST_DROPS} drops, each from ${SHORTEST} to ${LONGEST_DROP_SECONDS}\u00a0s, with spaces between them.`;
  if (texts.length === 0 || texts.length > MOST_DROPS) return problem(how);
  const seconds = texts.map(parseNumber);
  const wrong = seconds.findIndex((one) => one === undefined || !isDrop(one));
  if (wrong < 0) return ok(seconds.map((one) => Number(one!.toFixed(2))));
  if (seconds[wrong] !== undefined && seconds[wrong] > LONGEST_DROP_SECONDS)
    return problem(
      `A drop that stands for more than ${LONGEST_DROP_SECONDS} s says no more than that the face is closed. Leave it out, and choose hard-sized as its sizing.`,
    );
  return problem(`“${texts[wrong]!.slice(0, 20)}” is not a time. ${how}`);
}

/** Drop times as their reader would have typed them. */
export const showDrops = (seconds: readonly number[]): string => seconds.join(' ');

/** As a link carries them: "28_34_31". */
export const writeDrops = (seconds: readonly number[]): string => seconds.join('_');

/** Whether a drop may take so many seconds. */
export const isDrop = (seconds: number): boolean => seconds >= SHORTEST && seconds <= LONGEST_DROP_SECONDS;

/** The seconds in a link's text, however long; undefined when it holds none. */
export const readDrops = (text: string): readonly number[] | undefined =>
  DROPS_PATTERN.test(text) ? text.split('_').map(Number) : undefined;

/**
 * One figure for several drops: their geometric mean, since times of sinking in spread by factors. `factor` is
 * how many times as long the slowest took as the quickest.
 */
export function asOneDrop(seconds: readonly number[]): { readonly seconds: number; readonly factor: number } {
  const mean = Math.exp(seconds.reduce((sum, one) => sum + Math.log(one), 0) / seconds.length);
  return { seconds: Number(mean.toPrecision(3)), factor: Math.max(...seconds) / Math.min(...seconds) };
}
