/**
 * Four margins of one adhesive on one bench of round numbers, worked out by hand from the relations of "How the
 * model works" and from what the records say their figures mean. The constants of the model stand by name.
 */
import type { Bench } from '../../../src/core/joint/bench';
import { describe, expect, it } from 'vitest';
import type { Liquid } from '../../../src/core/adhesive/liquid';
import {
  DAMP_DEMAND,
  dryMargins,
  easeOf,
  FLEX_DEMAND,
  NO_FILM,
  wetMargins,
  type DryPoint,
} from '../../../src/core/joint/margins';
import { bearing } from '../../../src/core/joint/spread';
import { coated, laidMargins, type LaidAsks } from '../../../src/core/learn/laid';
import { BOND_CONSTANTS } from '../../../src/core/joint/constants';
import { poreVolume } from '../../../src/core/paper/paper';
import type { DryAdhesive, WetAdhesive } from '../../../src/core/records/records';
import { TASK_TRAITS } from '../../../src/core/records/task';

const { bearingExponent, boardFace, brushedGrammage, freshPull } = BOND_CONSTANTS;
/** What a laminate bears of what a cover does (task.ts), a judgement of ours. */
const LOAD = TASK_TRAITS.laminate.load;

/** Nothing goes anywhere unless a test says so: a closed board, still air, a sheet that hardly drinks. */
const bench: Bench = {
  paper: {
    grammage: 100,
    density: 0.5,
    sorptivity: 1e-9,
    tensileIndex: 30,
    wetRetention: 0.1,
    contact: 1,
    wetExpansion: 0.02,
    openWeave: 0,
  },
  substrate: { sorptivity: 0, faceStrength: 1, thickness: 2, modulus: 3000, openWeave: 0 },
  plastic: false,
  closed: false,
  lined: false,
  alcoholEvaporation: 0,
  task: 'laminate',
  way: { face: 'sheet', minutes: 0, workSeconds: 0.001 },
  face: 'porous',
  limp: true,
  spanMm: 200,
  squareMetres: 0.03,
  seconds: 0,
  celsius: 20,
  evaporation: 0,
  wants: { flexes: false, damp: false, flat: false, strong: false, slow: false },
  tool: { drag: 1, coat: 100, thickest: 1e6 },
};
const on = (change: Partial<Bench>): Bench => ({ ...bench, ...change });
const weighing = (grammage: number) => on({ paper: { ...bench.paper, grammage } });

const traits = {
  id: 'one',
  name: 'One',
  short: 'one',
  undoneWithWater: 'yes',
  longLived: 'yes',
  childSafe: 'yes',
  flexes: 'partly',
  bearsDamp: 'no',
  needsHeat: false,
  hold: { porous: 1, leather: 0.5, nonPorous: 0.25 },
} as const;
const glue: WetAdhesive = { ...traits, form: 'wet', by: 'mass', parts: [] };
const liquid: Liquid = {
  solids: 0.2,
  volumeSolids: 0.15,
  density: 1,
  viscosity: 4000,
  drains: 4000,
  underBrush: 1000,
  grabSolids: 0.5,
  leastDryCoat: 10,
  carrier: 'water',
  shows: 1,
  particleSolids: 0,
  pulls: 0,
  // a liquid that does not thin: 1.5874⁸ is 40.3 mPa·s, at rest and under the brush
  flow: { particles: 0, between: 1, strength: 0.5874, pasteShare: 1, flowIndex: 1 },
};
const wet = (of: Partial<Liquid>, here: Bench = bench, adhesive = glue) =>
  wetMargins(adhesive, { ...liquid, ...of }, here);

const range = { low: 1, middle: 1, high: 1, basis: 'estimate' } as const;
const film: DryAdhesive = {
  ...traits,
  form: 'dry',
  slip: range,
  pull: range,
  waterLoad: range,
  drag: range,
  strength: range,
  appliedWith: 'hand',
  hazards: [],
};
const point: DryPoint = { slip: 7, pull: 10, waterLoad: 10, drag: 1, strength: 3 };
const dry = (of: Partial<DryPoint>, here: Bench = bench) => dryMargins(film, { ...point, ...of }, here);

describe('spreading', () => {
  const thick = (milliPascalSeconds: number): Partial<Liquid> => ({
    flow: { ...liquid.flow, strength: Math.pow(milliPascalSeconds, 1 / 8) - 1 },
  });
  it('goes by weight over the viscosity under the brush and the drag (relation 16)', () => {
    const light = weighing(2 * brushedGrammage);
    const bears = Math.pow(2, bearingExponent);
    expect(wet(thick(1000), light).spread).toBeCloseTo(bears, 6);
    expect(wet(thick(4000), light).spread).toBeCloseTo(bears / 4, 6);
    expect(wet(thick(1000), { ...light, tool: { ...light.tool, drag: 4 } }).spread).toBeCloseTo(bears / 4, 6);
  });
  it('is worse by as many times as the liquid is thicker than the tool can spread, and no better when it is thinner', () => {
    const with1000 = { ...weighing(brushedGrammage), tool: { ...bench.tool, thickest: 1000 } };
    expect(wet({ ...thick(1000), viscosity: 4000 }, with1000).spread).toBeCloseTo(0.25, 6);
    expect(wet({ ...thick(1000), viscosity: 1000 }, with1000).spread).toBeCloseTo(1, 6);
    expect(wet({ ...thick(1000), viscosity: 10 }, with1000).spread).toBeCloseTo(1, 6);
  });
  it('a thirsty sheet takes the water that lets a dispersion move; a jelly hardly changes', () => {
    const particles: Partial<Liquid> = {
      solids: 0.5,
      flow: { particles: 0.45, between: 0.5, strength: 0.5, pasteShare: 0, flowIndex: 1 },
    };
    const light = weighing(brushedGrammage);
    const thirsty = { ...light, paper: { ...light.paper, sorptivity: 15 } };
    const [slow, fast] = [wet(particles, light).spread, wet(particles, thirsty).spread];
    expect(fast).toBeLessThan(slow / 2);
    const jelly: Partial<Liquid> = { solids: 0.02, flow: { ...liquid.flow, pasteShare: 0, strength: 3 } };
    expect(wet(jelly, thirsty).spread).toBeGreaterThan(wet(jelly, light).spread / 2);
  });
  it('does not ask anything of the sheet where the board is brushed', () => {
    const ground = on({ way: { ...bench.way, face: 'ground' }, paper: { ...bench.paper, grammage: 5 } });
    expect(wet(thick(100_000), ground).spread).toBeGreaterThan(10);
  });
  it('of a dry one: drag 1 is what a sheet of 45 g/m² just bears, as its records say', () => {
    expect(dry({}, weighing(45)).spread).toBeCloseTo(1, 12);
    expect(dry({}, weighing(90)).spread).toBeCloseTo(2, 12);
    expect(dry({ drag: 4 }, weighing(90)).spread).toBeCloseTo(0.5, 12);
  });
  it('a margin past a hundredfold either way is given as a hundredfold', () => {
    expect(dry({ drag: 0 }).spread).toBe(100);
    expect(dry({ drag: 1e6 }).spread).toBe(0.01);
    expect(dry({ pull: 1e-9 }).lift).toBe(100);
    expect(dry({ waterLoad: 0 }).flat).toBe(100);
  });
});

describe('a swatch that is laid at once', () => {
  const laid = (of: Partial<Liquid>, here: Bench, asks: LaidAsks) => {
    const one = { ...liquid, ...of };
    const { grammage, density } = here.paper;
    const coat = coated(glue, one, here, BOND_CONSTANTS, easeOf(glue, one, here.celsius));
    return laidMargins(coat, here, poreVolume(grammage, grammage / density), bearing(grammage, BOND_CONSTANTS), asks);
  };
  const none = { spread: NaN, lift: NaN, sheetToFace: NaN, flat: NaN, bond: NaN };
  it('has the margins that any sheet has: of spreading, lifting, holding and lying flat', () => {
    const benches = [
      weighing(20),
      weighing(250),
      on({ limp: true }),
      on({ closed: true, seconds: 300 }),
      on({ celsius: 2, wants: { ...bench.wants, flexes: true, damp: true, flat: true } }),
    ];
    const liquids: Partial<Liquid>[] = [
      {},
      { carrier: 'alcohol' },
      { solids: 0.55, grabSolids: 0.6, pulls: 10, filmFormsAbove: 10 },
      { viscosity: 1e6 },
    ];
    for (const here of benches)
      for (const of of liquids) {
        const { spread, lift, sheetToFace, flat, bond } = wet(of, here);
        const all = { spread, lift, sheetToFace, flat, bond };
        expect(laid(of, here, { spread: true, lift: true, dry: true })).toEqual(all);
        // what is not asked is left out
        expect(laid(of, here, { spread: true, lift: false, dry: false })).toEqual({ ...none, spread });
        expect(laid(of, here, { spread: false, lift: true, dry: false })).toEqual({ ...none, lift, sheetToFace });
        expect(laid(of, here, { spread: false, lift: false, dry: true })).toEqual({ ...none, flat, bond });
      }
  });
});

describe('the bond', () => {
  it('is the dry coat over the least that is needed, on a sheet of 100 g/m²', () => {
    // 100 g/m² wet at 20 % solids leaves 20 dry, where 10 are needed
    expect(wet({}).bond).toBeCloseTo(2 / LOAD, 12);
    expect(wet({ leastDryCoat: 40 }).bond).toBeCloseTo(0.5 / LOAD, 12);
    expect(dry({}).bond).toBeCloseTo(3 / LOAD, 12);
  });
  it('holds on each face as the record says', () => {
    expect(wet({}, on({ face: 'leather' })).bond).toBeCloseTo(1 / LOAD, 12);
    expect(wet({}, on({ face: 'non-porous' })).bond).toBeCloseTo(0.5 / LOAD, 12);
    expect(dry({}, on({ face: 'leather' })).bond).toBeCloseTo(1.5 / LOAD, 12);
    expect(dry({}, on({ face: 'non-porous' })).bond).toBeCloseTo(0.75 / LOAD, 12);
    // a plastic back is the worse of two faces, and half as good for what is brought with water
    expect(dry({}, on({ plastic: true })).bond).toBeCloseTo((3 * 0.25 * 0.7) / LOAD, 12);
    expect(wet({}, on({ plastic: true })).bond).toBeCloseTo((2 * 0.25 * 0.5 * 0.7) / LOAD, 12);
  });
  it('is asked for more by a joint that bends or gets damp, by how well it bears that', () => {
    const bends = on({ wants: { ...bench.wants, flexes: true } });
    const damp = on({ wants: { ...bench.wants, damp: true } });
    const both = on({ wants: { ...bench.wants, flexes: true, damp: true } });
    expect(wet({}).bond / wet({}, bends).bond).toBeCloseTo(FLEX_DEMAND.partly, 12);
    expect(wet({}).bond / wet({}, damp).bond).toBeCloseTo(DAMP_DEMAND.no, 12);
    expect(dry({}).bond / dry({}, both).bond).toBeCloseTo(FLEX_DEMAND.partly * DAMP_DEMAND.no, 12);
  });
  it('under a cover grows with weight, and for no more than double, nor for less than 0.7; under a mend not at all', () => {
    const cover = (grammage: number) => wet({}, { ...weighing(grammage), task: 'cover' }).bond;
    const { load, springs } = TASK_TRAITS.cover;
    expect(cover(100)).toBeCloseTo(2 / load, 12);
    expect(cover(400)).toBeCloseTo(2 / load / Math.pow(4, springs / 2), 12);
    expect(cover(10)).toBeCloseTo(2 / load / 0.7, 12);
    const mend = (grammage: number) => wet({}, { ...weighing(grammage), task: 'mend' }).bond;
    expect(mend(400)).toBeCloseTo(mend(10), 12);
  });
  it('is asked for more where it must be strong', () => {
    const strong = on({ wants: { ...bench.wants, strong: true } });
    expect(wet({}).bond / wet({}, strong).bond).toBeCloseTo(1.6, 12);
  });
  it('is weak below the temperature at which the film forms (ISO 2115: the least at which it does)', () => {
    const needs = { filmFormsAbove: 12 };
    expect(wet(needs, on({ celsius: 12 })).bond).toBeCloseTo(2 / LOAD, 12);
    expect(wet(needs, on({ celsius: 11.9 })).bond).toBeCloseTo((2 * NO_FILM) / LOAD, 12);
    expect(wet({}, on({ celsius: 2 })).bond).toBeCloseTo(2 / LOAD, 12);
  });
});

describe('a carrier of alcohol', () => {
  it('leaves by its own vapour, whatever the water in the air: 42 g/m² at 0.4 a second, of which half gets out through the sheet', () => {
    // 100 · (1 − 0.2/0.5) = 60 to lose, 70 % of it until it grabs
    const airy = on({ evaporation: 0.1, alcoholEvaporation: 0.4 });
    expect(wet({}, airy).slipSeconds).toBeCloseTo(42 / 0.05, 1);
    expect(wet({ carrier: 'alcohol' }, airy).slipSeconds).toBeCloseTo(42 / 0.2, 1);
    const damp = { ...airy, evaporation: 0 };
    expect(wet({ carrier: 'alcohol' }, damp).slipSeconds).toBeCloseTo(42 / 0.2, 1);
  });
  it('wets half as fast, so that suction alone takes four times as long (Washburn: the square of the rate)', () => {
    const thirsty = on({ paper: { ...bench.paper, sorptivity: 10 } });
    // what also leaves into the air moves it by less than a hundredth
    const ratio = wet({ carrier: 'alcohol' }, thirsty).slipSeconds / wet({}, thirsty).slipSeconds;
    expect(Math.abs(ratio / 4 - 1)).toBeLessThan(0.01);
  });
  it('swells a fifth as much, so that a limp face cockles a fifth as much', () => {
    const board = on({ substrate: { ...bench.substrate, sorptivity: 1 }, paper: { ...bench.paper, sorptivity: 1 } });
    const flat = wet({}, board).flat;
    expect(flat).toBeLessThan(10);
    expect(wet({ carrier: 'alcohol' }, board).flat / flat).toBeCloseTo(5, 9);
    // and by the water there is: 80 of 100 g/m² against 40 of 50
    const half = { ...board, tool: { ...board.tool, coat: 50 } };
    expect(wet({}, half).flat / flat).toBeCloseTo(2, 9);
  });
});

describe('lifting', () => {
  it('a coat that has not begun to set pulls with its fresh pull where it touches, whatever it is made of', () => {
    // dry, 100 g/m² is held over its 177 µm layer of 88.5 g/m²: 0.373 · 88.5 · 30 = 990 N/m, so the board is the weaker
    expect(wet({}).lift).toBeCloseTo(boardFace / freshPull, 9);
    expect(wet({}, on({ substrate: { ...bench.substrate, faceStrength: 0.1 } })).lift).toBeCloseTo(
      (0.1 * boardFace) / freshPull,
      9,
    );
  });
  it('a coat on its way to gelling touches as a liquid eight times as thick would', () => {
    const rough = on({ paper: { ...bench.paper, contact: 0.3 } });
    const hot: WetAdhesive = { ...glue, usedAt: 90 };
    const gelling = wet({ drains: 5000, gelsAt: 80 }, rough, hot).lift;
    expect(gelling).toBeCloseTo(wet({ drains: 40_000 }, rough).lift, 9);
    // thick liquid bridges the hollows that thin liquid fills, so it pulls less
    expect(gelling).toBeGreaterThan(wet({ drains: 5000 }, rough).lift * 1.1);
    // in a room far warmer than that it does not gel
    expect(wet({ drains: 5000, gelsAt: -20 }, rough, hot).lift).toBeCloseTo(wet({ drains: 5000 }, rough).lift, 9);
  });
  it('of a dry one: what the weaker side bears over its pull where it touches', () => {
    expect(dry({ waterLoad: 0 }).lift).toBeCloseTo(boardFace / 10, 9);
    const half = on({ paper: { ...bench.paper, contact: 0.5 }, substrate: { ...bench.substrate, faceStrength: 0.2 } });
    expect(dry({ waterLoad: 0 }, half).lift).toBeCloseTo((0.2 * boardFace) / 5, 9);
  });
  it('of a dry one: the weaker side gives, and none while the margin is 1 or more', () => {
    const weakBoard = on({ substrate: { ...bench.substrate, faceStrength: 0.5 } });
    expect(dry({ pull: 0.5 * boardFace }, weakBoard)).toMatchObject({ lift: 1, gives: 'neither' });
    expect(dry({ pull: boardFace }, weakBoard)).toMatchObject({ lift: 0.5, gives: 'substrate' });
    // a sheet of 0.1 N·m/g bears 3.3 N/m at most
    const weakPaper = on({ paper: { ...bench.paper, tensileIndex: 0.1 } });
    expect(dry({ pull: 1, waterLoad: 0 }, weakPaper).gives).toBe('neither');
    expect(dry({ pull: 100, waterLoad: 0 }, weakPaper).gives).toBe('paper');
  });
  it('of a dry one: the slip is its own', () => {
    expect(dry({ slip: 33 }).slipSeconds).toBe(33);
  });
});
