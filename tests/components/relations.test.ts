/**
 * The relations shown on "How the model works", evaluated by hand for one made-up joint of round numbers, and
 * held against the code. The arithmetic here is written out and calls nothing of core.
 */
import type { Bench } from '../../src/core/joint/bench';
import { describe, expect, test } from 'vitest';
import { bondLine, mobility } from '../../src/core/joint/bond-line';
import { flatMargin, LEFT_AFTER_PRESSING } from '../../src/core/joint/flatness';
import { wetMargins } from '../../src/core/joint/margins';
import { BOND_CONSTANTS, type BondConstants } from '../../src/core/joint/constants';
import { evaporationRate } from '../../src/core/joint/moisture';
import { at } from '../../src/core/base/quantity';
import { spreadMargin } from '../../src/core/joint/spread';
import { holds } from '../../src/core/choose/tally';
import { brushingViscosity, dispersionViscosity, solutionViscosity } from '../../src/core/adhesive/viscosity';
import type { WetAdhesive } from '../../src/core/records/records';
import { RELATIONS } from '../../src/components/model/relations';
import { CONSTANT_SYMBOLS, FIXED, SYMBOLS } from '../../src/components/model/symbols';

const constants: BondConstants = {
  mobilityAtOnePascalSecond: 0.5, // f1
  mobilityExponent: 0.2, // a
  tearShare: 0.4, // K
  freshPull: 15, // F0
  setPull: 250, // F1
  setExponent: 2, // n
  boardFace: 120, // B
  soakedWater: 0.9, // us
  holdingLayer: 100, // H
  drainableShare: 0.85, // alpha
  brushedGrammage: 14, // W1
  bearingExponent: 1.5, // b
};
const paper = { grammage: 60, density: 0.5, sorptivity: 2, tensileIndex: 30, wetRetention: 0.1, contact: 0.8 };
const substrate = { sorptivity: 3, faceStrength: 0.9 };
const adhesive = { solids: 0.5, grabSolids: 0.64, viscosity: 5000, coat: 80 };
const joint = { paper, substrate, adhesive, seconds: 20, evaporation: 0.02, constants };

// (1) C = 60/0.5 · (1 − 0.5/1.5) = 120 · 2/3
const C = 80;
// (2) f = 0.5 · 5^−0.2
const f = 0.5 / Math.pow(5, 0.2);
// (3) root of 20 s; paper 2·f·√20 < C; board 3·f·√20
const root20 = Math.sqrt(20);
const [up, ub] = [2 * f * root20, 3 * f * root20];
// (5) half of the evaporation leaves through the sheet
const e = 0.01;
// (6) N = 80 · (1 − 0.5/0.64) = 80 · 0.21875
const N = 17.5;
const p = Math.min(1, (up + ub + e * 20) / N);

describe('a joint of round numbers', () => {
  const line = bondLine(joint);

  test('2: mobility', () => {
    expect(f).toBeCloseTo(0.36239, 4); // 5^0.2 = 1.379730
    expect(mobility(5000, constants)).toBeCloseTo(f, 12);
    expect(mobility(10, constants)).toBe(1);
  });

  test('3: uptake of both sides', () => {
    expect(line.uptake.paper).toBeCloseTo(up, 10);
    expect(line.uptake.substrate).toBeCloseTo(ub, 10);
    expect(up + ub).toBeLessThan(0.85 * 80 * 0.5);
  });

  test('1 and 4: the sheet fills, and the coat runs dry', () => {
    // the paper is full, at C, before the coat has given its 0.85 · 80 · 0.5; the board drinks the rest, and then nothing moves
    const drainable = 0.85 * 80 * 0.5;
    const late = bondLine({ ...joint, seconds: 90_000 });
    const together = drainable / ((2 + 3) * f);
    const paper = Math.min(C, 2 * f * together);
    expect(late.uptake.paper).toBeCloseTo(paper, 9);
    expect(late.uptake.substrate).toBeCloseTo(drainable - paper, 9);
    // a sheet that holds less: 20 g/m² at 1.25 g/cm³ has 16 µm · (1 − 1.25/1.5) = 2.667 g/m² of pore
    const thin = bondLine({ ...joint, paper: { ...joint.paper, grammage: 20, density: 1.25 }, seconds: 90_000 });
    expect(thin.uptake.paper).toBeCloseTo(2.6667, 3);
    expect(thin.uptake.substrate).toBeCloseTo(drainable - 2.6667, 3);
  });

  test('5: evaporation into a still room', () => {
    // 20 °C: 2.339 kPa full; x = 0.621945·pv/(101.325 − pv)
    const full = (0.621945 * 2.339) / (101.325 - 2.339);
    const half = (0.621945 * 1.1695) / (101.325 - 1.1695);
    expect(evaporationRate(20, 50)).toBeCloseTo(((25 + 19 * 0.1) * (full - half) * 1000) / 3600, 4);
  });

  test('6 and 7: setting progress', () => {
    expect(p).toBeGreaterThan(0.3);
    expect(p).toBeLessThan(1);
    expect(line.settingProgress).toBeCloseTo(p, 10);
    // it gels at the grab level, 0.7: at 20 of 25 s it is 20/25 of the way there, unless water has brought it further
    expect(bondLine({ ...joint, adhesive: { ...adhesive, gelsIn: 25 } }).settingProgress).toBeCloseTo(
      Math.max(p, 0.56),
      10,
    );
    expect(bondLine({ ...joint, adhesive: { ...adhesive, gelsIn: 21 } }).settingProgress).toBeCloseTo(
      Math.max(p, 0.7 * (20 / 21)),
      10,
    );
  });

  test('8: slip time is when the loss reaches 0.7 of the need', () => {
    const { slipSeconds: t } = line;
    expect((2 + 3) * f * Math.sqrt(t) + e * t).toBeCloseTo(0.7 * 17.5, 6);
    expect(bondLine({ ...joint, adhesive: { ...adhesive, gelsIn: 4 } }).slipSeconds).toBe(4);
    expect(bondLine({ ...joint, adhesive: { ...adhesive, grabSolids: 0.999, coat: 4000 } }).slipSeconds).toBe(3600);
  });

  // (9) W_h = min(60, 0.5·100) = 50
  const w = up / (50 * 0.9);
  test('9 and 10: wetness of the layer, strength of the sheet', () => {
    expect(line.wetness).toBeCloseTo(w, 10);
    expect(line.wetStrength).toBeCloseTo(0.4 * 50 * 30 * (1 - w * 0.9), 8);
  });

  test('11: strength of the face', () => {
    expect(line.faceStrength).toBeCloseTo(108, 10);
  });

  const F = (0.8 + 0.2 * f) * (15 + 250 * 0.5 * p * p);
  test('12: pull', () => {
    expect(line.pull).toBeCloseTo(F, 8);
  });

  test('13: margin, and which side gives', () => {
    expect(line.liftMargin).toBeCloseTo(108 / F, 8);
    const weak = bondLine({ ...joint, paper: { ...paper, tensileIndex: 1 } });
    expect(weak.liftMargin).toBeCloseTo((0.4 * 50 * 1 * (1 - w * 0.9)) / F, 8);
    expect(weak.gives).toBe('paper');
    expect(bondLine({ ...joint, substrate: { ...substrate, faceStrength: 0.1 } }).gives).toBe('substrate');
  });
});

describe('spreading', () => {
  test('14: viscosity of a mix', () => {
    expect(solutionViscosity(0.5)).toBeCloseTo(25.62890625, 8); // 1.5^8
    // (1 − 0.32/0.64)^(−1.6) = 2^1.6
    expect(dispersionViscosity({ volumeFraction: 0.32, continuousMilliPascalSeconds: 10 })).toBeCloseTo(30.31433, 4);
  });
  // (15) 5 Pa·s at 2500/s is 12 500 Pa; (12 500/100)^0.6
  const under = 5000 / (1 + Math.pow(125, 0.6));
  test('15: under the brush', () => {
    expect(brushingViscosity(5000)).toBeCloseTo(under, 8);
  });
  test('16: spread margin', () => {
    const margin = spreadMargin({ grammage: 60, viscosity: 5000, toolDrag: 0.5, constants });
    expect(margin).toBeCloseTo(Math.pow(60 / 14, 1.5) / ((under / 1000) * 0.5), 8);
  });
});

describe('holding and lying flat', () => {
  const bench: Bench = {
    paper: { ...paper, wetExpansion: 0.02, openWeave: 0 },
    substrate: { ...substrate, thickness: 2, modulus: 3000, openWeave: 0 },
    face: 'leather',
    plastic: false,
    closed: false,
    lined: false,
    task: 'mount',
    alcoholEvaporation: 0.4,
    way: { face: 'sheet', minutes: 0, workSeconds: 20 },
    limp: false,
    spanMm: 300,
    squareMetres: 0.06,
    seconds: 20,
    celsius: 20,
    evaporation: 0.02,
    wants: { flexes: true, damp: true, flat: false, strong: false, slow: false },
    tool: { drag: 1, coat: 80, thickest: 300_000 },
  };
  const glue: WetAdhesive = {
    id: 'a',
    name: 'a',
    short: 'a',
    form: 'wet',
    by: 'mass',
    parts: [],
    hold: { porous: 1, leather: 0.5, nonPorous: 0.1 },
    undoneWithWater: 'no',
    longLived: 'yes',
    flexes: 'partly',
    bearsDamp: 'no',
    childSafe: 'yes',
    needsHeat: false,
  };
  const liquid = {
    solids: 0.5,
    volumeSolids: 0.45,
    density: 1.1,
    viscosity: 5000,
    drains: 5000,
    underBrush: 1830,
    flow: { particles: 0.4, between: 0.5, strength: 0.5, pasteShare: 0, flowIndex: 1 },
    shows: 1,
    particleSolids: 1,
    grabSolids: 0.64,
    leastDryCoat: 10,
    pulls: 0,
    carrier: 'water',
  } as const;

  test('17: bond margin', () => {
    // 80·0.5/10 = 4 times the least; hold 0.5; a print mounted all over asks 0.8, and its stiffness 0.6^(½·½) of that
    const asked = 0.8 * Math.pow(0.6, 0.25) * 1.3 * 2.5;
    expect(wetMargins(glue, liquid, bench).bond).toBeCloseTo((4 * 0.5) / asked, 8);
  });

  test('18 and 19: growth, curvature, bow', () => {
    // 40 g/m² of water, 2/5 of it into the sheet; flatness goes by the fitted constants
    const load = 40;
    const soaked = Math.min(1, (load * 0.4) / 60 / BOND_CONSTANTS.soakedWater);
    const growth = 0.02 * soaked * LEFT_AFTER_PRESSING;
    // paper 0.12 mm, 105·30·0.5 MPa; board 2 mm, 3000 MPa
    const [m, n, h] = [0.12 / 2, (105 * 30 * 0.5) / 3000, 2.12];
    const curvature = (6 * growth * (1 + m) ** 2) / (h * (3 * (1 + m) ** 2 + (1 + m * n) * (m * m + 1 / (m * n))));
    // of 300 mm 0.02 is let pass, and of a print that is mounted to be looked at 0.6 of that
    const margin = (0.6 * 0.02 * 300) / ((curvature * 300 * 300) / 8);
    expect(flatMargin(load, bench)).toBeCloseTo(margin, 6);
    expect(flatMargin(load, { ...bench, task: 'cover' })).toBeCloseTo(margin / 0.6, 6);
    // a film that pulls with 200 N/m does what growth of 200 / (modulus of 1575 MPa · 0.12 mm) does
    expect(flatMargin(load, bench, 200)).toBeCloseTo((margin * growth) / (growth + 200 / (1575e3 * 0.12)), 6);
    // lined on the other side, 0.35 of the bow is left
    expect(flatMargin(load, { ...bench, lined: true })).toBeCloseTo(flatMargin(load, bench) / 0.35, 6);
    // on a limp ground: what growth pressing leaves, against 0.012
    expect(flatMargin(load, { ...bench, limp: true })).toBeCloseTo(0.012 / growth, 8);
  });
});

describe('from a margin to a chance', () => {
  test('20: a range is two triangles that meet at the middle', () => {
    const range = { low: 10, middle: 20, high: 60, basis: 'estimate' } as const;
    expect(at(range, 0)).toBeCloseTo(10, 10);
    expect(at(range, 0.125)).toBeCloseTo(15, 10); // √0.25 = ½ of the way
    expect(at(range, 0.5)).toBeCloseTo(20, 10);
    expect(at(range, 0.875)).toBeCloseTo(40, 10); // 60 − 40·½
    expect(at(range, 1)).toBeCloseTo(60, 10);
  });
  test('21: the fifth power', () => {
    expect(holds(1)).toBeCloseTo(0.5, 12);
    expect(holds(2)).toBeCloseTo(32 / 33, 12);
    expect(holds(0.5)).toBeCloseTo(1 / 33, 12);
  });
});

describe('what is shown', () => {
  const shown = RELATIONS.flatMap(({ relations }) => relations);
  test('relations are numbered from 1 without a gap', () => {
    expect(shown.map(({ number }) => number)).toEqual(shown.map((_, i) => i + 1));
  });
  test('every symbol of every relation is in one of the tables', () => {
    const explained = [...SYMBOLS, ...FIXED].map(({ tex }) => tex).concat(Object.values(CONSTANT_SYMBOLS));
    const known = new Set(explained.flatMap((tex) => signs(tex)));
    const missing = shown.flatMap(({ number, tex }) =>
      signs(tex)
        .filter((sign) => !known.has(sign))
        .map((s) => `(${number}) ${s}`),
    );
    expect(missing).toEqual([]);
  });
});

/** The signs in a piece of TeX: a letter or Greek name with its subscript, commands of layout left out. */
function signs(tex: string): string[] {
  const layout = /\\(?:frac|left|right|min|max|sqrt|sum|cdot|qquad|begin|end|cases|ge|le|mathrm|dot|[,;! ])|\{cases\}/g;
  const bare = tex
    .replaceAll('\\dot\\gamma', 'γ')
    .replaceAll(/_\{\\mathrm\{[^}]*\}\}/g, '')
    .replaceAll(/\\sum_i|\\sum_\{[^}]*\}\^\{?\w\}?/g, ' ')
    .replaceAll(layout, ' ');
  return [...bare.matchAll(/(\\[a-zA-Z]+|[a-zA-Zγ])(_(?:\w|\{\w+\}))?/g)].map(([, base = '', sub = '']) => base + sub);
}
