/** A paper of one's own taken to the other calculators: the tails of their links. */
import { DEFAULT_COVER, COVER_SPECS, askedOfCover } from './cover-plan';
import { encodeJob } from './encode-job';
import { DEFAULT_JOB } from './job';
import { askedIn, DEFAULT_MIX, MIX_SPECS } from './mix-plan';
import { writePaper, type OwnPaper } from './paper-text';
import { encodePlan } from './plan-link';

export interface UseTails {
  readonly choose: string;
  readonly mix: string;
  readonly cover: string;
}

export function useTails(paper: OwnPaper): UseTails {
  const text = writePaper(paper);
  const mix = { ...DEFAULT_MIX, kind: 'stretch' as const, paper: text };
  const cover = { ...DEFAULT_COVER, paper: text };
  return {
    choose: encodeJob({ ...DEFAULT_JOB, paper }),
    mix: encodePlan(mix, MIX_SPECS, askedIn(mix), DEFAULT_MIX),
    cover: encodePlan(cover, COVER_SPECS, askedOfCover(cover), DEFAULT_COVER),
  };
}
