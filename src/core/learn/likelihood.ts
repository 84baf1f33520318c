/** How likely what was seen on a swatch is, where the margins are these. */
import type { Hand } from '../choose/draws';
import type { Margins } from '../joint/bench';
import type { Outcome } from '../trial/record';
import type { SwatchSeen } from './condition';

/** Swatches that are judged, or written down, as something else than they were. Estimate: 5 to 10 in 100. */
export const MISJUDGED = 0.07;
/** From one stroke of the brush to the next: the same width as in `holds` (choose/tally.ts). */
const STEEPNESS = 5;
/** "Partly" lies this far about the edge, in natural logs of the margin: at the edge itself 1 in 4. Estimate. */
const PARTLY = 0.1;

/** A logistic of that steepness in the log of the margin, moved by `PARTLY`: the power of the margin does it. */
const MOVED = Math.exp(STEEPNESS * PARTLY);
const powered = (margin: number): number => margin * margin * margin * margin * margin;

export type Shares = Readonly<Record<Outcome, number>>;

/** Chances of pass, partly and fail for one margin. */
export function sharesOf(margin: number): Shares {
  const fifth = powered(margin);
  const pass = fifth / (fifth + MOVED);
  const fail = 1 / (1 + fifth * MOVED);
  return { pass, fail, partly: 1 - pass - fail };
}

/** How likely it is to be written down so, where the margin is this. */
function said(seen: Outcome, margin: number): number {
  const fifth = powered(margin);
  const pass = fifth / (fifth + MOVED);
  const fail = 1 / (1 + fifth * MOVED);
  const share = seen === 'pass' ? pass : seen === 'fail' ? fail : 1 - pass - fail;
  return (1 - MISJUDGED) * share + (MISJUDGED / 2) * (1 - share);
}

type Shown = Pick<Margins, 'spread' | 'lift' | 'sheetToFace' | 'flat' | 'bond'>;

/**
 * How likely these outcomes are together where these margins come out in this hand, 0–1; 1 for none. A function of the
 * margins, for where one swatch is asked of very many versions: it makes nothing anew.
 */
export function likelihoodOf(seen: SwatchSeen): (margins: Shown, hand: Hand) => number {
  const { spread, lift, board, cockle, stuck } = seen;
  const [clean, fibres, torn, scuffed, cameAway] = LIFTED.map(
    ([paper, below]) => readAs(lift, paper) * readAs(board, below),
  ) as [number, number, number, number, number];
  const lifted = (lift ?? board) !== undefined;
  return (margins, hand) => {
    let together = 1;
    if (spread) together *= said(spread, margins.spread * hand.spread);
    if (lifted) {
      // as in `liftedShares`
      const fifth = powered(margins.lift * hand.lift);
      const pass = fifth / (fifth + MOVED);
      const fail = 1 / (1 + fifth * MOVED);
      const bears = powered(margins.sheetToFace);
      const face = bears / (1 + bears);
      const partly = 1 - pass - fail;
      together *=
        pass * clean + (partly * fibres + fail * torn) * (1 - face) + (partly * scuffed + fail * cameAway) * face;
    }
    if (cockle) together *= said(cockle, margins.flat);
    if (stuck) together *= said(stuck, margins.bond);
    return together;
  };
}

/** How likely it is to be written down so, when it was that. */
const readAs = (seen: Outcome | undefined, was: Outcome): number =>
  seen === undefined ? 1 : seen === was ? 1 - MISJUDGED : MISJUDGED / 2;

/** What happens when a swatch is lifted: it comes up clean, or the weaker of the two sides is harmed. */
export const LIFTED = [
  ['pass', 'pass'],
  ['partly', 'pass'],
  ['fail', 'pass'],
  ['pass', 'partly'],
  ['pass', 'fail'],
] as const satisfies readonly (readonly [paper: Outcome, board: Outcome])[];

/** Chances of each of them, by the margin of lifting and by what the sheet bears over what the face bears. */
export function liftedShares(lift: number, sheetToFace: number): readonly number[] {
  const { pass, partly, fail } = sharesOf(lift);
  const fifth = powered(sheetToFace);
  const face = fifth / (1 + fifth);
  return [pass, partly * (1 - face), fail * (1 - face), partly * face, fail * face];
}
