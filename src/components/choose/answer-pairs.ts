/** The chooser's answers for the pairs that people ask about, worked out once for the whole build. */
import { choose, type Choice } from '../../core/choose/choose';
import { encodeJob } from '../../core/choose/write-link';
import { DEFAULT_JOB, type Job } from '../../core/choose/job';
import { seenIn } from '../../core/choose/seen';
import { catalogue } from '../../data/catalogue';
import { href } from '../href';
import { plainName, shortName } from '../plain-name';

/** What paper is most often laid on at a binder's bench: a cover, a page, a box or a panel. */
export const ASKED_GROUNDS = ['binders-board', 'text-block', 'plywood'] as const;
/** The ground that a page of the shelf answers for. */
export const USUAL_GROUND = 'binders-board';

export interface PairAnswer {
  readonly paper: string;
  readonly ground: string;
  /** "Lokta, light, on binder’s board" */
  readonly title: string;
  readonly job: Job;
  readonly choices: readonly Choice[];
  /** the chooser opened at this job, with the answer that was seen here */
  readonly inChooser: string;
  /** the page of this answer, where there is one */
  readonly page: string | undefined;
}

const known = new Map<string, PairAnswer>();

/** The answer for the middle of a paper family on a ground, everything else as the chooser starts. */
export function answerFor(paper: string, ground: string = USUAL_GROUND): PairAnswer {
  const key = pairId(paper, ground);
  const found = known.get(key) ?? work(paper, ground);
  known.set(key, found);
  return found;
}

function work(paper: string, ground: string): PairAnswer {
  const job: Job = { ...DEFAULT_JOB, paper: { family: paper }, substrate: ground };
  const choices = choose(job, catalogue);
  const sheet = catalogue.papers.get(paper);
  const below = catalogue.substrates.get(ground);
  if (!sheet || !below) throw new Error(`answers: no paper "${paper}" or no substrate "${ground}"`);
  const name = shortName(sheet.name);
  return {
    paper,
    ground,
    title: `${name}${name.includes(',') ? ',' : ''} on ${plainName(below.name)}`,
    job,
    choices,
    inChooser: href(`/choose/?${encodeJob(job, seenIn(choices[0]!))}`),
    page: isAsked(ground) ? href(`/answers/${pairId(paper, ground)}/`) : undefined,
  };
}

/** Last part of the address of an answer: "lokta-light-on-binders-board". */
export const pairId = (paper: string, ground: string): string => `${paper}-on-${ground}`;

export const isAsked = (ground: string): boolean => (ASKED_GROUNDS as readonly string[]).includes(ground);

/** Every pair that has a page of its own. */
export const askedPairs = (): readonly PairAnswer[] =>
  [...catalogue.papers.keys()].flatMap((paper) => ASKED_GROUNDS.map((ground) => answerFor(paper, ground)));
