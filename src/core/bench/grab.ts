/**
 * Grab on a strip: pushed with a fingertip every few seconds until it no longer slides. The model reckons that time from
 * the coat, the board, the sheet, and the share of solids at which the glue grabs; turned round, the time says what that
 * share is.
 */
import { liquidOf } from '../adhesive/liquid';
import type { Range } from '../base/quantity';
import { mustBePositive } from '../base/result';
import type { Bench } from '../joint/bench';
import { LONGEST_SLIP_SECONDS } from '../joint/constants';
import { wetMargins } from '../joint/margins';
import { ethanolEvaporationRate, evaporationRate } from '../joint/moisture';
import { workingSeconds } from '../joint/way';
import type { Sheet } from '../paper/sheet';
import type { Catalogue, Substrate, Technique, WetAdhesive } from '../records/records';
import { STRIP } from './grabs-by';
import { carried, logStandardOf, ofStep, spreadOfFew, type BenchReading } from './uncertain';

/** An ordinary room; a degree or ten per cent more move the time by less than a push does. */
const ROOM = { celsius: 20, humidity: 50 };

export interface Strip {
  /** s from laying until it no longer slid, of each strip */
  readonly seconds: readonly number[];
  /** s between two pushes */
  readonly every: number;
  readonly adhesive: WetAdhesive;
  readonly sheet: Sheet;
  readonly board: Substrate;
  readonly tool: Technique;
}

/** The strip as the model takes it, every number at its middle but the three that are handed in. */
function benchOf({ sheet, board, tool }: Strip, coat: number, boardDrinks: number, sheetDrinks: number): Bench {
  const { widthMm, heightMm } = STRIP;
  return {
    face: board.face,
    limp: board.limp,
    spanMm: heightMm,
    squareMetres: (widthMm * heightMm) / 1e6,
    seconds: 5,
    celsius: ROOM.celsius,
    evaporation: evaporationRate(ROOM.celsius, ROOM.humidity),
    alcoholEvaporation: ethanolEvaporationRate(ROOM.celsius),
    closed: sheet.closed ?? false,
    task: 'cover',
    lined: false,
    plastic: Boolean(sheet.plasticBack || board.plastic),
    way: { face: 'sheet', minutes: 0, workSeconds: workingSeconds(widthMm, heightMm) },
    wants: { flexes: false, damp: false, flat: false, strong: false, slow: false },
    paper: {
      grammage: sheet.grammage.middle,
      density: sheet.density.middle,
      sorptivity: sheetDrinks,
      tensileIndex: sheet.tensileIndex.middle,
      wetRetention: sheet.wetRetention.middle,
      contact: sheet.contact.middle,
      wetExpansion: sheet.wetExpansion.middle,
      openWeave: sheet.openWeave?.middle ?? 0,
    },
    substrate: {
      sorptivity: boardDrinks,
      faceStrength: board.faceStrength.middle,
      thickness: board.thickness.middle,
      modulus: board.modulus.middle,
      openWeave: board.openWeave?.middle ?? 0,
    },
    tool: { drag: tool.drag.middle, coat, thickest: tool.thickest },
  };
}

/** Seconds for which the strip slides where its glue grabs at this share of solids, by the model at its middle. */
export function slipAt(strip: Strip, grabSolids: number, catalogue: Catalogue): number {
  const { tool, board, sheet } = strip;
  return slipOf(strip, grabSolids, tool.coat.middle, board.sorptivity.middle, sheet.sorptivity.middle, catalogue);
}

function slipOf(
  strip: Strip,
  grabSolids: number,
  coat: number,
  boardDrinks: number,
  sheetDrinks: number,
  catalogue: Catalogue,
): number {
  // Of what is drawn from the records only where it grabs is another.
  const liquid = { ...liquidOf(strip.adhesive, catalogue), grabSolids };
  return wetMargins(strip.adhesive, liquid, benchOf(strip, coat, boardDrinks, sheetDrinks)).slipSeconds;
}

/** Steps of halving: to a millionth of the share. */
const HALVINGS = 20;
/** Strips of one hand differ by so much, as a share of the time, where only one was laid. Estimate. */
const STRIP_SPREAD = 0.2;

/**
 * The share of solids at which the glue grabs, as the model must have it to slide for so long; its uncertainty is that
 * of the readings, the coat, the board and the sheet. Undefined where no share would give that time.
 */
export function grabOfStrips(strip: Strip, catalogue: Catalogue): BenchReading | undefined {
  const { seconds, every, adhesive, tool, board, sheet } = strip;
  mustBePositive('strips', seconds.length);
  mustBePositive('every', every);
  // A push finds it stuck only after the fact: on the average half a step late.
  const mean = seconds.reduce((sum, one) => sum + one, 0) / seconds.length;
  const slid = Math.max(0.5, mean - every / 2);
  const solids = liquidOf(adhesive, catalogue).solids;
  const shareFor = ([time, coat, boardDrinks, sheetDrinks]: readonly number[]): number => {
    let [low, high] = [solids, 1];
    for (let i = 0; i < HALVINGS; i += 1) {
      const share = (low + high) / 2;
      if (slipOf(strip, share, coat!, boardDrinks!, sheetDrinks!, catalogue) < time!) low = share;
      else high = share;
    }
    return (low + high) / 2;
  };
  const middle = [slid, tool.coat.middle, board.sorptivity.middle, sheet.sorptivity.middle];
  if (slid >= LONGEST_SLIP_SECONDS || slipAt(strip, 0.999, catalogue) < slid) return undefined;
  const spread = spreadOfFew(seconds, STRIP_SPREAD);
  const standardOf = (range: Range) => (range.low > 0 ? range.middle * logStandardOf(range) : 0);
  const standards = [
    Math.min(slid / 2, Math.hypot(ofStep(every), spread / Math.sqrt(seconds.length))),
    standardOf(tool.coat),
    standardOf(board.sorptivity),
    standardOf(sheet.sorptivity),
  ];
  return { value: shareFor(middle), standard: carried(shareFor, middle, standards) };
}
