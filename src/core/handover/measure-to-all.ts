/**
 * A paper of one's own taken to the other calculators: the tails of their links. Written pair by pair (a test reads
 * them with those calculators' own fields), so that this page need not fetch the fields of four others.
 */
import { encodeJob } from '../choose/write-link';
import { DEFAULT_JOB } from '../choose/job';
import { writePairs } from '../link/pairs';
import { writePaper, type OwnPaper } from '../paper/own-paper';
import { FORMAT } from '../link/plan-link';

export interface PaperTails {
  readonly choose: string;
  readonly mix: string;
  readonly cover: string;
  readonly flat: string;
  readonly workshop: string;
}

/** The tails of links that take a paper of one's own to the other calculators. */
export function paperTails(paper: OwnPaper): PaperTails {
  const tail = (more: readonly (readonly [string, string])[] = []): string =>
    writePairs([['v', FORMAT], ...more, ['paper', writePaper(paper)]]);
  return {
    choose: encodeJob({ ...DEFAULT_JOB, paper }),
    mix: tail([['do', 'stretch']]),
    ...{ cover: tail(), flat: tail(), workshop: tail() },
  };
}
