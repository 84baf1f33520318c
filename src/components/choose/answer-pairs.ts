/** The chooser's answers for the pairs that people ask about, worked out once for the whole build. */
import { choose, type Choice } from '../../core/choose/choose';
import { encodeJob } from '../../core/choose/write-link';
import { DEFAULT_JOB, type Job } from '../../core/choose/job';
import { seenIn } from '../../core/choose/seen';
import { usualOfTask } from '../../core/choose/task-words';
import { memoize } from '../../core/base/memoize';
import type { Task } from '../../core/records/task';
import { catalogue } from '../../data/catalogue';
import { href } from '../href';
import { plainName, shortName } from '../plain-name';
import { ASKED_TASKS, taskTitle, tasksAsked } from './asked-tasks';

/** What paper is most often laid on at a binder's bench: a cover, a page, a box or a panel. */
export const ASKED_GROUNDS = ['binders-board', 'text-block', 'plywood'] as const;
/** The ground that a page of the shelf answers for. */
export const USUAL_GROUND = 'binders-board';

export interface PairAnswer {
  /** last part of its address: "lokta-light-on-binders-board", "mending-a-tear-with-kozo-tissue" */
  readonly id: string;
  readonly task: Task;
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

/** Last part of the address of an answer for covering: "lokta-light-on-binders-board". */
export const pairId = (paper: string, ground: string): string => `${paper}-on-${ground}`;

/** The answer for covering with the middle of a paper family, everything else as the chooser starts. */
export const answerFor = (paper: string, ground: string = USUAL_GROUND): PairAnswer => coverAnswer(paper, ground);

const coverAnswer = memoize((paper: string, ground: string): PairAnswer => {
  const sheet = catalogue.papers.get(paper);
  const below = catalogue.substrates.get(ground);
  if (!sheet || !below) throw new Error(`answers: no paper "${paper}" or no substrate "${ground}"`);
  const name = shortName(sheet.name);
  return answered({
    id: pairId(paper, ground),
    title: `${name}${name.includes(',') ? ',' : ''} on ${plainName(below.name)}`,
    job: { ...DEFAULT_JOB, paper: { family: paper }, substrate: ground },
    hasPage: isAskedGround(ground),
  });
}, pairId);

/** The answer for another task, with its usual ground and size. Throws where that task has no pages. */
export const taskAnswer = memoize(
  (task: Task, paper: string): PairAnswer => {
    const asked = ASKED_TASKS[task];
    if (!asked) throw new Error(`answers: no pages for the task "${task}"`);
    const { family: _usual, ...usual } = usualOfTask(task);
    return answered({
      id: `${asked.address}-${paper}`,
      title: taskTitle(asked, paper),
      job: { ...DEFAULT_JOB, task, paper: { family: paper }, ...usual },
      hasPage: asked.papers.includes(paper),
    });
  },
  (task, paper) => `${task} ${paper}`,
);

function answered({ id, title, job, hasPage }: Pick<PairAnswer, 'id' | 'title' | 'job'> & { hasPage: boolean }) {
  const choices = choose(job, catalogue);
  return {
    id,
    title,
    job,
    choices,
    task: job.task ?? 'cover',
    paper: job.paper.family,
    ground: job.substrate,
    inChooser: href(`/choose/?${encodeJob(job, seenIn(choices[0]!))}`),
    page: hasPage ? href(`/answers/${id}/`) : undefined,
  };
}

export const isAskedGround = (ground: string): boolean => (ASKED_GROUNDS as readonly string[]).includes(ground);

/** Every pair that has a page of its own. */
export const askedPairs = (): readonly PairAnswer[] => [
  ...[...catalogue.papers.keys()].flatMap((paper) => ASKED_GROUNDS.map((ground) => answerFor(paper, ground))),
  ...tasksAsked().flatMap(([task, { papers }]) => papers.map((paper) => taskAnswer(task, paper))),
];

/** The pages beside one: the same paper on other grounds, or the same task with other papers. */
export const nearTo = ({ task, paper, ground }: PairAnswer): readonly PairAnswer[] =>
  task === 'cover'
    ? [
        ...ASKED_GROUNDS.filter((other) => other !== ground).map((other) => answerFor(paper, other)),
        ...tasksAsked(paper).map(([other]) => taskAnswer(other, paper)),
      ]
    : (ASKED_TASKS[task]?.papers ?? []).filter((other) => other !== paper).map((other) => taskAnswer(task, other));
