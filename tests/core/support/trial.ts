/** A small trial for tests. */
import { drawOrder, STANDARD_QUESTIONS } from '../../../src/core/trial/design';
import { TRIAL_VERSION, type Outcome, type Swatch, type Trial } from '../../../src/core/trial/record';

export const DESIGN = {
  papers: [
    { id: 'paper-1', name: 'Thin tissue', family: 'unryu', grammage: 25 },
    { id: 'paper-2', name: 'Book paper', grammage: 90, dropSeconds: 20 },
  ],
  glues: [
    { id: 'glue-1', name: 'Paste', record: 'wheat-starch-paste-thin' },
    { id: 'glue-2', name: 'Vinyl', record: 'pva' },
  ],
  holds: [20],
  replicates: 3,
} as const;

/** Judged by `outcome`; swatches for which it gives undefined stay open. */
export function trialWith(outcome: (swatch: Swatch) => Outcome | undefined, over: Partial<Trial> = {}): Trial {
  const question = STANDARD_QUESTIONS.find(({ kind }) => kind === 'lift');
  if (!question) throw new Error('there is no question on lifting');
  return {
    version: TRIAL_VERSION,
    id: 'mine',
    name: 'A trial',
    by: 'Ada',
    createdAt: '2026-03-01T09:00:00Z',
    substrate: 'binders-board',
    ...DESIGN,
    questions: [question],
    widthMm: 50,
    heightMm: 70,
    seed: 11,
    conditions: { celsius: 20, humidity: 50 },
    swatches: drawOrder(DESIGN, 11).map((swatch) => {
      const found = outcome(swatch);
      return found ? { ...swatch, outcomes: { lift: found }, judgedAt: '2026-03-01T10:00:00Z' } : swatch;
    }),
    ...over,
  };
}

/** "paper glue hold block outcome": one swatch a line. */
export const laid = (...lines: string[]): Swatch[] =>
  lines.map((line, i) => {
    const [paper, glue, hold, block, outcome] = line.split(' ') as [string, string, string, string, Outcome | '-'];
    return {
      number: i + 1,
      paper,
      glue,
      hold: Number(hold),
      block: Number(block),
      outcomes: outcome === '-' ? {} : { lift: outcome },
    };
  });

/** Swatches as lines, on a light, a heavy and an unweighed paper, with paste (a) and vinyl (b). */
export const trialOf = (lines: readonly string[], over: Partial<Trial> = {}): Trial =>
  trialWith(() => undefined, {
    papers: [
      { id: 'p', name: 'Light', family: 'unryu', grammage: 25 },
      { id: 'q', name: 'Heavy', family: 'wove-text', grammage: 100 },
      { id: 'r', name: 'Unweighed' },
    ],
    glues: [
      { id: 'a', name: 'Paste', record: 'wheat-starch-paste-thin' },
      { id: 'b', name: 'Vinyl', record: 'pva' },
    ],
    swatches: laid(...lines),
    ...over,
  });
