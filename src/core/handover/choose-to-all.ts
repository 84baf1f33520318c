/**
 * What comes after an answer: mixing it, how much of it, whether the work will lie flat, a swatch, a class. The tails
 * of the links that take this job there, written pair by pair (a test reads them with those calculators' own fields),
 * so that the chooser need not fetch the fields of five others.
 */
import { cover, LEFT_IN_POT_PERCENT } from '../adhesive/coverage';
import type { Ranked } from '../choose/finding';
import { DEFAULT_JOB, type Job } from '../choose/job';
import { middleLiquid, secondsNeeded } from '../choose/sampling';
import { writePairs } from '../link/pairs';
import { FORMAT } from '../link/plan-link';
import type { Range } from '../base/quantity';
import type { Catalogue, WetAdhesive } from '../records/records';
import { makingsOf, paperText } from './choose-to-mix';

export type NextRoom = 'mix' | 'cover' | 'flat' | 'trial' | 'class';

export interface NextStep {
  readonly to: NextRoom;
  readonly tail: string;
}

type Pair = readonly [key: string, text: string];

const tail = (pairs: readonly Pair[]): string => writePairs([['v', FORMAT], ...pairs]);

/** Millilitres to have in hand for one face of a job's piece: the sum that the coverage calculator does for it. */
export function millilitresInHand(job: Job, coat: Range, adhesive: WetAdhesive, catalogue: Catalogue): number {
  const pieces = [{ widthMm: job.widthMm, heightMm: job.heightMm, count: 1 }];
  const liquid = middleLiquid(adhesive, catalogue);
  return cover({ pieces, coat, lossPercent: LEFT_IN_POT_PERCENT, liquid }).buyMillilitres;
}

const short = (mm: number): string => String(Number(mm.toFixed(3)));

/** Sides that a calculator takes, mm; the job's own where it takes them. */
const within = (mm: number, low: number, high: number): string => String(Math.min(high, Math.max(low, mm)));

/** A swatch says most beside another: the first place, and the next that could be used. */
const rivals = (choices: readonly Ranked[]): readonly string[] =>
  choices
    .filter(({ atHand, verdict }, i) => i === 0 || (atHand && verdict !== 'ruled-out'))
    .slice(0, 2)
    .map(({ adhesiveId }) => adhesiveId);

/**
 * Where one goes from an answer (`choices`, best first, at least one), in the order of the work. What makes no sense for it is left out: nothing is mixed
 * that comes ready, nothing is measured out that is not spread, and only a board can be asked whether it lies flat.
 */
export function nextSteps(choices: readonly Ranked[], job: Job, catalogue: Catalogue): readonly NextStep[] {
  const best = choices[0]!;
  const adhesive = catalogue.adhesives.get(best.adhesiveId)!;
  const paper: Pair = ['paper', paperText(job)];
  const glue: Pair = ['glue', adhesive.id];
  // a film is put on with something that is no technique of ours
  const spreader = catalogue.techniques.has(best.method.tool) ? best.method.tool : job.tool;
  const tool: Pair = ['tool', spreader];
  const room: Pair = ['room', String(job.celsius)];
  const humidity: Pair = ['rh', within(job.humidity, 5, 95)];
  const ground = catalogue.substrates.get(job.substrate)!;
  const bench: readonly Pair[] = job.bench === undefined ? [] : [['bench', job.bench]];
  const steps: NextStep[] = [];
  if (adhesive.form === 'wet' && best.method.coat) {
    const need = millilitresInHand(job, best.method.coat, adhesive, catalogue);
    const parts = adhesive.parts.some(({ of }) => of === 'water') ? [{ of: adhesive.id, parts: 1 }] : adhesive.parts;
    const [making] = makingsOf(parts, need, { ...job, tool: spreader }, catalogue);
    if (making) steps.push({ to: 'mix', tail: making.tail });
    const pieces: Pair = ['pieces', `${short(job.widthMm)}x${short(job.heightMm)}x1`];
    steps.push({ to: 'cover', tail: tail([['thing', 'own'], pieces, glue, tool, paper, ...bench]) });
  }
  if (!ground.limp) {
    const pairs: Pair[] = [
      paper,
      ['wide', within(job.widthMm, 10, 2000)],
      ['high', within(job.heightMm, 10, 2000)],
      ['board', ground.id],
      glue,
      tool,
      ...(job.lined ? [['lining', 'paper'] as const] : []),
      ['room', within(job.celsius, 5, 40)],
      humidity,
      ...bench,
    ];
    steps.push({ to: 'flat', tail: tail(pairs) });
  }
  const hold = String(Math.round(secondsNeeded(job)));
  // the tool that was asked for: what is best may be another for each rival
  const spread: readonly Pair[] = job.tool === DEFAULT_JOB.tool ? [] : [['tool', job.tool]];
  steps.push({
    to: 'trial',
    tail: tail([
      paper,
      ['on', ground.id],
      ['glue', rivals(choices).join('.')],
      ...spread,
      ['hold', hold],
      room,
      humidity,
    ]),
  });
  if (adhesive.form === 'wet')
    steps.push({
      to: 'class',
      tail: tail([paper, ['on', ground.id], glue, tool, ['celsius', String(job.celsius)], humidity, ...bench]),
    });
  return steps;
}
