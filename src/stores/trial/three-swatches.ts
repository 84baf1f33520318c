/** Three swatches whose outcomes a reader can change, and what the model makes of a paper that none of them is. */
import { DEFAULT_JOB, type Job } from '../../core/choose/job';
import { kindOf } from '../../core/choose/kind';
import { drawsOf, inHand, type Draws } from '../../core/choose/draws';
import { benchesOf, liquidsOf } from '../../core/choose/sampling';
import { holds } from '../../core/choose/tally';
import type { InTurns } from '../../core/base/turns';
import { wetMargins } from '../../core/joint/margins';
import type { Condition, SwatchSeen } from '../../core/learn/condition';
import { learnedDraws, learnInTurns, reweigh } from '../../core/learn/reweigh';
import { sheetOf } from '../../core/paper/sheet';
import type { WetAdhesive } from '../../core/records/records';
import { catalogue } from '../../data/catalogue';

/** What a reader may say of a swatch. */
export const OUTCOMES_SHOWN = ['clean', 'fibres', 'tore', 'face'] as const;
export type Shown = (typeof OUTCOMES_SHOWN)[number];
export const SHOWN_WORDS: Readonly<Record<Shown, string>> = {
  clean: 'lifted clean',
  fibres: 'a few fibres were left',
  tore: 'the paper tore',
  face: 'the face of the board came away',
};
const SEEN: Readonly<Record<Shown, SwatchSeen>> = {
  clean: { lift: 'pass', board: 'pass' },
  fibres: { lift: 'partly', board: 'pass' },
  tore: { lift: 'fail', board: 'pass' },
  face: { lift: 'pass', board: 'fail' },
};

export const THREE = [
  { family: 'lokta-light', adhesive: 'pva', hold: 60, says: 'lokta with PVA, lifted after 60\u00a0s' },
  { family: 'wove-text', adhesive: 'pva', hold: 60, says: 'wove paper with PVA, lifted after 60\u00a0s' },
  {
    family: 'lokta-light',
    adhesive: 'pva-mc-1-1',
    hold: 60,
    says: 'lokta with PVA and methylcellulose 1:1, lifted after 60\u00a0s',
  },
] as const;
export const FIRST_SHOWN: readonly Shown[] = ['clean', 'clean', 'clean'];

/** Nobody has swatched these. */
const ASKED = [
  { family: 'marbled', adhesive: 'pva', says: 'marbled paper with PVA' },
  { family: 'kozo-medium', adhesive: 'pva-mc-1-1', says: 'medium kozo with the 1:1 mix' },
  { family: 'copy', adhesive: 'pva', says: 'copy paper with PVA' },
] as const;

export interface FromThree {
  readonly rows: readonly { readonly says: string; readonly before: number; readonly now: number }[];
  readonly effective: number;
}

const jobOn = (family: string, hold: number): Job => ({
  ...DEFAULT_JOB,
  paper: { family },
  widthMm: 50,
  heightMm: 70,
  placeSeconds: hold,
  lined: false,
});

/** Chances of a clean lift on papers that were not swatched, before and with three swatches that showed this. */
export function* fromThreeInTurns(shown: readonly Shown[]): InTurns<FromThree> {
  const conditions = THREE.map(({ family, adhesive, hold, says }, i): Condition => ({
    bench: 'one',
    sheet: `one ${family}`,
    paperName: says,
    paper: { family },
    adhesive,
    job: jobOn(family, hold),
    seen: [SEEN[shown[i]!]],
  }));
  const learned = yield* learnInTurns(conditions, catalogue);
  yield;
  const draws = learnedDraws(learned, { family: 'none' }, DRAWS);
  const rows = ASKED.map(({ family, adhesive, says }) => ({
    says,
    before: cleanLift(family, adhesive, drawsOf(DRAWS)),
    now: cleanLift(family, adhesive, draws),
  }));
  return { rows, effective: reweigh(learned).effective };
}
const DRAWS = 64;
const ASKED_HOLD = 60;

function cleanLift(family: string, id: string, draws: Draws): number {
  const adhesive = catalogue.adhesives.get(id) as WetAdhesive;
  const job = jobOn(family, ASKED_HOLD);
  const liquids = liquidsOf(adhesive, catalogue, draws);
  const hand = draws.hand?.(kindOf(adhesive, catalogue)) ?? { spread: 1, lift: 1 };
  const held = benchesOf(job, sheetOf(job, catalogue), catalogue, draws).map((bench, i) =>
    holds(inHand(wetMargins(adhesive, liquids[i]!, bench, draws.constants[i]), hand).lift),
  );
  return held.reduce((sum, one) => sum + one, 0) / held.length;
}
