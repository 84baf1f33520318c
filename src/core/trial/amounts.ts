/** What a trial takes: time, paper, board and adhesive. */
import type { Range } from '../base/quantity';
import { swatchCount, type Design } from './design';

export interface AmountsNeeded {
  readonly swatches: number;
  /** minutes at the bench, without drying */
  readonly minutes: { readonly low: number; readonly high: number };
  readonly perPaper: {
    /** swatches of each paper */
    readonly pieces: number;
    /** sheets of A4, grain kept one way; undefined when a swatch is larger than the sheet */
    readonly sheets: number | undefined;
  };
  readonly board: {
    readonly widthMm: number;
    readonly heightMm: number;
    readonly pieces: number;
    readonly sheets: number | undefined;
  };
  /** wet grams of each adhesive, with what stays in the brush */
  readonly gluePerAdhesive: { readonly low: number; readonly middle: number; readonly high: number };
}

/** Bench time a swatch takes besides its hold: to coat, lay, judge and write down. Estimate. */
const MINUTES_PER_SWATCH = { low: 1.5, high: 3.5 };
/** Board shows on every side, so that the swatch can be gripped and labelled. Choice of ours. */
export const BOARD_MARGIN_MM = 10;
/** What stays in the brush and the dish, as a multiple of what lies on the paper. Estimate. */
const LEFT_IN_BRUSH = 1.5;
const A4 = { width: 210, height: 297 };

function sheetsOfA4(pieces: number, widthMm: number, heightMm: number): number | undefined {
  const each = Math.floor(A4.width / widthMm) * Math.floor(A4.height / heightMm);
  return each > 0 ? Math.ceil(pieces / each) : undefined;
}

/** `coat` is the tool's wet coat, g/m². Sides in millimetres. */
export function amountsNeeded(design: Design, widthMm: number, heightMm: number, coat: Range): AmountsNeeded {
  const swatches = swatchCount(design);
  const holding = design.holds.reduce((sum, hold) => sum + hold, 0) / Math.max(1, design.holds.length) / 60;
  const ofPaper = swatches / Math.max(1, design.papers.length);
  const ofGlue = swatches / Math.max(1, design.glues.length);
  const grams = (wet: number) => ((ofGlue * widthMm * heightMm) / 1e6) * wet * LEFT_IN_BRUSH;
  const board = { widthMm: widthMm + 2 * BOARD_MARGIN_MM, heightMm: heightMm + 2 * BOARD_MARGIN_MM };
  return {
    swatches,
    minutes: {
      low: swatches * (MINUTES_PER_SWATCH.low + holding),
      high: swatches * (MINUTES_PER_SWATCH.high + holding),
    },
    perPaper: { pieces: ofPaper, sheets: sheetsOfA4(ofPaper, widthMm, heightMm) },
    board: { ...board, pieces: swatches, sheets: sheetsOfA4(swatches, board.widthMm, board.heightMm) },
    gluePerAdhesive: { low: grams(coat.low), middle: grams(coat.middle), high: grams(coat.high) },
  };
}
