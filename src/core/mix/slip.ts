/** What a mix is told of how long a sheet slides on it; the chooser's model, which reckons it, is handed in. */
import type { Blend } from '../adhesive/blend';
import type { Percentiles } from '../base/quantity';
import type { Catalogue } from '../records/records';

/** The bench a mix is tried on: an A5 piece on binder's board, as the chooser starts with. */
export interface SlipBench {
  /** a paper's text (own-paper.ts) and the id of a technique */
  readonly paper: string;
  readonly tool: string;
  readonly celsius: number;
}

export interface SlipChange {
  readonly base: Percentiles;
  readonly mixed: Percentiles;
  /** middle of the mix ÷ middle of the base */
  readonly times: number;
  /** seconds it takes to place such a piece */
  readonly neededSeconds: number;
}

/** How long the sheet on this bench can be slid with the base and with the mix. */
export type SlipReckoner = (parts: Blend, bench: SlipBench, catalogue: Catalogue) => SlipChange;
