/** The job a person can state, its limits and its defaults; and what is wrong with one, if anything is. */
import { unknownId } from '../base/record-id';
import { SIZINGS, SURFACES, type JobPaper } from '../paper/asked-paper';
import { caliperProblem } from '../paper/limits';
import { numberProblem, type NumberField } from './job-limits';
import type { Catalogue } from '../records/records';
import type { InputError } from '../base/result';

export const NEEDS = [
  'undo',
  'long-lived',
  'flexes',
  'damp',
  'flat',
  'colours',
  'children',
  'no-heat',
  'food',
  'valued',
] as const;
export type Need = (typeof NEEDS)[number];

export interface Job {
  readonly paper: JobPaper;
  readonly substrate: string;
  readonly widthMm: number;
  readonly heightMm: number;
  /** seconds needed to place the piece; worked out from its size when left out */
  readonly placeSeconds?: number;
  readonly needs: readonly Need[];
  readonly celsius: number;
  /** per cent */
  readonly humidity: number;
  /** technique id */
  readonly tool: string;
  /** adhesive ids; all when empty */
  readonly atHand: readonly string[];
}

export const DEFAULT_JOB: Job = {
  paper: { family: 'chiyogami' },
  substrate: 'binders-board',
  widthMm: 210,
  heightMm: 150,
  needs: [],
  celsius: 20,
  humidity: 50,
  tool: 'brush-full',
  atHand: [],
};

/** Seconds most people need to lay a piece of this size: an A4 sheet about 20 s. Common practice, no source. */
export function placingSeconds(widthMm: number, heightMm: number): number {
  const squareMetres = (widthMm * heightMm) / 1e6;
  return Math.min(300, Math.round(10 + 160 * squareMetres));
}

/** Everything wrong with a job, field by field; empty when `choose` can answer it as it stands. */
export function jobProblems(job: Job, catalogue: Catalogue): InputError[] {
  const { paper } = job;
  const numbers: [NumberField, number | undefined][] = [
    ['grammage', paper.grammage],
    ['caliper', paper.caliper],
    ['dropSeconds', paper.dropSeconds],
    ['cobb', paper.cobb],
    ['widthMm', job.widthMm],
    ['heightMm', job.heightMm],
    ['placeSeconds', job.placeSeconds],
    ['celsius', job.celsius],
    ['humidity', job.humidity],
  ];
  const problems = numbers.flatMap(([field, value]) =>
    value === undefined ? [] : (numberProblem(field, value) ?? []),
  );
  if (!catalogue.papers.has(paper.family)) problems.push(unknownId('family', 'a paper'));
  if (!catalogue.substrates.has(job.substrate)) problems.push(unknownId('substrate', 'what it goes on'));
  if (!catalogue.techniques.has(job.tool)) problems.push(unknownId('tool', 'a tool'));
  if (paper.surface !== undefined && !SURFACES.includes(paper.surface))
    problems.push(unknownId('surface', 'a surface'));
  if (paper.sizing !== undefined && !SIZINGS.includes(paper.sizing)) problems.push(unknownId('sizing', 'a sizing'));
  for (const id of job.atHand) if (!catalogue.adhesives.has(id)) problems.push(unknownId('atHand', 'adhesives'));
  const grammage = paper.grammage ?? catalogue.papers.get(paper.family)?.grammage.middle;
  if (grammage !== undefined && paper.caliper !== undefined && problems.length === 0) {
    const contradiction = caliperProblem(grammage, paper.caliper);
    if (contradiction) problems.push(contradiction);
  }
  return problems;
}

/** The job with every unusable part put back to its default, and the fields that were. Never throws. */
export function settleJob(job: Job, catalogue: Catalogue): { job: Job; dropped: readonly string[] } {
  let settled = job;
  const dropped: string[] = [];
  // Each pass can uncover one more (a caliper is only judged once the grammage is sound).
  for (let pass = 0; pass < 3; pass += 1) {
    const fields = new Set(jobProblems(settled, catalogue).map((problem) => problem.field));
    if (fields.size === 0) break;
    dropped.push(...fields);
    const paperFields = ['grammage', 'caliper', 'dropSeconds', 'cobb', 'surface', 'sizing'].filter((field) =>
      fields.has(field),
    );
    const kept = Object.entries(settled.paper).filter(([key]) => !paperFields.includes(key));
    settled = {
      ...settled,
      paper: {
        ...(Object.fromEntries(kept) as unknown as JobPaper),
        ...(fields.has('family') && { family: DEFAULT_JOB.paper.family }),
      },
      ...(fields.has('substrate') && { substrate: DEFAULT_JOB.substrate }),
      ...(fields.has('tool') && { tool: DEFAULT_JOB.tool }),
      ...(fields.has('atHand') && { atHand: settled.atHand.filter((id) => catalogue.adhesives.has(id)) }),
      ...(fields.has('widthMm') && { widthMm: DEFAULT_JOB.widthMm }),
      ...(fields.has('heightMm') && { heightMm: DEFAULT_JOB.heightMm }),
      ...(fields.has('celsius') && { celsius: DEFAULT_JOB.celsius }),
      ...(fields.has('humidity') && { humidity: DEFAULT_JOB.humidity }),
    };
    if (fields.has('placeSeconds')) {
      const { placeSeconds: _unusable, ...rest } = settled;
      settled = rest;
    }
  }
  return { job: settled, dropped };
}
