/** What the sheet makes of the water: how much it can hold, and whether the work is likely to stay flat. */
import { rowsOf, type CoverPlan } from '../cover/plan';
import type { Coverage } from '../adhesive/coverage';
import { chanceInTen, figure, span } from '../base/format';
import { nearestWithin } from '../base/limits';
import { DEFAULT_JOB, JOB_FIELDS } from '../choose/job';
import { judge } from '../choose/judge';
import type { Fact } from '../base/fact';
import { poreVolume } from '../paper/paper';
import { paperName, readPaper } from '../paper/own-paper';
import type { Catalogue, Paper } from '../records/records';
import { sheetOf } from '../paper/sheet';

/** Water the sheet has room for, g/m², at the middle of its records. */
export const roomIn = ({ grammage, density }: Paper): number =>
  poreVolume(grammage.middle, grammage.middle / density.middle);

/**
 * Whether what is covered stays flat, reckoned for the largest piece with the coat that the calculator of cover
 * gives.
 */
export function flatFacts(
  plan: CoverPlan,
  { waterPerSquareMetre }: Coverage,
  catalogue: Catalogue,
): { facts: readonly Fact[]; warnings: readonly string[] } {
  const own = readPaper(plan.paper)!;
  const adhesive = catalogue.adhesives.get(plan.adhesive);
  if (adhesive?.form !== 'wet') throw new RangeError(`${plan.adhesive} is not spread wet`);
  const board = boardOf(plan);
  const size = (mm: number) => nearestWithin(mm, JOB_FIELDS.widthMm);
  const job = {
    ...DEFAULT_JOB,
    paper: own,
    tool: plan.tool,
    widthMm: size(board.widthMm),
    heightMm: size(board.heightMm),
    ...(plan.bench !== undefined && { bench: plan.bench }),
  };
  const paper = sheetOf(job, catalogue);
  const { chances } = judge(adhesive, { ...job, needs: ['flat'] }, catalogue);
  const room = roomIn(paper);
  const load = waterPerSquareMetre!;
  const soaked = load.middle > room;
  const facts: Fact[] = [
    {
      label: 'Room in the sheet',
      value: `${figure(room)}\u00a0g/m²`,
      note: `${paperName(plan.paper, catalogue)}, from ${own.caliper === undefined ? 'its records' : 'your measurements'}; the coat brings ${span(load.low, load.high, 'g/m²')} of water, which board and sheet share`,
    },
    {
      label: 'It dries flat',
      value: chanceInTen(chances.flat),
      note: 'on binder’s board of this size, pressed; an estimate of the model',
    },
  ];
  const hints = [
    ...(soaked
      ? [
          `The coat brings more water than the sheet has room for: it will be wet through. Brush the board instead, or lay a thinner coat.`,
        ]
      : []),
    ...(chances.flat < 0.5
      ? [
          'It may curl or cockle. Line the other face with the same paper and the same coat, grain the same way, and dry it under weight.',
        ]
      : []),
  ];
  return { facts, warnings: hints };
}

/** The board that may bow: of a thing, its own size; of loose pieces, the largest. */
function boardOf(plan: CoverPlan): { readonly widthMm: number; readonly heightMm: number } {
  if (plan.thing !== 'own') return { widthMm: plan.width, heightMm: plan.height };
  const pieces = rowsOf(plan).map(({ piece }) => piece);
  return pieces.reduce((a, b) => (b.widthMm * b.heightMm > a.widthMm * a.heightMm ? b : a));
}
