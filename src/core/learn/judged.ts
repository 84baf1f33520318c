/**
 * What swatches have shown, as the model can be asked about it. Swatches of one maker that were made alike (the same
 * paper, adhesive, ground, seconds and room) stand together as one condition with its outcomes.
 */
import { clamp } from '../base/quantity';
import { DEFAULT_JOB, JOB_FIELDS } from '../choose/job';
import type { JobPaper } from '../paper/asked-paper';
import type { Catalogue } from '../records/records';
import { MODELLED, ownBench, PUBLISHED, type Condition, type Modelled, type SwatchSeen } from './condition';
import { methodKey, methodOf, USUAL_METHOD } from '../trial/method';
import { outcomeOf, type Outcome, type Swatch, type Trial } from '../trial/record';

export interface Judged {
  readonly conditions: readonly Condition[];
  /** swatches that the model can be asked about */
  readonly swatches: number;
  /** judged swatches that it cannot: the kind of paper or the adhesive is not named, the tool is none of the shelf, or nobody says when it was lifted */
  readonly unnamed: number;
}

const within = (value: number | undefined, { low, high, usual }: { low: number; high: number; usual: number }) =>
  clamp(value ?? usual, low, high);

/** Which paper of the shelf it is, in one key. */
const sheetKey = ({ family, grammage, dropSeconds }: JobPaper): string =>
  `${family} ${grammage ?? ''} ${dropSeconds ?? ''}`;

/**
 * The judged swatches of these trials. Set aside ones, invented ones, and those whose name and record may not be of one
 * adhesive, are left out. What a trial does not say is taken as usual: binder's board, 20 °C, 50 %, a full brush.
 */
export function judgedIn(trials: readonly Trial[], catalogue: Catalogue): Judged {
  const conditions = new Map<string, Condition & { seen: SwatchSeen[] }>();
  let [swatches, unnamed] = [0, 0];
  for (const trial of trials) {
    if (trial.demo) continue;
    for (const swatch of trial.swatches) {
      const judged = seenOn(swatch, trial);
      if (swatch.spoiled || Object.keys(judged).length === 0) continue;
      const seen = swatch.hold > 0 ? judged : withoutLifting(judged);
      const made = Object.keys(seen).length > 0 ? conditionOf(swatch, trial, catalogue) : undefined;
      if (!made) {
        unnamed += 1;
        continue;
      }
      swatches += 1;
      const { bench, sheet, adhesive, job } = made;
      const key = [
        bench,
        sheet,
        adhesive,
        job.substrate,
        job.placeSeconds,
        job.celsius,
        job.humidity,
        job.widthMm,
        job.heightMm,
        methodKey({ ...made.method, tool: job.tool }),
      ].join(' ');
      const known = conditions.get(key);
      if (known) known.seen.push(seen);
      else conditions.set(key, { ...made, seen: [seen] });
    }
  }
  return { conditions: signed([...conditions.values()]), swatches, unnamed };
}

/** Swatches that nobody signed are taken to be of whoever made most of the others: they lie on the same device. */
function signed(conditions: readonly Condition[]): readonly Condition[] {
  const own = ownBench(conditions.filter(({ bench }) => bench !== ''));
  if (own === undefined) return conditions;
  return conditions.map((one) => (one.bench === '' ? { ...one, bench: own, sheet: `${own}${one.sheet}` } : one));
}

const isPublished = ({ id }: Trial): boolean => id.startsWith(`${PUBLISHED}-`);

/** The worst that any question of each kind says. */
function seenOn(swatch: Swatch, { questions }: Trial): SwatchSeen {
  const seen: Partial<Record<Modelled, Outcome>> = {};
  for (const { id, kind } of questions) {
    const modelled = MODELLED.find((one) => one === kind);
    const outcome = outcomeOf(swatch, id);
    if (modelled === undefined || outcome === undefined) continue;
    if (seen[modelled] === undefined || BADNESS[outcome] > BADNESS[seen[modelled]]) seen[modelled] = outcome;
  }
  return seen;
}
const BADNESS: Readonly<Record<Outcome, number>> = { pass: 0, partly: 1, fail: 2 };

/** A spreadsheet that does not say after how long a swatch was lifted brings it in at 0 s: of its lifting nothing is learned. */
const withoutLifting = ({ lift: _lift, board: _board, ...rest }: SwatchSeen): SwatchSeen => rest;

function conditionOf(swatch: Swatch, trial: Trial, catalogue: Catalogue): Omit<Condition, 'seen'> | undefined {
  const paper = trial.papers.find(({ id }) => id === swatch.paper);
  const glue = trial.glues.find(({ id }) => id === swatch.glue);
  const family = paper?.family;
  const adhesive = glue?.doubtful ? undefined : glue?.record;
  if (!paper || family === undefined || adhesive === undefined) return undefined;
  if (!catalogue.papers.has(family) || !catalogue.adhesives.has(adhesive)) return undefined;
  const substrate = trial.substrate ?? DEFAULT_JOB.substrate;
  if (!catalogue.substrates.has(substrate)) return undefined;
  const { tool = USUAL_METHOD.tool, ...method } = methodOf(swatch, trial);
  if (!catalogue.techniques.has(tool)) return undefined;
  const asked: JobPaper = {
    family,
    ...(paper.grammage !== undefined && { grammage: paper.grammage }),
    ...(paper.dropSeconds !== undefined && { dropSeconds: paper.dropSeconds }),
  };
  const bench = isPublished(trial) ? `${PUBLISHED} ${trial.id}` : (swatch.by ?? trial.by);
  return {
    bench,
    sheet: `${bench} ${sheetKey(asked)}`,
    paperName: paper.name,
    paper: asked,
    adhesive,
    ...(Object.keys(method).length > 0 && { method }),
    job: {
      ...DEFAULT_JOB,
      paper: asked,
      substrate,
      tool,
      widthMm: trial.widthMm,
      heightMm: trial.heightMm,
      placeSeconds: Math.max(1, Math.min(JOB_FIELDS.placeSeconds.high, swatch.hold)),
      celsius: within(trial.conditions.celsius, JOB_FIELDS.celsius),
      humidity: within(trial.conditions.humidity, JOB_FIELDS.humidity),
      lined: false,
    },
  };
}
