/**
 * The design of a trial: every paper with every adhesive at every hold time, repeated as whole sets. Each
 * repeat is a block, and within a block the order is drawn by lot, so that a brush that tires, a pot that
 * thickens and a day that warms up fall on all alike.
 */
import { seededUniform } from '../base/random';
import { TRIAL_LIMITS, type Question, type QuestionKind, type Swatch, type Trial } from './record';

export interface Design {
  readonly papers: readonly { readonly id: string }[];
  readonly glues: readonly { readonly id: string }[];
  /** seconds */
  readonly holds: readonly number[];
  readonly replicates: number;
}

/** A claim about weight needs this many weights. Choice of ours. */
export const LEAST_WEIGHTS = 3;

/** How many swatches a design asks for. */
export const swatchCount = ({ papers, glues, holds, replicates }: Design): number =>
  papers.length * glues.length * holds.length * replicates;

/**
 * How many claims the page of such a trial makes: each two adhesives, and each adhesive over papers of three weights
 * or more, on each question. They share what the page may get wrong.
 */
export function claimCount({ papers, glues, questions }: Pick<Trial, 'papers' | 'glues' | 'questions'>): number {
  const weights = new Set(papers.flatMap(({ grammage }) => grammage ?? [])).size;
  const pairs = (glues.length * (glues.length - 1)) / 2;
  return questions.length * (pairs + (weights >= LEAST_WEIGHTS ? glues.length : 0));
}

/**
 * The swatches in the order in which they are to be laid. The same design and seed always give the same
 * order. Throws RangeError for more swatches than a trial holds.
 */
export function drawOrder(design: Design, seed: number): readonly Swatch[] {
  if (swatchCount(design) > TRIAL_LIMITS.swatches)
    throw new RangeError(`a trial holds at most ${TRIAL_LIMITS.swatches} swatches`);
  const uniform = seededUniform(seed);
  const order: Swatch[] = [];
  for (let block = 1; block <= design.replicates; block += 1) {
    const set = design.papers.flatMap(({ id: paper }) =>
      design.glues.flatMap(({ id: glue }) => design.holds.map((hold) => ({ paper, glue, hold, block, outcomes: {} }))),
    );
    for (const swatch of shuffled(set, uniform)) order.push({ number: order.length + 1, ...swatch });
  }
  return order;
}

/** Fisher and Yates: every order is as likely as every other. */
function shuffled<T>(list: readonly T[], uniform: () => number): readonly T[] {
  const pool = [...list];
  for (let i = pool.length - 1; i > 0; i -= 1) {
    const j = Math.floor(uniform() * (i + 1));
    [pool[i], pool[j]] = [pool[j]!, pool[i]!];
  }
  return pool;
}

/** Questions to choose from, each with what counts as a pass. Wording and criteria are ours. */
export const STANDARD_QUESTIONS: readonly Question[] = [
  question(
    'spread',
    'Spreads without dragging',
    'Pass: an even coat, the sheet flat and whole. Partly: it wrinkles but can be laid. Fail: fibres roll up or it tears.',
  ),
  question(
    'lift',
    'Lifts again without harm to the paper',
    'Pass: comes up whole, no fibres left behind. Partly: a few fibres or a scuffed corner. Fail: tears or splits.',
  ),
  question(
    'board',
    'Lifts again without harm to the board',
    'Pass: the face is whole. Partly: a few raised fibres. Fail: the face comes away.',
  ),
  question(
    'strike',
    'No strike-through',
    'Pass: nothing shows on the face when dry. Partly: seen only at a slant. Fail: a stain or shine.',
  ),
  question(
    'cockle',
    'Dries flat',
    'Pass: flat under a ruler after a night under weight. Partly: a gap of up to 1 mm. Fail: more.',
  ),
  question(
    'stuck',
    'Stays stuck after drying',
    'Pass: paper or board gives way before the joint when peeled. Partly: peels in places. Fail: peels clean off.',
  ),
];

function question(kind: Exclude<QuestionKind, 'own'>, text: string, criterion: string): Question {
  return { id: kind, kind, text, criterion };
}
