/** What to try next: a choice between adhesives on one paper, and the swatches most worth making for it. */
import { atom } from 'nanostores';
import { parseNumber } from '../../core/base/number-text';
import { DEFAULT_JOB, JOB_FIELDS, type Job } from '../../core/choose/job';
import { judgedIn, ownBench } from '../../core/learn/judged';
import { nextSwatchesInTurns, type Asking, type NextSwatches, type Suggested } from '../../core/learn/next-swatch';
import { learnInTurns, type Learned } from '../../core/learn/reweigh';
import { trialOf } from '../../core/trial/plan';
import { STANDARD_QUESTIONS } from '../../core/trial/design';
import { TRIAL_VERSION, type Trial } from '../../core/trial/record';
import { catalogue } from '../../data/catalogue';
import { recordsOn } from '../../core/records/kinds';
import { fetchBench, waitsForBench, withBenches } from '../shared/on-bench';
import { inTurns } from '../shared/time-slice';

export interface Wish {
  /** id of the kind of paper, and of a second one at hand, '' for none */
  readonly family: string;
  readonly other: string;
  /** g/m², as typed */
  readonly grammage: string;
  /** ids of adhesives */
  readonly among: readonly string[];
  readonly substrate: string;
  /** id of a tool */
  readonly tool: string;
  /** what was measured of one's own bench, as links carry it; '' for the records alone */
  readonly bench: string;
  /** seconds needed to place it, as typed */
  readonly seconds: string;
}

export const FIRST_WISH: Wish = {
  family: 'marbled',
  other: '',
  grammage: '',
  among: ['pva', 'pva-mc-1-1', 'wheat-starch-paste-12'],
  substrate: 'binders-board',
  tool: 'brush-full',
  bench: '',
  seconds: '60',
};
export const MOST_AMONG = 4;
/** Seconds after which a swatch is lifted: soon, and when the job needs it. */
const SOON = 20;

export interface Problem {
  readonly field: keyof Wish;
  readonly message: string;
}

/** The question that a wish makes, or what is wrong with it. */
export function askingOf(wish: Wish): { readonly asking?: Asking; readonly problems: readonly Problem[] } {
  const problems: Problem[] = [];
  const figure = (field: 'grammage' | 'seconds', { low, high, unit }: { low: number; high: number; unit: string }) => {
    if (wish[field].trim() === '') return undefined;
    const value = parseNumber(wish[field]);
    if (value !== undefined && value >= low && value <= high) return value;
    problems.push({ field, message: `A number from ${low} to ${high} ${unit}, or nothing.` });
    return undefined;
  };
  const grammage = figure('grammage', JOB_FIELDS.grammage);
  const seconds = figure('seconds', JOB_FIELDS.placeSeconds) ?? 60;
  if (wish.among.length < 2 || wish.among.length > MOST_AMONG)
    problems.push({ field: 'among', message: `Choose from 2 to ${MOST_AMONG} adhesives.` });
  if (problems.length > 0) return { problems };
  const paper = { family: wish.family, ...(grammage !== undefined && { grammage }) };
  const job: Job = {
    ...DEFAULT_JOB,
    paper,
    substrate: wish.substrate,
    tool: wish.tool,
    placeSeconds: seconds,
    ...(wish.bench && { bench: wish.bench }),
  };
  const papers = [paper, ...(wish.other === '' || wish.other === wish.family ? [] : [{ family: wish.other }])];
  return { asking: { job, among: wish.among, papers, holds: [...new Set([SOON, seconds])] }, problems };
}

export interface Told {
  readonly asking: Asking;
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
        $told.set({ asking, next, swatches: known.swatches });
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
export const suggestionName = ({ paper, adhesive, hold }: Suggested): string =>
  `${paperOf(paper.family)} with ${nameOf(adhesive)}, lifted after ${hold} s`;
export const adhesiveNamed = nameOf;

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
