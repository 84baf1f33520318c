/**
 * Which way the grain runs, from what was seen in the four home tests. Bayes' rule over three cases (up and
 * down, side to side, no grain), the tests taken as independent, which a hand that expects an answer makes
 * them less than they are: read the chance as a good guess and no more.
 */

export const GRAIN_TESTS = ['bend', 'strips', 'damp', 'tear'] as const;
export type GrainTest = (typeof GRAIN_TESTS)[number];
/** Along which way of the sheet, as it is held, a test says that the grain runs. */
export type GrainSeen = 'height' | 'width' | 'unclear' | 'untried';
export type GrainWay = 'height' | 'width' | 'none';

/**
 * How often a test shows the true way and how often the wrong one, on a sheet that has a grain; else it is
 * unclear. Estimates: no one has counted. Tearing wanders in long-fibred sheets.
 */
export const TEST_TRUST: Readonly<Record<GrainTest, { readonly right: number; readonly wrong: number }>> = {
  bend: { right: 0.85, wrong: 0.05 },
  strips: { right: 0.85, wrong: 0.05 },
  damp: { right: 0.9, wrong: 0.05 },
  tear: { right: 0.7, wrong: 0.1 },
};
/** What a sheet without grain shows: mostly nothing, now and then a way that is not there. Estimate. */
const WITHOUT = { unclear: 0.6, either: 0.2 };
/** Chance that a sheet of this kind has no grain, before any test. Estimate. */
const NO_GRAIN = { none: 0.85, weak: 0.3, marked: 0.05 } as const;
/** From here on a way is named. Our own line. */
export const SETTLED = 0.8;

export interface GrainFinding {
  readonly chances: Readonly<Record<GrainWay, number>>;
  readonly likeliest: GrainWay;
  readonly settled: boolean;
  /** tests that say the other way than most */
  readonly against: readonly GrainTest[];
  /** the test to try next; none when all are done or it is settled */
  readonly next?: GrainTest;
}

/** `kind` is how marked the grain of such a paper is; every test is named with what it showed. */
export function findGrain(
  seen: Readonly<Record<GrainTest, GrainSeen>>,
  kind: 'none' | 'weak' | 'marked',
): GrainFinding {
  const without = NO_GRAIN[kind];
  const chances = { height: (1 - without) / 2, width: (1 - without) / 2, none: without };
  for (const test of GRAIN_TESTS) {
    const shown = seen[test];
    if (shown === 'untried') continue;
    const { right, wrong } = TEST_TRUST[test];
    for (const way of ['height', 'width'] as const)
      chances[way] *= shown === 'unclear' ? 1 - right - wrong : shown === way ? right : wrong;
    chances.none *= shown === 'unclear' ? WITHOUT.unclear : WITHOUT.either;
  }
  const sum = chances.height + chances.width + chances.none;
  const shares = { height: chances.height / sum, width: chances.width / sum, none: chances.none / sum };
  const likeliest = (['height', 'width', 'none'] as const).reduce((a, b) => (shares[b] > shares[a] ? b : a));
  const settled = shares[likeliest] >= SETTLED;
  const next = settled ? undefined : GRAIN_TESTS.find((test) => seen[test] === 'untried');
  return {
    chances: shares,
    likeliest,
    settled,
    against: GRAIN_TESTS.filter(
      (test) => (seen[test] === 'height' || seen[test] === 'width') && seen[test] !== likeliest,
    ),
    ...(next && { next }),
  };
}

/** "grain long" and "grain short" go with the shape of the sheet as it is held. */
export function grainName(way: GrainWay, shape: 'taller' | 'wider' | 'square'): string | undefined {
  if (way === 'none' || shape === 'square') return undefined;
  return (way === 'height') === (shape === 'taller') ? 'grain long' : 'grain short';
}
