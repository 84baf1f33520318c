/** The job a person can state, its limits and its defaults; and what is wrong with one, if anything is. */
import { apparentDensity, FIBRE_DENSITY } from './paper';
import type { Catalogue, Sizing, Surface } from './records';
import type { ErrorCode, InputError } from './result';
import { LONGEST_DROP_SECONDS } from './sorption';

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

export const SURFACES: readonly Surface[] = ['smooth', 'textured', 'embossed'];
export const SIZINGS: readonly Sizing[] = ['unsized', 'lightly-sized', 'sized', 'hard-sized', 'coated'];

export interface JobPaper {
  /** id of the paper family it is, or is most like */
  readonly family: string;
  /** g/m²; the family's own range when left out */
  readonly grammage?: number;
  /** µm; worked out from the family's density when left out */
  readonly caliper?: number;
  /** seconds a drop of water takes to sink in */
  readonly dropSeconds?: number;
  /** g/m² taken up in a 60-second Cobb test; wins over the drop test when both are given */
  readonly cobb?: number;
  readonly surface?: Surface;
  readonly sizing?: Sizing;
  readonly coloursRun?: boolean;
}

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

/** What each number may be, in the unit its field is labelled with. */
export const LIMITS = {
  grammage: { low: 5, high: 600, unit: 'g/m²', what: 'The weight of the paper' },
  caliper: { low: 10, high: 3000, unit: 'µm', what: 'The thickness' },
  dropSeconds: { low: 0.2, high: LONGEST_DROP_SECONDS, unit: 's', what: 'The drop test' },
  cobb: { low: 1, high: 400, unit: 'g/m²', what: 'The Cobb 60 figure' },
  widthMm: { low: 5, high: 3000, unit: 'mm', what: 'The width of the piece' },
  heightMm: { low: 5, high: 3000, unit: 'mm', what: 'The height of the piece' },
  placeSeconds: { low: 1, high: 1800, unit: 's', what: 'The time to place it' },
  celsius: { low: 1, high: 40, unit: '°C', what: 'The room' },
  humidity: { low: 5, high: 95, unit: '%', what: 'The humidity' },
} as const;
export type NumberField = keyof typeof LIMITS;

export const DEFAULT_JOB: Job = {
  paper: { family: 'chiyogami', grammage: 70 },
  substrate: 'binders-board',
  widthMm: 210,
  heightMm: 150,
  needs: [],
  celsius: 20,
  humidity: 50,
  tool: 'brush-full',
  atHand: [],
};

/** Least and greatest apparent density, g/cm³, that a sheet of paper can have. Low end from memory. */
const DENSITIES = { low: 0.08, high: FIBRE_DENSITY };

/** Seconds most people need to lay a piece of this size: an A4 sheet about 20 s. Common practice, no source. */
export function placingSeconds(widthMm: number, heightMm: number): number {
  const squareMetres = (widthMm * heightMm) / 1e6;
  return Math.min(300, Math.round(10 + 160 * squareMetres));
}

/** What is wrong with one number, or undefined. The message says what is allowed. */
export function numberProblem(field: NumberField, value: number): InputError | undefined {
  const { low, high, unit, what } = LIMITS[field];
  const because =
    field === 'dropSeconds' && value > high
      ? ' A slower drop dries as much as it sinks in: leave this empty and choose hard-sized.'
      : '';
  const problem = (code: ErrorCode): InputError => ({
    field,
    code,
    message: `${what} must be a number from ${low} to ${high} ${unit}.${because}`,
    limits: { low, high, unit },
  });
  if (!Number.isFinite(value)) return problem('not-a-number');
  if (value < low) return problem('too-small');
  if (value > high) return problem('too-large');
  return undefined;
}

/** A caliper that makes the sheet denser than cellulose, or lighter than any felt, is a slip of unit or of a digit. */
export function caliperProblem(grammage: number, caliper: number): InputError | undefined {
  const density = apparentDensity(grammage, caliper);
  if (density <= DENSITIES.high && density >= DENSITIES.low) return undefined;
  const thinnest = Math.ceil(grammage / DENSITIES.high);
  const thickest = Math.floor(grammage / DENSITIES.low);
  const why = density > DENSITIES.high ? 'denser than cellulose itself (1.5 g/cm³)' : 'lighter than any paper';
  return {
    field: 'caliper',
    code: 'contradiction',
    message: `At ${grammage} g/m² this thickness would make the sheet ${why}. Give ${thinnest} to ${thickest} µm (0.1 mm is 100 µm), or leave it empty.`,
    limits: { low: thinnest, high: thickest, unit: 'µm' },
  };
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
  const unknown = (field: string, what: string): InputError => ({
    field,
    code: 'unknown-id',
    message: `Choose ${what} from the list.`,
  });
  if (!catalogue.papers.has(paper.family)) problems.push(unknown('family', 'a paper'));
  if (!catalogue.substrates.has(job.substrate)) problems.push(unknown('substrate', 'what it goes on'));
  if (!catalogue.techniques.has(job.tool)) problems.push(unknown('tool', 'a tool'));
  for (const id of job.atHand) if (!catalogue.adhesives.has(id)) problems.push(unknown('atHand', 'adhesives'));
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
    const paperFields = ['grammage', 'caliper', 'dropSeconds', 'cobb'].filter((field) => fields.has(field));
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
