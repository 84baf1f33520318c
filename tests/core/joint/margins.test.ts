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
  FLEX_DEMAND,
  NO_FILM,
  wetMargins,
  type DryPoint,
} from '../../../src/core/joint/margins';
import { BOND_CONSTANTS } from '../../../src/core/joint/constants';
import type { DryAdhesive, WetAdhesive } from '../../../src/core/records/records';

const { boardFace, brushedGrammage, freshPull } = BOND_CONSTANTS;

/** Nothing goes anywhere unless a test says so: a closed board, still air, a sheet that hardly drinks. */
const bench: Bench = {
  paper: {
    ...{ grammage: 100, density: 0.5, sorptivity: 1e-9, tensileIndex: 30, wetRetention: 0.1, contact: 1 },
    wetExpansion: 0.02,
  },
  substrate: { sorptivity: 0, faceStrength: 1, thickness: 2, modulus: 3000 },
  face: 'porous',
  limp: true,
  spanMm: 200,
  seconds: 0,
  celsius: 20,
  evaporation: 0,
  wants: { flexes: false, damp: false, flat: false },
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
  ...{ solids: 0.2, volumeSolids: 0.15, density: 1, viscosity: 4000, underBrush: 1000 },
  ...{ grabSolids: 0.5, leastDryCoat: 10, carrier: 'water' },
};
const wet = (of: Partial<Liquid>, here: Bench = bench, adhesive = glue) =>
  wetMargins(adhesive, { ...liquid, ...of }, here);

const range = { low: 1, middle: 1, high: 1, basis: 'estimate' } as const;
const film: DryAdhesive = {
  ...{ ...traits, form: 'dry', slip: range, pull: range, waterLoad: range, drag: range, strength: range },
  appliedWith: 'hand',
  hazards: [],
};
const point: DryPoint = { slip: 7, pull: 10, waterLoad: 10, drag: 1, strength: 3 };
const dry = (of: Partial<DryPoint>, here: Bench = bench) => dryMargins(film, { ...point, ...of }, here);

describe('spreading', () => {
  it('goes by weight over the viscosity under the brush and the drag (relation 8)', () => {
    const light = weighing(2 * brushedGrammage);
    expect(wet({}, light).spread).toBeCloseTo(2, 12);
    expect(wet({ underBrush: 4000 }, light).spread).toBeCloseTo(0.5, 12);
    expect(wet({}, { ...light, tool: { ...light.tool, drag: 4 } }).spread).toBeCloseTo(0.5, 12);
  });
  it('is worse by as many times as the liquid is thicker than the tool can spread, and no better when it is thinner', () => {
    const with1000 = { ...weighing(2 * brushedGrammage), tool: { ...bench.tool, thickest: 1000 } };
    expect(wet({ viscosity: 4000 }, with1000).spread).toBeCloseTo(0.5, 12);
    expect(wet({ viscosity: 1000 }, with1000).spread).toBeCloseTo(2, 12);
    expect(wet({ viscosity: 10 }, with1000).spread).toBeCloseTo(2, 12);
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

describe('the bond', () => {
  it('is the dry coat over the least that is needed, on a sheet of 100 g/m²', () => {
    // 100 g/m² wet at 20 % solids leaves 20 dry, where 10 are needed
    expect(wet({}).bond).toBeCloseTo(2, 12);
    expect(wet({ leastDryCoat: 40 }).bond).toBeCloseTo(0.5, 12);
    expect(dry({}).bond).toBeCloseTo(3, 12);
  });
  it('holds on each face as the record says', () => {
    expect(wet({}, on({ face: 'leather' })).bond).toBeCloseTo(1, 12);
    expect(wet({}, on({ face: 'non-porous' })).bond).toBeCloseTo(0.5, 12);
    expect(dry({}, on({ face: 'leather' })).bond).toBeCloseTo(1.5, 12);
    expect(dry({}, on({ face: 'non-porous' })).bond).toBeCloseTo(0.75, 12);
  });
  it('is asked for more by a joint that bends or gets damp, by how well it bears that', () => {
    const bends = on({ wants: { ...bench.wants, flexes: true } });
    const damp = on({ wants: { ...bench.wants, damp: true } });
    const both = on({ wants: { ...bench.wants, flexes: true, damp: true } });
    expect(wet({}).bond / wet({}, bends).bond).toBeCloseTo(FLEX_DEMAND.partly, 12);
    expect(wet({}).bond / wet({}, damp).bond).toBeCloseTo(DAMP_DEMAND.no, 12);
    expect(dry({}).bond / dry({}, both).bond).toBeCloseTo(FLEX_DEMAND.partly * DAMP_DEMAND.no, 12);
  });
  it('is asked for twice as much by four times the weight, and for no more past that, nor for less than 0.7', () => {
    expect(wet({}, weighing(400)).bond).toBeCloseTo(1, 12);
    expect(wet({}, weighing(590)).bond).toBeCloseTo(1, 12);
    expect(wet({}, weighing(49)).bond).toBeCloseTo(2 / 0.7, 12);
    expect(wet({}, weighing(10)).bond).toBeCloseTo(2 / 0.7, 12);
  });
  it('is weak below the temperature at which the film forms (ISO 2115: the least at which it does)', () => {
    const needs = { filmFormsAbove: 12 };
    expect(wet(needs, on({ celsius: 12 })).bond).toBeCloseTo(2, 12);
    expect(wet(needs, on({ celsius: 11.9 })).bond).toBeCloseTo(2 * NO_FILM, 12);
    expect(wet({}, on({ celsius: 2 })).bond).toBeCloseTo(2, 12);
  });
});

describe('a carrier of alcohol', () => {
  it('leaves six times as fast by air: 36 g/m² at 0.1 a second, of which half gets out through the sheet', () => {
    // 100 · (1 − 0.2/0.5) = 60 to lose, 60 % of it until it grabs
    const airy = on({ evaporation: 0.1 });
    expect(wet({}, airy).slipSeconds).toBeCloseTo(36 / 0.05, 2);
    expect(wet({ carrier: 'alcohol' }, airy).slipSeconds).toBeCloseTo(36 / 0.05 / 6, 2);
  });
  it('wets half as fast, so that suction alone takes four times as long (Washburn: the square of the rate)', () => {
    const thirsty = on({ paper: { ...bench.paper, sorptivity: 4 } });
    expect(wet({ carrier: 'alcohol' }, thirsty).slipSeconds / wet({}, thirsty).slipSeconds).toBeCloseTo(4, 9);
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
    const hot: WetAdhesive = { ...glue, usedAt: 60 };
    const gelling = wet({ viscosity: 5000, gelsAt: 30 }, rough, hot).lift;
    expect(gelling).toBeCloseTo(wet({ viscosity: 40_000 }, rough).lift, 9);
    // thick liquid bridges the hollows that thin liquid fills, so it pulls less
    expect(gelling).toBeGreaterThan(wet({ viscosity: 5000 }, rough).lift * 1.1);
    // in a room as warm as that it does not gel
    expect(wet({ viscosity: 5000, gelsAt: 30 }, { ...rough, celsius: 30 }, hot).lift).toBeCloseTo(
      wet({ viscosity: 5000 }, rough).lift,
      9,
    );
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
