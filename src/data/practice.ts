/** The chooser held to statements of published practice: how often it says what a source accepts, and two naive rules beside it. */
import { memoize } from '../core/base/memoize';
import { seededUniform } from '../core/base/random';
import { DEFAULT_JOB, type Job } from '../core/choose/job';
import { asGoodAsFirst } from '../core/choose/answer-words';
import { rank, verdictOf } from '../core/choose/ranking';
import type { Ranked, Verdict } from '../core/choose/finding';
import type { Catalogue } from '../core/records/records';
import type { FreshRow, PracticeRow } from '../schemas/checks';

/** Statements, whatever stands round them. */
interface Practice {
  readonly rows: readonly PracticeRow[];
}

/** What the chooser said of one statement. */
export interface Asked {
  readonly row: PracticeRow;
  /** adhesive ids, best first */
  readonly order: readonly string[];
  /** the first is one that the source accepts; undefined where it accepts nothing that is on the shelf */
  readonly first?: boolean;
  /** the first is, or one that the answer says does about as well; undefined of a rule that ranks nothing by chance */
  readonly near?: boolean;
  /** the word for the chance of the first, whether or not the answer is to ask a conservator; undefined of a rule that ranks nothing by chance */
  readonly said?: Verdict;
  /** one of the first three is */
  readonly three?: boolean;
  /** one that it accepts is called likely or better, read by its chance where the answer is to ask a conservator */
  readonly likely?: boolean;
  /** the first is one that it warns of; undefined where it warns of nothing */
  readonly warned?: boolean;
}

/** The job that a statement is about, as one would enter it. */
export const jobOf = ({ task, paper, substrate, widthMm, heightMm, wants }: PracticeRow): Job => ({
  ...DEFAULT_JOB,
  task,
  paper: {
    family: paper.family,
    ...(paper.grammage !== undefined && { grammage: paper.grammage }),
    ...(paper.coloursRun !== undefined && { coloursRun: paper.coloursRun }),
  },
  substrate,
  widthMm,
  heightMm,
  needs: wants,
});

/** The word for an answer, read by its chance where the answer is to ask a conservator. */
const verdictRead = ({ verdict, chance }: Pick<Ranked, 'verdict' | 'chance'>): Verdict =>
  verdict === 'defer' ? verdictOf(chance) : verdict;

/** Every statement put to the chooser; the page of checks asks some of them twice. */
export const askAll = ({ rows }: Practice, catalogue: Catalogue): readonly Asked[] =>
  rows.map((row) => askedOf(catalogue)(row));

const askedOf = memoize((catalogue: Catalogue) =>
  memoize(
    (row: PracticeRow) => asked(row, catalogue),
    (row) => JSON.stringify(row),
  ),
);

function asked(row: PracticeRow, catalogue: Catalogue): Asked {
  const ranked = rank(jobOf(row), catalogue);
  const held = ranked.some(
    (one) => row.accepted.includes(one.adhesiveId) && ['sound', 'likely'].includes(verdictRead(one)),
  );
  return {
    ...scored(
      row,
      ranked.map(({ adhesiveId }) => adhesiveId),
    ),
    said: verdictRead(ranked[0]!),
    ...(row.accepted.length > 0 && {
      likely: held,
      near: [ranked[0]!, ...asGoodAsFirst(ranked)].some(({ adhesiveId }) => row.accepted.includes(adhesiveId)),
    }),
  };
}

/** An order of ids held to what the source accepts and warns of. */
export function scored(row: PracticeRow, order: readonly string[]): Asked {
  const accepts = (id: string) => row.accepted.includes(id);
  return {
    row,
    order,
    ...(row.accepted.length > 0 && { first: accepts(order[0]!), three: order.slice(0, 3).some(accepts) }),
    ...(row.warned.length > 0 && { warned: row.warned.includes(order[0]!) }),
  };
}

/** Always the same answer: thin wheat starch paste. */
export const alwaysPaste = ({ rows }: Practice): readonly Asked[] =>
  rows.map((row) => scored(row, ['wheat-starch-paste-thin']));

/** What other sources accept most often for the task, each statement asked with its own source left out. `from`: where that is learned. */
export function favourites({ rows }: Practice, from: Practice = { rows }): readonly Asked[] {
  return rows.map((row) => {
    const others = from.rows.filter(({ group }) => group !== row.group);
    const counted = (some: readonly PracticeRow[]) => {
      const count = new Map<string, number>();
      for (const { accepted, best } of some) {
        for (const id of accepted) count.set(id, (count.get(id) ?? 0) + 1);
        for (const id of best) count.set(id, (count.get(id) ?? 0) + 0.001);
      }
      return [...count].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1)).map(([id]) => id);
    };
    return scored(row, [...new Set([...counted(others.filter(({ task }) => task === row.task)), ...counted(others)])]);
  });
}

export type PracticeQuestion = 'first' | 'near' | 'three' | 'likely' | 'warned';

export interface Share {
  readonly asked: number;
  readonly yes: number;
  /** share of yes, and the middle nine tenths of it when whole sources are drawn anew, with replacement */
  readonly share: number;
  readonly low: number;
  readonly high: number;
}

const RESAMPLES = 1000;

/** How often the answer to a question is yes, with its doubt by source; undefined where it was never asked. */
export function shareOf(all: readonly Asked[], question: PracticeQuestion): Share | undefined {
  const answered = all.filter((one) => one[question] !== undefined);
  if (answered.length === 0) return undefined;
  const yes = answered.filter((one) => one[question]).length;
  const groups = [...new Set(answered.map(({ row }) => row.group))].map((group) =>
    answered.filter(({ row }) => row.group === group),
  );
  const uniform = seededUniform(20240501);
  const drawn = Array.from({ length: RESAMPLES }, () => {
    const again = groups.flatMap(() => groups[Math.floor(uniform() * groups.length)]!);
    return again.filter((one) => one[question]).length / again.length;
  }).sort((a, b) => a - b);
  return {
    asked: answered.length,
    yes,
    share: yes / answered.length,
    low: drawn[Math.floor(RESAMPLES * 0.05)]!,
    high: drawn[Math.ceil(RESAMPLES * 0.95) - 1]!,
  };
}

/** A fresh statement as the first reader coded it, where it was corrected since. */
export const asFirstCoded = (row: FreshRow): FreshRow => ({
  ...row,
  task: row.was?.task ?? row.task,
  accepted: row.was?.accepted ?? row.accepted,
  best: row.was?.best ?? row.best,
  warned: row.was?.warned ?? row.warned,
});

/** How far two readers named the same adhesives. */
export interface Alike {
  /** statements in which one of the two names any */
  readonly rows: number;
  /** mean over them of the adhesives that both name, as a share of those that either names; 1 where none names any */
  readonly mean: number;
}

/** What reading the fresh statements a second time came to. */
export interface SecondReading {
  /** statements whose text was found again, and how many of these were read in full */
  readonly read: number;
  readonly full: number;
  readonly accepted: Alike;
  readonly best: Alike;
  readonly warned: Alike;
  /** statements that the second reader would make another job of */
  readonly jobs: number;
  /** statements that were corrected for it */
  readonly corrected: number;
}

/** The second reading held to the first coding. */
export function secondReading(rows: readonly FreshRow[]): SecondReading {
  const read = rows.flatMap((row) => (row.again ? [{ first: asFirstCoded(row), again: row.again }] : []));
  const alike = (what: 'accepted' | 'best' | 'warned'): Alike => {
    const shares = read.flatMap(({ first, again }) => {
      if (again.untold?.includes(what)) return [];
      const one = new Set(first[what]);
      const other = new Set(again[what] ?? first[what]);
      const either = new Set([...one, ...other]).size;
      return either > 0 ? [[...one].filter((id) => other.has(id)).length / either] : [];
    });
    return {
      rows: shares.length,
      mean: shares.length > 0 ? shares.reduce((sum, one) => sum + one, 0) / shares.length : 1,
    };
  };
  return {
    read: read.length,
    full: read.filter(({ again }) => again.textSeen === 'full').length,
    accepted: alike('accepted'),
    best: alike('best'),
    warned: alike('warned'),
    jobs: read.filter(({ again }) => again.task !== undefined || again.paper !== undefined).length,
    corrected: rows.filter(({ was }) => was).length,
  };
}
