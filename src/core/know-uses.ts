/**
 * A paper of one's own taken to the other calculators: the tails of their links. Written pair by pair (a test reads
 * them with those calculators' own fields), so that this page need not fetch the fields of four others.
 */
import { encodeJob } from './encode-job';
import { DEFAULT_JOB } from './job';
import { writePairs } from './pairs';
import { writePaper, type OwnPaper } from './paper-text';
import { FORMAT } from './plan-link';

export interface UseTails {
  readonly choose: string;
  readonly mix: string;
  readonly cover: string;
  readonly flat: string;
  readonly workshop: string;
}

export function useTails(paper: OwnPaper): UseTails {
  const tail = (more: readonly (readonly [string, string])[] = []): string =>
    writePairs([['v', FORMAT], ...more, ['paper', writePaper(paper)]]);
  return {
    choose: encodeJob({ ...DEFAULT_JOB, paper }),
    mix: tail([['do', 'stretch']]),
    ...{ cover: tail(), flat: tail(), workshop: tail() },
  };
}
