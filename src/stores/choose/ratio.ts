/** The best ratio for the chooser's job, with the links that take it to the mixer. Fetched once the answer is there. */
import { bestRatioInTurns, mixOf, type BestRatio, type RatioPart } from '../../core/choose/best-ratio';
import type { Draws } from '../../core/choose/draws';
import type { Ranked } from '../../core/choose/finding';
import type { Job } from '../../core/choose/job';
import { ratiosTold, type RatioTold, type ThreeTold } from '../../core/choose/ratio-words';
import { millilitresInHand } from '../../core/handover/choose-to-all';
import { makingsOf, type Making } from '../../core/handover/choose-to-mix';
import { formatAmount } from '../../core/base/format';
import type { Range } from '../../core/base/quantity';
import type { Catalogue } from '../../core/records/records';
import { atOnce } from '../../core/base/turns';
import { inTurns } from '../shared/time-slice';

/** What is done next to have it: a link to the mixer, and its words. */
export interface MakingLink {
  readonly text: string;
  readonly tail: string;
}

interface Made {
  /** how much of it goes on this piece */
  readonly amount: string;
  readonly makings: readonly MakingLink[];
}
export interface Ratios {
  readonly pairs: readonly (RatioTold & Made)[];
  readonly three?: ThreeTold & Made;
}

/** What a link to the mixer is called. */
function madeWords({ does, of }: Making, catalogue: Catalogue): string {
  if (does === 'stretch') return 'Mix this';
  const name = catalogue.adhesives.get(of!)!.short;
  return does === 'cook' ? `Cook the ${name}` : `Make the ${name}`;
}

function shown(found: BestRatio, best: Ranked, job: Job, catalogue: Catalogue): Ratios {
  const made = (parts: readonly RatioPart[], coat: Range | undefined): Made => {
    const need = coat ? millilitresInHand(job, coat, mixOf(parts, catalogue), catalogue) : 0;
    return {
      amount: `For this piece, have ${formatAmount(need, 9)}\u00a0ml of it in hand.`,
      // what is used alone is the answer's own matter
      makings: (parts.length > 1 ? makingsOf(parts, need, job, catalogue) : []).map((making) => ({
        text: madeWords(making, catalogue),
        tail: making.tail,
      })),
    };
  };
  const { pairs, three } = ratiosTold(found, best.kind, job, catalogue);
  return {
    pairs: pairs.map((pair) => ({ ...pair, ...made(pair.parts, pair.coat) })),
    ...(three && { three: { ...three, ...made(three.parts, found.coat) } }),
  };
}

/** At once, for the build. Undefined where nothing can be mixed of what is at hand. */
export function ratiosFor(best: Ranked, job: Job, catalogue: Catalogue): Ratios | undefined {
  const found = atOnce(bestRatioInTurns(job, catalogue));
  return found && shown(found, best, job, catalogue);
}

/**
 * In turns that let a thumb in between, and an answer that is still being worked out, with what swatches have taught the
 * model, if they have. Returns a function that stops it.
 */
export function lookForRatios(
  best: Ranked,
  job: Job,
  catalogue: Catalogue,
  done: (ratios: Ratios | undefined) => void,
  learned?: Draws,
): () => void {
  return inTurns(
    bestRatioInTurns(job, catalogue, job.atHand, learned),
    (found) => done(found && shown(found, best, job, catalogue)),
    'background',
  );
}
