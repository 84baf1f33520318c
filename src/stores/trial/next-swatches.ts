/** What to try next: the swatches most worth making for a choice between adhesives. Fetched when it is first asked for. */
import { atom } from 'nanostores';
import { ownBench } from '../../core/learn/condition';
import { DEFAULT_JOB, type Job } from '../../core/choose/job';
import { judgedIn } from '../../core/learn/judged';
import { nextSwatchesInTurns, type Asking, type NextSwatches, type Suggested } from '../../core/learn/next-swatch';
import { learnInTurns, type Learned } from '../../core/learn/reweigh';
import { trialOf } from '../../core/trial/plan';
import { STANDARD_QUESTIONS } from '../../core/trial/design';
import { TRIAL_VERSION, type Trial } from '../../core/trial/record';
import { catalogue } from '../../data/catalogue';
import { recordsOn } from '../../core/records/kinds';
import { fetchBench, waitsForBench, withBenches } from '../shared/on-bench';
import { inTurns } from '../shared/time-slice';
import type { Wanted } from './wish';

/** Seconds after which a swatch is lifted: soon, and when the job needs it. */
const SOON = 20;

/** The question that a wish makes. */
export function askingOf({ family, grammage, other, seconds, among, substrate, tool, bench }: Wanted): Asking {
  const paper = { family, ...(grammage !== undefined && { grammage }) };
  const job: Job = { ...DEFAULT_JOB, paper, substrate, tool, placeSeconds: seconds, ...(bench && { bench }) };
  const papers = [paper, ...(other === '' || other === family ? [] : [{ family: other }])];
  return { job, among, papers, holds: [...new Set([SOON, seconds])] };
}

export interface Told {
  readonly asking: Asking;
  /** what stands first now is called so, and each suggestion said so */
  readonly firstName: string;
  readonly says: readonly string[];
  readonly next: NextSwatches;
  /** swatches on this device that the model has learned from */
  readonly swatches: number;
}

const records = withBenches(catalogue);

/**
 * Works out what is most worth making, in turns. What was learned is kept for the next question on the same bench; where
 * one's own was measured, one's own swatches and what may be made are both reckoned on it.
 */
export function createNextSwatches(trials: () => readonly Trial[]) {
  const $told = atom<Told | undefined>(undefined);
  const $busy = atom(false);
  let learned: { readonly bench: string | undefined; readonly from: Learned } | undefined;
  let stop = () => {};
  const ask = (asking: Asking): void => {
    stop();
    $busy.set(true);
    const { bench, ...job } = asking.job;
    if (waitsForBench({ bench })) {
      let left = false;
      stop = () => void (left = true);
      return void fetchBench().then(() => left || ask(asking));
    }
    const onOwn = recordsOn(bench, records);
    const answer = (known: Learned) => {
      learned = { bench, from: known };
      stop = inTurns(nextSwatchesInTurns({ ...asking, job }, known, onOwn), (next) => {
        $busy.set(false);
        const [firstName, says] = [nameOf(next.first), next.swatches.map(suggestionName)];
        $told.set({ asking, next, swatches: known.swatches, firstName, says });
      });
    };
    if (learned && learned.bench === bench) return answer(learned.from);
    const { conditions } = judgedIn(trials(), records);
    stop = inTurns(learnInTurns(conditions, records, ownBench(conditions), undefined, onOwn), answer);
  };
  return { $told, $busy, ask };
}

const nameOf = (id: string) => catalogue.adhesives.get(id)?.name ?? id;
const paperOf = (id: string) => catalogue.papers.get(id)?.name ?? id;

/** "Marbled paper with PVA, as supplied, lifted after 20 s". */
const suggestionName = ({ paper, adhesive, hold }: Suggested): string =>
  `${paperOf(paper.family)} with ${nameOf(adhesive)}, lifted after ${hold} s`;

/** A trial of one suggestion, four swatches of it, ready for the bench screen. */
export function trialOfSuggestion(one: Suggested, { job }: Asking, id: string, createdAt: string): Trial {
  const { family, grammage } = one.paper;
  const questions = STANDARD_QUESTIONS.filter(({ kind }) => kind === 'spread' || kind === 'lift' || kind === 'board');
  return trialOf(
    {
      version: TRIAL_VERSION,
      name: suggestionName(one).slice(0, 80),
      by: '',
      substrate: job.substrate,
      method: { tool: job.tool },
      papers: [{ id: 'paper-1', name: paperOf(family), family, ...(grammage !== undefined && { grammage }) }],
      glues: [{ id: 'glue-1', name: nameOf(one.adhesive), record: one.adhesive }],
      holds: [one.hold],
      replicates: 4,
      questions,
      widthMm: 50,
      heightMm: 70,
      seed: 1,
      conditions: {},
    },
    id,
    createdAt,
  );
}
