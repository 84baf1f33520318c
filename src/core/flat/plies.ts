/** The covered board as plies, on one draw of everything that is not known to one digit. */
import { sheetPly, wettedShare } from '../joint/flatness';
import type { Direction, GrainedPly } from '../joint/curl';
import { densityIsPossible } from '../paper/paper';
import { isPaper, readPaper } from '../paper/own-paper';
import { at, type Range } from '../base/quantity';
import { lowDiscrepancyPoints } from '../base/random';
import type { Catalogue, Paper, Substrate } from '../records/records';
import { sheetOf } from '../paper/sheet';
import type { SheetGrain } from './plan';

/** Growth along the grain as a share of that across it. Marked grain: about a tenth, common practice (said on a list of book artists, 2000). A weak grain: estimate. */
export const GROWS_ALONG: Readonly<Record<Paper['grain'], number>> = { marked: 0.1, weak: 0.4, none: 1 };
/** Stiffness along the grain as a multiple of that across it: 3800 to 2200, the least strengths that a specification asks of writing paper along and across (not a measurement); taken for stiffness, an estimate. A weak grain: estimate. */
export const STIFFER_ALONG: Readonly<Record<Paper['grain'], number>> = { marked: 3800 / 2200, weak: 1.3, none: 1 };
/** Board: stiffness along and across its grain as a multiple of its record, which names no direction. From memory. */
export const BOARD_STIFFNESS = { along: 1.2, across: 0.83 };
/** Board: growth across its grain from dry to soaked, and that along as a share of it. From memory. */
export const BOARD_GROWTH: Range = { low: 0.005, middle: 0.009, high: 0.015, basis: 'from-memory' };
export const BOARD_GROWS_ALONG = 0.5;

/**
 * The paper of this text, from the shelf or one's own, of this weight in g/m² if one is given; undefined where
 * the text names none. Everything here that needs a paper asks for it by this.
 */
export function flatPaper(catalogue: Catalogue, text: string, weight?: number): Paper | undefined {
  if (!isPaper(text, catalogue)) return undefined;
  const own = readPaper(text)!;
  // A weight that makes the measured caliper impossible is another sheet of the kind.
  const fits = weight === undefined || own.caliper === undefined || densityIsPossible(weight, own.caliper);
  const { caliper, ...rest } = own;
  const known = fits && caliper !== undefined ? { ...rest, caliper } : rest;
  return sheetOf({ paper: weight === undefined ? known : { ...known, grammage: weight } }, catalogue);
}

export interface SheetOnBoard {
  readonly paper: Paper;
  readonly grain: SheetGrain;
}

/** The work, its numbers still ranges. */
export interface FlatWork {
  readonly cover: SheetOnBoard;
  readonly lining?: SheetOnBoard;
  readonly board: Substrate;
  readonly boardGrain: Direction | 'unknown';
  /** g/m² of water that swells fibre, to each glued face */
  readonly water: Range;
}

const DRAWS = 64;
const DIMENSIONS = 19;
let points: Float64Array | undefined;

/** The same draws for every job, so that two of them are compared on the same sheets. */
export type PlyDraw = { readonly number: number; readonly of: (range: Range, dimension: number) => number };

/** Points spread evenly over what is uncertain of the work; the same for every visitor. */
export function draws(): readonly PlyDraw[] {
  const drawn = (points ??= lowDiscrepancyPoints(DRAWS, DIMENSIONS));
  return Array.from({ length: DRAWS }, (_, number) => ({
    number,
    of: (range, dimension) => at(range, drawn[number * DIMENSIONS + dimension]!),
  }));
}

/** Everything at the middle of its range; a grain that is not known is taken up the height. */
export const MIDDLE: PlyDraw = { number: 0, of: (range) => range.middle };

/** What a sheet does on this draw: its ply, how far it is soaked, and what soaking leaves of its stiffness. */
export interface DrawnSheet {
  readonly ply: Omit<GrainedPly, 'moisture'>;
  readonly wetted: number;
  readonly stiffWhenWet: number;
}

export interface DrawnWork {
  readonly cover: DrawnSheet;
  readonly lining?: DrawnSheet;
  readonly board: Omit<GrainedPly, 'moisture'>;
}

/** One possible version of the work: cover, lining and board within their stated ranges. */
export function drawWork({ cover, lining, board, boardGrain, water }: FlatWork, draw: PlyDraw): DrawnWork {
  const substrate = { sorptivity: draw.of(board.sorptivity, 14) };
  const load = draw.of(water, 16);
  const sheet = ({ paper, grain }: SheetOnBoard, from: number, coin: number): DrawnSheet => {
    const grammage = draw.of(paper.grammage, from);
    const tensileIndex = draw.of(paper.tensileIndex, from + 2);
    const { thickness, modulus } = sheetPly({ grammage, density: draw.of(paper.density, from + 1), tensileIndex });
    const wetted = wettedShare(load, { grammage, sorptivity: draw.of(paper.sorptivity, from + 4) }, substrate);
    const across = draw.of(paper.wetExpansion, from + 3);
    return {
      ply: {
        thickness,
        grain: grain === 'unknown' ? tossed(draw, coin) : grain,
        modulus: { across: modulus, along: modulus * STIFFER_ALONG[paper.grain] },
        expansion: { across, along: across * GROWS_ALONG[paper.grain] },
      },
      wetted,
      stiffWhenWet: 1 - (1 - draw.of(paper.wetRetention, from + 5)) * wetted,
    };
  };
  // The same sheet on both faces is the same draw: it comes from one pack.
  const alike = lining && lining.paper.id === cover.paper.id && sameWeight(lining.paper, cover.paper);
  return {
    cover: sheet(cover, 0, 0),
    ...(lining && { lining: sheet(lining, alike ? 0 : 6, alike ? 0 : 2) }),
    board: boardPly(board, boardGrain, draw),
  };
}

const sameWeight = (a: Paper, b: Paper): boolean => a.grammage.middle === b.grammage.middle;

function boardPly(board: Substrate, grain: FlatWork['boardGrain'], draw: PlyDraw): Omit<GrainedPly, 'moisture'> {
  const modulus = draw.of(board.modulus, 13);
  const growth = isPaperBoard(board) ? draw.of(BOARD_GROWTH, 15) : 0;
  const { along, across } = isPaperBoard(board) ? BOARD_STIFFNESS : { along: 1, across: 1 };
  return {
    thickness: draw.of(board.thickness, 12),
    grain: grain === 'unknown' ? tossed(draw, 1) : grain,
    modulus: { along: modulus * along, across: modulus * across },
    expansion: { across: growth, along: growth * BOARD_GROWS_ALONG },
  };
}

/** Glass, metal, plywood: taken to have no grain and not to move with the air. */
export const isPaperBoard = ({ id }: Substrate): boolean => /board/.test(id);

/** One way on half of the draws and the other way on the rest, each unknown by its own coin. */
const tossed = ({ number }: PlyDraw, coin: number): Direction => (((number >> coin) & 1) === 0 ? 'height' : 'width');
