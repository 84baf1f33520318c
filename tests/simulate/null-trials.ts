/**
 * Trials in which nothing differs, drawn by a seeded lot: what a page says of them is false wherever it says that
 * something differs. And one in which something does, so that a page that never says anything is found out.
 */
import { seededUniform } from '../../src/core/base/random';
import { drawOrder } from '../../src/core/trial/design';
import { mergeTrials } from '../../src/core/trial/merge';
import { TRIAL_VERSION, type Outcome, type Question, type Swatch, type Trial } from '../../src/core/trial/record';

interface Plan {
  readonly id?: string;
  readonly by?: string;
  readonly glues: readonly string[];
  /** g/m² */
  readonly papers: readonly number[];
  readonly replicates: number;
  readonly questions: number;
}

type Uniform = () => number;
/** What a swatch shows. */
type Nature = (swatch: Swatch, uniform: Uniform) => Outcome;

const asked = (count: number): readonly Question[] =>
  Array.from({ length: count }, (_, i) => ({
    id: `q-${i + 1}`,
    kind: 'own',
    text: `Question ${i + 1}`,
    criterion: '',
  }));

function laid(plan: Plan, nature: Nature, uniform: Uniform): Trial {
  const { id = 'one', by = 'Ada', replicates } = plan;
  const glues = plan.glues.map((name) => ({ id: name, name }));
  const papers = plan.papers.map((grammage) => ({ id: `p-${grammage}`, name: `Paper of ${grammage}`, grammage }));
  const questions = asked(plan.questions);
  const design = { papers, glues, holds: [20], replicates };
  return {
    version: TRIAL_VERSION,
    id,
    name: id,
    by,
    createdAt: '2026-01-01',
    ...design,
    questions,
    widthMm: 50,
    heightMm: 70,
    seed: 1,
    conditions: {},
    swatches: drawOrder(design, 1).map((swatch) => ({
      ...swatch,
      outcomes: Object.fromEntries(questions.map((question) => [question.id, nature(swatch, uniform)])),
    })),
  };
}

/** Passes with a chance, comes out partly with another, and fails else. */
const chances =
  (pass: number, partly = 0): Nature =>
  (_, uniform) => {
    const lot = uniform();
    return lot < pass ? 'pass' : lot < pass + partly ? 'partly' : 'fail';
  };

const NINE = { glues: ['a', 'b', 'c'], papers: [30, 60, 120], replicates: 6, questions: 6 };

export interface Rates {
  /** shares of trials whose page says somewhere that one adhesive did better */
  readonly better: number;
  /** that weight matters */
  readonly weight: number;
  /** the one or the other */
  readonly either: number;
}

export interface Row {
  readonly id: string;
  readonly says: string;
  /** is there a true difference to be found */
  readonly differs: boolean;
  readonly draw: (uniform: Uniform) => Trial;
  /** the same shares, of as many trials, by the program as it was on 25 November 2026 (before 533cf06) */
  readonly before: Rates;
}

export const ROWS: readonly Row[] = [
  {
    id: 'three-equal',
    says: '3 papers, 3 adhesives, 6 swatches of each, 6 questions; every swatch passes 1 time in 2',
    differs: false,
    before: { better: 0.3705, weight: 0.505, either: 0.693 },
    draw: (uniform) => laid(NINE, chances(0.5), uniform),
  },
  {
    id: 'three-equal-partly',
    says: 'the same; 4 in 10 pass, 2 in 10 come out partly, 4 in 10 fail',
    differs: false,
    before: { better: 0.3855, weight: 0.5145, either: 0.7025 },
    draw: (uniform) => laid(NINE, chances(0.4, 0.2), uniform),
  },
  {
    id: 'three-equal-good',
    says: 'the same; 9 in 10 pass',
    differs: false,
    before: { better: 0.1035, weight: 0.2105, either: 0.291 },
    draw: (uniform) => laid(NINE, chances(0.9), uniform),
  },
  {
    id: 'two-hands',
    says: 'trials of two people merged: one passes 9 in 10 and tried adhesives 1 and 2, the other 3 in 10 and tried 2 and 3; 3 papers, 4 swatches, 2 questions',
    differs: false,
    before: { better: 0.9725, weight: 0.118, either: 0.979 },
    draw: (uniform) => {
      const plan = { papers: [30, 60, 120], replicates: 4, questions: 2 };
      const ada = laid({ ...plan, id: 'ada', glues: ['a', 'b'] }, chances(0.9), uniform);
      const bo = laid({ ...plan, id: 'bo', by: 'Bo', glues: ['b', 'c'] }, chances(0.3), uniform);
      return mergeTrials(ada, bo).trial;
    },
  },
  {
    id: 'two-hands-uneven',
    says: 'trials of two people merged: both tried both adhesives, one 6 swatches of the first and 2 of the second, the other the reverse; one passes 9 in 10, the other 3 in 10; 2 papers, 2 questions',
    differs: false,
    before: { better: 0.409, weight: 0, either: 0.409 },
    draw: (uniform) => {
      const plan = { papers: [30, 60], replicates: 6, questions: 2, glues: ['a', 'b'] };
      const without = (trial: Trial, few: string): Trial => ({
        ...trial,
        swatches: trial.swatches.filter(({ glue, block }) => glue !== few || block <= 2),
      });
      const ada = without(laid({ ...plan, id: 'ada' }, chances(0.9), uniform), 'b');
      const bo = without(laid({ ...plan, id: 'bo', by: 'Bo' }, chances(0.3), uniform), 'a');
      return mergeTrials(ada, bo).trial;
    },
  },
  {
    id: 'one-true',
    says: '3 papers, 3 adhesives, 6 swatches of each, 6 questions; on each question the third passes 2 in 10, the others 8 in 10',
    differs: true,
    before: { better: 1, weight: 0.5015, either: 1 },
    draw: (uniform) => laid(NINE, (swatch, lot) => chances(swatch.glue === 'c' ? 0.2 : 0.8)(swatch, lot), uniform),
  },
];

/** Pairings of which each passes 1 time in 2: neither mostly passes nor mostly fails. */
export const CELLS = [
  { swatches: 4, before: 0.1208 },
  { swatches: 6, before: 0.0304 },
  { swatches: 10, before: 0.0216 },
].map((cell) => ({ id: `half-${cell.swatches}`, ...cell }));

/** One trial of one question with nine pairings. */
export const drawHalf = (replicates: number, uniform: Uniform): Trial =>
  laid({ ...NINE, replicates, questions: 1 }, chances(0.5), uniform);

/** A lot of its own for each row, the same every time. */
export const lotOf = (id: string): Uniform =>
  seededUniform([...id].reduce((seed, letter) => (seed * 31 + letter.charCodeAt(0)) >>> 0, 7));
