/** The first minutes of a joint: what must never run the wrong way, and a second, slower way to the same times. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bondLine, mobility, sheetStrength, type Joint } from '../../../src/core/joint/bond-line';
import { GRAB_LEVEL, LONGEST_SLIP_SECONDS } from '../../../src/core/joint/constants';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** The whole of the ranges in which the constants were searched for, and a little past them. */
const joint: fc.Arbitrary<Joint> = fc
  .record({
    paper: fc.record({
      grammage: number(5, 620),
      density: number(0.08, 1.48),
      sorptivity: number(0, 60),
      tensileIndex: number(5, 90),
      wetRetention: number(0.02, 0.4),
      contact: number(0.2, 1),
    }),
    substrate: fc.record({ sorptivity: number(0, 20), faceStrength: number(0.05, 20) }),
    adhesive: fc.record({
      solids: number(0.005, 0.7),
      grabShare: number(1, 8),
      viscosity: number(1, 500_000),
      coat: number(5, 150),
      suction: fc.constantFrom(1, 0.5),
      swelling: fc.constantFrom(1, 0.2),
    }),
    seconds: number(0, 3600),
    evaporation: number(0, 0.3),
  })
  .map(({ adhesive: { grabShare, ...adhesive }, ...rest }) => ({
    ...rest,
    // it grabs somewhere between how it is brushed and bone dry
    adhesive: { ...adhesive, grabSolids: Math.min(1, adhesive.solids * grabShare) },
  }));

const more = number(1, 20);
const slip = (one: Joint) => bondLine(one).slipSeconds;
/** Times agree but for the last digits of the arithmetic. */
const notLonger = (a: number, b: number) => expect(a).toBeLessThanOrEqual(b * (1 + 1e-9) + 1e-9);

describe('what never runs the wrong way', () => {
  test('a thirstier paper or board never gives longer to move the sheet', () => {
    fc.assert(
      fc.property(joint, more, (one, times) => {
        const { paper, substrate } = one;
        notLonger(slip({ ...one, paper: { ...paper, sorptivity: paper.sorptivity * times } }), slip(one));
        notLonger(slip({ ...one, substrate: { ...substrate, sorptivity: substrate.sorptivity * times } }), slip(one));
      }),
    );
  });
  test('a heavier coat never gives less time', () => {
    fc.assert(
      fc.property(joint, more, (one, times) => {
        notLonger(slip(one), slip({ ...one, adhesive: { ...one.adhesive, coat: one.adhesive.coat * times } }));
      }),
    );
  });
  test('higher solids never give more time, the viscosity being the same', () => {
    fc.assert(
      fc.property(joint, number(0, 1), (one, way) => {
        const { solids, grabSolids } = one.adhesive;
        const richer = solids + (grabSolids - solids) * way;
        notLonger(slip({ ...one, adhesive: { ...one.adhesive, solids: richer } }), slip(one));
      }),
    );
  });
  test('a thicker liquid never gives less time, and drier air never gives more', () => {
    fc.assert(
      fc.property(joint, more, (one, times) => {
        notLonger(
          slip(one),
          slip({ ...one, adhesive: { ...one.adhesive, viscosity: one.adhesive.viscosity * times } }),
        );
        notLonger(slip({ ...one, evaporation: (one.evaporation ?? 0) * times }), slip(one));
      }),
    );
  });
  test('as time goes on a coat only sets, a sheet only gets wetter, and the pull only grows', () => {
    fc.assert(
      fc.property(joint, number(0, 3600), (one, later) => {
        const now = bondLine(one);
        const then = bondLine({ ...one, seconds: one.seconds + later });
        expect(then.settingProgress).toBeGreaterThanOrEqual(now.settingProgress - 1e-9);
        expect(then.wetness).toBeGreaterThanOrEqual(now.wetness - 1e-9);
        expect(then.pull).toBeGreaterThanOrEqual(now.pull * (1 - 1e-9));
        expect(then.wetStrength).toBeLessThanOrEqual(now.wetStrength * (1 + 1e-9));
      }),
    );
  });
});

describe('every answer is a sound one, over the whole of the ranges', () => {
  test('finite, and within its bounds', () => {
    fc.assert(
      fc.property(joint, (one) => {
        const { uptake, settingProgress, slipSeconds, wetness, wetStrength, faceStrength, pull, liftMargin } =
          bondLine(one);
        for (const value of [uptake.paper, uptake.substrate, slipSeconds, wetStrength, faceStrength, pull, liftMargin])
          expect(Number.isFinite(value)).toBe(true);
        expect(settingProgress).toBeGreaterThanOrEqual(0);
        expect(settingProgress).toBeLessThanOrEqual(1);
        expect(wetness).toBeGreaterThanOrEqual(0);
        expect(wetness).toBeLessThanOrEqual(1);
        expect(slipSeconds).toBeGreaterThanOrEqual(0);
        expect(slipSeconds).toBeLessThanOrEqual(LONGEST_SLIP_SECONDS);
        expect(Math.min(wetStrength, faceStrength, pull)).toBeGreaterThan(0);
      }),
      { numRuns: 500 },
    );
  });
  test('no more is taken up than the coat can give or the sheet can hold (mass balance)', () => {
    fc.assert(
      fc.property(joint, (one) => {
        const { uptake } = bondLine(one);
        const { coat, solids } = one.adhesive;
        expect(uptake.paper + uptake.substrate).toBeLessThanOrEqual(coat * (1 - solids) + 1e-9);
        // pores by hand: caliper less the fibre's own volume, grammage ÷ 1.5
        const pores = one.paper.grammage / one.paper.density - one.paper.grammage / 1.5;
        expect(uptake.paper).toBeLessThanOrEqual(pores + 1e-6);
      }),
    );
  });
  test('the side that gives is the weaker, and gives only below a margin of 1', () => {
    fc.assert(
      fc.property(joint, (one) => {
        const { wetStrength, faceStrength, pull, liftMargin, gives } = bondLine(one);
        expect(liftMargin).toBeCloseTo(Math.min(wetStrength, faceStrength) / pull, 10);
        if (Math.min(wetStrength, faceStrength) >= pull) expect(gives).toBe('neither');
        else expect(gives).toBe(wetStrength < faceStrength ? 'paper' : 'substrate');
      }),
    );
  });
});

/** Slip time the slow way: the moment when setting reaches the grab level is closed in on by halving. */
function slipByHalving(one: Joint): number {
  const reached = (seconds: number) => bondLine({ ...one, seconds }).settingProgress >= GRAB_LEVEL;
  if (reached(0)) return 0;
  if (!reached(LONGEST_SLIP_SECONDS)) return LONGEST_SLIP_SECONDS;
  let [low, high] = [0, LONGEST_SLIP_SECONDS];
  for (let i = 0; i < 80; i += 1) {
    const middle = (low + high) / 2;
    if (reached(middle)) high = middle;
    else low = middle;
  }
  return high;
}

describe('the time worked out at once is the time that setting takes', () => {
  test('any joint whose water leaves by suction and air', () => {
    fc.assert(
      fc.property(joint, (one) => {
        const [quick, slow] = [slip(one), slipByHalving(one)];
        // where setting all but stands still, rounding moves the moment; then the progress itself must be right
        const progress = bondLine({ ...one, seconds: quick }).settingProgress;
        const near = Math.abs(quick - slow) <= 1e-6 * Math.max(1, slow);
        expect(near || Math.abs(progress - GRAB_LEVEL) < 1e-9).toBe(true);
      }),
      { numRuns: 400 },
    );
  });
  test('a sheet that fills before the coat grabs, a board that drains it, and then only air', () => {
    const base: Joint = {
      paper: {
        grammage: 12,
        density: 0.9,
        sorptivity: 20,
        tensileIndex: 40,
        wetRetention: 0.08,
        contact: 1,
      },
      substrate: { sorptivity: 0.5, faceStrength: 1 },
      adhesive: { solids: 0.05, grabSolids: 1, viscosity: 1, coat: 120 },
      seconds: 20,
      evaporation: 0.02,
    };
    // each stretch of the loss is met: full sheet, drained coat, no suction at all
    const cases: Joint[] = [
      base,
      { ...base, substrate: { sorptivity: 8, faceStrength: 1 } },
      { ...base, adhesive: { ...base.adhesive, coat: 15 } },
      { ...base, substrate: { sorptivity: 0, faceStrength: 1 } },
      { ...base, substrate: { sorptivity: 0, faceStrength: 1 }, evaporation: 0 },
    ];
    for (const one of cases) expect(slip(one) / slipByHalving(one)).toBeCloseTo(1, 6);
    expect(slip(cases[4]!)).toBe(LONGEST_SLIP_SECONDS);
  });
  test('when nothing is left to lose it grabs at once; when it gels it grabs no later than that', () => {
    fc.assert(
      fc.property(joint, number(0.5, 600), (one, gelsIn) => {
        const { adhesive } = one;
        expect(slip({ ...one, adhesive: { ...adhesive, solids: adhesive.grabSolids } })).toBe(0);
        const gelled = { ...one, adhesive: { ...adhesive, gelsIn } };
        expect(slip(gelled)).toBeLessThanOrEqual(gelsIn);
        expect(slip(gelled)).toBeLessThanOrEqual(slip(one));
        expect(bondLine({ ...gelled, seconds: gelsIn }).settingProgress).toBeGreaterThanOrEqual(GRAB_LEVEL);
      }),
    );
  });
});

test('a coat that gels cannot be moved past the moment when setting reaches the grab level', () => {
  fc.assert(
    fc.property(joint, number(0.5, 600), (one, gelsIn) => {
      const gelled = { ...one, adhesive: { ...one.adhesive, gelsIn } };
      notLonger(slip(gelled), slipByHalving(gelled));
    }),
  );
});

describe('how easily a liquid follows water', () => {
  test('never better than water, never worse than nothing, and worse the thicker it is', () => {
    fc.assert(
      fc.property(number(0.5, 1e6), more, (eta, times) => {
        expect(mobility(eta)).toBeGreaterThan(0);
        expect(mobility(eta)).toBeLessThanOrEqual(1);
        expect(mobility(eta * times)).toBeLessThanOrEqual(mobility(eta));
      }),
    );
    expect(mobility(1)).toBe(1);
  });
});

describe('a sheet when wet', () => {
  const sheet = {
    grammage: 80,
    density: 0.5,
    sorptivity: 3,
    tensileIndex: 40,
    wetRetention: 0.1,
    contact: 1,
  };
  test('dry it has all of its strength; soaked, the share that the record says it keeps', () => {
    const dry = sheetStrength(sheet, 0);
    const soaked = sheetStrength(sheet, 1e6);
    expect(dry.wetness).toBe(0);
    expect(soaked.wetness).toBe(1);
    expect(soaked.wetStrength / dry.wetStrength).toBeCloseTo(0.1, 12);
  });
  test('more water never strengthens it', () => {
    fc.assert(
      fc.property(number(0, 200), number(0, 200), (water, extra) => {
        expect(sheetStrength(sheet, water + extra).wetStrength).toBeLessThanOrEqual(
          sheetStrength(sheet, water).wetStrength,
        );
      }),
    );
  });
});

describe('no joint', () => {
  const sound = fc.sample(joint, { numRuns: 1, seed: 7 })[0]!;
  test.for([
    ['seconds', { ...sound, seconds: -1 }],
    ['seconds', { ...sound, seconds: NaN }],
    ['solids', { ...sound, adhesive: { ...sound.adhesive, solids: 1.2 } }],
    ['grabSolids', { ...sound, adhesive: { ...sound.adhesive, grabSolids: 0 } }],
    ['coat', { ...sound, adhesive: { ...sound.adhesive, coat: 0 } }],
    ['viscosity', { ...sound, adhesive: { ...sound.adhesive, viscosity: -3 } }],
    ['density', { ...sound, paper: { ...sound.paper, density: 1.6 } }],
  ] as const)('has such %s', ([name, one]) => {
    expect(() => bondLine(one)).toThrow(new RegExp(name));
  });
});
