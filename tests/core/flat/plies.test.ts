/** The layers of a board as the curl of a laminate takes them. */
import { describe, expect, it } from 'vitest';
import type { Paper } from '../../../src/core/records/records';
import { draws, drawWork, MIDDLE, flatPaper, type FlatWork } from '../../../src/core/flat/plies';
import { catalogue } from '../../../src/data/catalogue';
const only = (value: number) => ({ low: value, middle: value, high: value, basis: 'estimate' }) as const;

describe('plies', () => {
  // 100 g/m² at 0.7 g/cm³, 24 N·m/g, 2.4 % of growth, 3 against the board's 2.8 g/m² per √s
  const work = (change: Partial<FlatWork> = {}): FlatWork => ({
    cover: { paper: flatPaper(catalogue, 'wove-text')!, grain: 'height' },
    board: catalogue.substrates.get('binders-board')!,
    boardGrain: 'width',
    water: only(50),
    ...change,
  });
  it('the cover: thickness, stiffness each way, growth a tenth along, soaked by its share of the water', () => {
    const { cover } = drawWork(work(), MIDDLE);
    expect(cover.ply.grain).toBe('height');
    expect(cover.ply.thickness).toBeCloseTo(0.1 / 0.7, 9);
    // 105 MPa for each N·m/g and g/cm³; 3800 to 2200 m are the least breaking lengths a specification asks of writing paper
    expect(cover.ply.modulus.across).toBeCloseTo(105 * 24 * 0.7, 6);
    expect(cover.ply.modulus.along).toBeCloseTo((105 * 24 * 0.7 * 3800) / 2200, 6);
    expect(cover.ply.expansion.across).toBeCloseTo(0.024, 12);
    expect(cover.ply.expansion.along).toBeCloseTo(0.0024, 12);
    const wetted = (50 * 3) / 5.8 / 100 / 0.779;
    expect(cover.wetted).toBeCloseTo(wetted, 9);
    // it keeps 7 % when soaked
    expect(cover.stiffWhenWet).toBeCloseTo(1 - 0.93 * wetted, 9);
  });
  it('the board: 2 mm and 2500 MPa, a fifth stiffer along, and half the growth along', () => {
    const { board } = drawWork(work(), MIDDLE);
    expect(board).toEqual({
      thickness: 2,
      grain: 'width',
      modulus: { along: 2500 * 1.2, across: 2500 * 0.83 },
      expansion: { across: 0.009, along: 0.0045 },
    });
    const glass = drawWork(work({ board: catalogue.substrates.get('glass')! }), MIDDLE).board;
    expect(glass.modulus.along).toBe(glass.modulus.across);
    expect(glass.expansion).toEqual({ across: 0, along: 0 });
  });
  it('a lining is the same draw only where it is the same paper of the same weight', () => {
    const draw = draws()[5]!;
    const wetted = (lining: Paper) => {
      const drawn = drawWork(work({ lining: { paper: lining, grain: 'height' } }), draw);
      return [drawn.cover.ply.thickness, drawn.lining!.ply.thickness] as const;
    };
    const [cover, alike] = wetted(flatPaper(catalogue, 'wove-text')!);
    expect(alike).toBe(cover);
    const [, heavier] = wetted(flatPaper(catalogue, 'wove-text', 101)!);
    expect(heavier).not.toBeCloseTo(cover * 1.01, 6);
    expect(wetted(flatPaper(catalogue, 'marbled')!)[1]).not.toBe(cover);
  });
  it('a grain that is not known falls each way on half of the draws; the board’s by its own coin', () => {
    const open = draws().map((draw) =>
      drawWork(
        work({ cover: { paper: flatPaper(catalogue, 'wove-text')!, grain: 'unknown' }, boardGrain: 'unknown' }),
        draw,
      ),
    );
    const ways = open.map(({ cover, board }) => `${cover.ply.grain} ${board.grain}`);
    for (const way of ['height height', 'height width', 'width height', 'width width'])
      expect(ways.filter((one) => one === way)).toHaveLength(16);
    expect(drawWork(work({ boardGrain: 'unknown' }), MIDDLE).board.grain).toBe('height');
  });
  it('a weight that makes the measured thickness impossible is another sheet of the kind', () => {
    const own = 'wove-text~100gsm~140um';
    const density = (weight?: number) => flatPaper(catalogue, own, weight)!.density.middle;
    expect(density()).toBeCloseTo(100 / 140, 6);
    expect(density(120)).toBeCloseTo(120 / 140, 6);
    // 300 in 140 µm would be denser than fibre
    expect(density(300)).toBeCloseTo(0.7, 6);
    expect(flatPaper(catalogue, 'wove-text', 60)!.density.middle).toBeCloseTo(0.7, 6);
  });
});
