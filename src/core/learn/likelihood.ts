/** How likely what was seen on a swatch is, where the margins are these. */
import type { Hand } from '../choose/draws';
import type { Margins } from '../joint/bench';
import type { Outcome } from '../trial/record';
import type { SwatchSeen } from './judged';

/** Swatches that are judged, or written down, as something else than they were. Estimate: 5 to 10 in 100. */
export const MISJUDGED = 0.07;
/** From one stroke of the brush to the next: the same width as in `holds` (choose/tally.ts). */
const STEEPNESS = 5;
/** "Partly" lies this far about the edge, in natural logs of the margin: at the edge itself 1 in 4. Estimate. */
const PARTLY = 0.1;

const steep = (logMargin: number): number => 1 / (1 + Math.exp(-STEEPNESS * logMargin));

export type Shares = Readonly<Record<Outcome, number>>;

/** Chances of pass, partly and fail for one margin. */
export function sharesOf(margin: number): Shares {
  const log = Math.log(margin);
  const [pass, fail] = [steep(log - PARTLY), steep(-log - PARTLY)];
  return { pass, fail, partly: 1 - pass - fail };
}

const AS_IT_IS: Hand = { spread: 1, lift: 1 };

const said = (seen: Outcome, shares: Shares): number =>
  (1 - MISJUDGED) * shares[seen] + (MISJUDGED / 2) * (1 - shares[seen]);

/** How likely these outcomes are together where these margins come out in this hand, 0–1; 1 for none. */
export function likelihood(seen: SwatchSeen, margins: Margins, hand: Hand = AS_IT_IS): number {
  let together = 1;
  if (seen.spread) together *= said(seen.spread, sharesOf(margins.spread * hand.spread));
  if (seen.lift ?? seen.board) together *= lifted(seen, margins.lift * hand.lift, margins.sheetToFace);
  if (seen.cockle) together *= said(seen.cockle, sharesOf(margins.flat));
  if (seen.stuck) together *= said(seen.stuck, sharesOf(margins.bond));
  return together;
}

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
  const face = steep(Math.log(sheetToFace));
  return [pass, partly * (1 - face), fail * (1 - face), partly * face, fail * face];
}

function lifted({ lift, board }: SwatchSeen, margin: number, sheetToFace: number): number {
  const shares = liftedShares(margin, sheetToFace);
  const read = (seen: Outcome | undefined, was: Outcome) =>
    seen === undefined ? 1 : seen === was ? 1 - MISJUDGED : MISJUDGED / 2;
  return LIFTED.reduce((sum, [paper, below], i) => sum + shares[i]! * read(lift, paper) * read(board, below), 0);
}
