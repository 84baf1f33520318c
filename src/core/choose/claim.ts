/** What a sentence of a lesson says of an adhesive, held to what the model says: they may not part company. */
import { adhesiveName, VERDICT_WORDS } from './answer-words';
import type { Ranked } from './finding';
import { DEFAULT_JOB, type Job, type Need } from './job';
import type { Catalogue } from '../records/records';
import type { Task } from '../records/task';
import { usualOfTask } from './task-words';

/** What a sentence can say of one adhesive for one job. `possible` is at least touch and go: what is unlikely to work is no advice. */
export const SAYINGS = [
  'first',
  'first-three',
  'likely',
  'possible',
  'ruled-out',
  'unlikely',
  'ahead',
  'behind',
  'longer',
  'shorter',
] as const;
export type Saying = (typeof SAYINGS)[number];

export interface Claim {
  /** ids of papers; the sentence says it of each */
  readonly paper: string | readonly string[];
  /** ids of what they go on; the job's usual ground when left out */
  readonly on?: string | readonly string[];
  /** ids of adhesives; the sentence says it of each */
  readonly adhesive: string | readonly string[];
  readonly says: Saying;
  /** id of the adhesive that `ahead`, `behind`, `longer` and `shorter` compare with */
  readonly than?: string;
  readonly needs?: readonly Need[];
  /** what is being done; to cover when left out */
  readonly task?: Task;
}

const COMPARES: readonly Saying[] = ['ahead', 'behind', 'longer', 'shorter'];

/** The jobs that a claim is about, one for each paper on each ground; a task brings its usual ground and size. */
export function jobsOf({ paper, on, needs = [], task }: Claim): readonly Job[] {
  const { substrate: usual, widthMm, heightMm } = task === undefined ? DEFAULT_JOB : usualOfTask(task);
  const grounds = on === undefined ? [usual] : listed(on);
  return listed(paper).flatMap((family) =>
    grounds.map((substrate) => ({
      ...DEFAULT_JOB,
      paper: { family },
      substrate,
      widthMm,
      heightMm,
      needs,
      ...(task !== undefined && { task }),
    })),
  );
}

/**
 * Where the model says otherwise, each as a clause: "of PVA on chiyogami it says Ruled out, place 20 of 23".
 * Empty when the sentence and the model agree. `answer` gives the whole ranking for a job, best first.
 * Throws RangeError on an id that is not in the catalogue, or a comparison with nothing.
 */
export function claimFaults(
  claim: Claim,
  catalogue: Catalogue,
  answer: (job: Job) => readonly Ranked[],
): readonly string[] {
  const { says, than } = claim;
  const adhesives = listed(claim.adhesive);
  if (!SAYINGS.includes(says)) throw new RangeError(`says is one of ${SAYINGS.join(', ')}; got "${says}"`);
  if (COMPARES.includes(says) !== (than !== undefined))
    throw new RangeError(`"than" belongs to ${COMPARES.join(', ')}, and to no other; says is "${says}"`);
  mustBeKnown('paper', listed(claim.paper), catalogue.papers);
  mustBeKnown('ground', listed(claim.on ?? []), catalogue.substrates);
  mustBeKnown('adhesive', [...adhesives, ...(than === undefined ? [] : [than])], catalogue.adhesives);
  return jobsOf(claim).flatMap((job) => {
    const ranked = answer(job);
    const other = ranked.find(({ adhesiveId }) => adhesiveId === than);
    return adhesives.flatMap((id) => {
      const place = ranked.findIndex(({ adhesiveId }) => adhesiveId === id);
      const found = ranked[place];
      if (found && holds(says, found, place, other, other ? ranked.indexOf(other) : -1)) return [];
      const where = `${catalogue.papers.get(job.paper.family)!.name} on ${catalogue.substrates.get(job.substrate)!.name}`;
      return [
        `of ${adhesiveName(id, catalogue)}, for ${where}, ${found ? verdictOn(found, place, ranked) : 'nothing'}`,
      ];
    });
  });
}

function holds(says: Saying, found: Ranked, place: number, other: Ranked | undefined, otherPlace: number): boolean {
  const likely = found.verdict === 'sound' || found.verdict === 'likely';
  const possible = likely || found.verdict === 'touch-and-go';
  switch (says) {
    case 'first':
      return place === 0 && possible;
    case 'first-three':
      return place < 3 && possible;
    case 'likely':
      return likely;
    case 'possible':
      return possible;
    case 'ruled-out':
      return found.verdict === 'ruled-out' || found.verdict === 'refused';
    case 'unlikely':
      return !likely;
    case 'ahead':
      return place < otherPlace;
    case 'behind':
      return place > otherPlace;
    case 'longer':
      return other !== undefined && found.slipSeconds.p50 > other.slipSeconds.p50;
    case 'shorter':
      return other !== undefined && found.slipSeconds.p50 < other.slipSeconds.p50;
  }
}

const verdictOn = ({ verdict, chances, slipSeconds }: Ranked, place: number, ranked: readonly Ranked[]): string =>
  `“${VERDICT_WORDS[verdict]}”, place ${place + 1} of ${ranked.length}, spreads ${tenths(chances.spread)} and holds ${tenths(chances.bond)} times in 10, slides ${Math.round(slipSeconds.p50)} s`;

const tenths = (chance: number): string => (chance * 10).toFixed(1);

function mustBeKnown(kind: string, ids: readonly string[], known: ReadonlyMap<string, unknown>): void {
  for (const id of ids) if (!known.has(id)) throw new RangeError(`no ${kind} is called "${id}"`);
}

const listed = (one: string | readonly string[]): readonly string[] => (typeof one === 'string' ? [one] : one);
