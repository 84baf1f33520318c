/**
 * An invented trial that shows what the trial pages do with one. Nobody laid these swatches: papers,
 * adhesives and outcomes were made up for it, and it says so wherever it is shown.
 */
import { drawOrder, STANDARD_QUESTIONS } from '../core/trial/design';
import { TRIAL_VERSION, type Outcome, type Trial } from '../core/trial/record';

const papers = [
  { id: 'paper-1', name: 'Newsprint offcut', family: 'newsprint', grammage: 45 },
  { id: 'paper-2', name: 'Laid text, end of a ream', family: 'laid-text', grammage: 80 },
  { id: 'paper-3', name: 'Cartridge from a pad', family: 'cartridge', grammage: 130 },
  { id: 'paper-4', name: 'Bristol, second sheet', family: 'bristol', grammage: 220 },
] as const;
const glues = [
  { id: 'glue-1', name: 'EVA from a big tub', record: 'eva' },
  { id: 'glue-2', name: 'Wheat starch paste, thin', record: 'wheat-starch-paste-thin' },
] as const;

/** Made up: one letter per repeat, p pass, h partly, f fail. */
const INVENTED: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  lift: {
    'paper-1 glue-1': 'ffff',
    'paper-1 glue-2': 'phpf',
    'paper-2 glue-1': 'fphf',
    'paper-2 glue-2': 'pppp',
    'paper-3 glue-1': 'pphp',
    'paper-3 glue-2': 'pppp',
    'paper-4 glue-1': 'pppp',
    'paper-4 glue-2': 'pppp',
  },
  cockle: {
    'paper-1 glue-1': 'pphp',
    'paper-1 glue-2': 'fhff',
    'paper-2 glue-1': 'pppp',
    'paper-2 glue-2': 'hphp',
    'paper-3 glue-1': 'pppp',
    'paper-3 glue-2': 'pphp',
    'paper-4 glue-1': 'pppp',
    'paper-4 glue-2': 'pppp',
  },
};
const LETTERS: Readonly<Record<string, Outcome>> = { p: 'pass', h: 'partly', f: 'fail' };

const design = { papers, glues, holds: [45], replicates: 4 } as const;
const SEED = 604;

export const demoTrial: Trial = {
  version: TRIAL_VERSION,
  id: 'demo',
  name: 'Four papers on mount board (an invented trial)',
  by: '',
  createdAt: '2026-01-01',
  demo: true,
  substrate: 'mount-board',
  ...design,
  questions: STANDARD_QUESTIONS.filter(({ id }) => id in INVENTED),
  widthMm: 50,
  heightMm: 70,
  seed: SEED,
  conditions: { celsius: 19, humidity: 52 },
  swatches: drawOrder(design, SEED).map((swatch) => ({
    ...swatch,
    outcomes: Object.fromEntries(
      Object.entries(INVENTED).flatMap(([question, cells]): [string, Outcome][] => {
        const outcome = LETTERS[cells[`${swatch.paper} ${swatch.glue}`]?.[swatch.block - 1] ?? ''];
        return outcome ? [[question, outcome]] : [];
      }),
    ),
  })),
};
