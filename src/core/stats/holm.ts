/** Many claims on one page, held together so that luck alone seldom makes even one of them. */
import { mustBeWithin } from '../base/result';

export interface TestedClaim {
  /** of its own test, 0–1 */
  readonly p: number;
  /** the smallest p that test could have given; 0 where that is not known, and the claim always counts */
  readonly least: number;
}

/** Chances that differ by rounding alone count as equal. */
const SAME = 1 + 1e-9;

/**
 * Holm's step-down procedure with Tarone's allowance for tests on counts: adjusted p, in the order given.
 * Null hypothesis: none of the claims that are called at a level holds. Called where the adjusted p is at most 0.05,
 * all claims of the page together hold a false one at most 1 time in 20, however the tests hang together.
 *
 * Each p is multiplied by the number of claims not yet called that could have come out so small at all: a test on
 * swatches that all passed can never call anything and takes nothing from the others. With every `least` at 0 it is
 * Holm's. `least` must be settled by what the tests take as given (design, margins), not by how the labels fell.
 *
 * Published: S. Holm, Scand. J. Stat. 6 (1979) 65; R. E. Tarone, Biometrics 46 (1990) 515. Throws RangeError unless
 * every p is from 0 to 1 and no least above its p.
 */
export function holmTarone(claims: readonly TestedClaim[]): readonly number[] {
  for (const { p, least } of claims) {
    mustBeWithin('p', p, 0, 1);
    mustBeWithin('least', least, 0, p * SAME);
  }
  const order = claims.map((_, i) => i).sort((a, b) => claims[a]!.p - claims[b]!.p);
  const leasts = claims.map(({ least }) => least).sort((a, b) => a - b);
  const adjusted = claims.map(() => 1);
  let [before, able] = [0, 0];
  order.forEach((i, place) => {
    const { p } = claims[i]!;
    while (able < leasts.length && leasts[able]! <= p * SAME) able += 1;
    // all that come earlier in the order are among the able, since no p is below its least
    before = Math.max(before, Math.min(1, p * (able - place)));
    adjusted[i] = before;
  });
  return adjusted;
}
