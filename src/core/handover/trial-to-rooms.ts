/**
 * Where one goes from a planned trial: what the model says of its first paper, how much of one adhesive its swatches
 * take, the sheets they are cut from, and a class that lays them.
 */
import { MOST_STOCKS, tidyCutPieces, tidyStocks } from '../cut/codec';
import { cutTailFor, USUAL_STOCKS } from '../cut/plan';
import { readPaper, writePaper } from '../paper/own-paper';
import { amountsNeeded } from '../trial/amounts';
import type { Planned } from '../trial/plan';
import type { TrialPaper } from '../trial/record';
import { tailWith, type JobFacts } from './job-facts';

export const AFTER_TRIAL = ['choose', 'cover', 'cut', 'class'] as const;
export type AfterTrial = (typeof AFTER_TRIAL)[number];

/** What is asked here does not depend on the coat. */
const NO_COAT = { low: 0, middle: 0, high: 0, basis: 'estimate' } as const;

function sheetOf({ family, grammage, dropSeconds }: TrialPaper): string | undefined {
  if (family === undefined) return undefined;
  const measured = writePaper({
    family,
    ...(grammage !== undefined && { grammage }),
    ...(dropSeconds !== undefined && { dropSeconds }),
  });
  // a trial takes weights that no calculator does
  return readPaper(measured) ? measured : family;
}

/** What the trial says of a job: its first paper and first adhesive that the shelf knows, its ground, its room. */
function factsOf({ papers, glues, substrate, conditions }: Planned): JobFacts {
  const facts = {
    paper: papers.map(sheetOf).find(Boolean),
    glue: glues.find(({ record }) => record)?.record,
    on: substrate,
    celsius: conditions.celsius?.toString(),
    humidity: conditions.humidity?.toString(),
  };
  return Object.fromEntries(Object.entries(facts).flatMap(([fact, text]) => (text ? [[fact, text]] : [])));
}

/**
 * Tails of links, without their question marks. The coverage is asked for the swatches of one adhesive; the cutting plan
 * has a stock for the board and for each paper, as many as it takes, each swatch with its grain the same way.
 */
export function tailsAfterTrial(plan: Planned): Readonly<Record<AfterTrial, string>> {
  const { papers, glues, widthMm, heightMm } = plan;
  const { swatches, perPaper, board } = amountsNeeded(plan, widthMm, heightMm, NO_COAT);
  const facts = factsOf(plan);
  const ofOneGlue = Math.round(swatches / Math.max(1, glues.length));
  const cut = papers.slice(0, MOST_STOCKS - 1);
  return {
    choose: tailWith('choose', facts),
    cover: tailWith('cover', { ...facts, 'cover pieces': `thing=own&pieces=${widthMm}x${heightMm}x${ofOneGlue}` }),
    cut: cutTailFor({
      unit: 'mm',
      stocks: tidyStocks([USUAL_STOCKS.board, ...cut.map(({ name }) => ({ ...USUAL_STOCKS.paper, name }))]),
      pieces: tidyCutPieces([
        { stock: 0, name: 'board', widthMm: board.widthMm, heightMm: board.heightMm, count: swatches, grain: 'height' },
        ...cut.map(({ name }, i) => {
          return { stock: i + 1, name, widthMm, heightMm, count: perPaper.pieces, grain: 'height' as const };
        }),
      ]),
      kits: 1,
      kerf: 0,
    }),
    class: tailWith('class', facts),
  };
}
