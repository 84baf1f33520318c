/** Which records a field may name, and what they are called in "Choose … from the list." */
import { RECORD_ID } from '../base/record-id';
import type { Catalogue } from './records';

const among = (called: string, isOne: (id: string, catalogue: Catalogue) => boolean) => ({ called, isOne });

export const PAPER_KIND = among('a paper', (id, { papers }) => papers.has(id));
export const GROUND = among('what it goes on', (id, { substrates }) => substrates.has(id));
export const BOARD_KIND = among('a board', (id, { substrates }) => substrates.has(id));
export const TOOL = among('a tool', (id, { techniques }) => techniques.has(id));
export const ADHESIVE = among('an adhesive', (id, { adhesives }) => adhesives.has(id));
export const WET_ADHESIVE = among(
  'an adhesive that is spread',
  (id, { adhesives }) => adhesives.get(id)?.form === 'wet',
);

/** For a plan that asks what the glue is spread with. */
export const TOOL_FIELD = {
  kind: 'text',
  key: 'tool',
  label: 'Spread with',
  what: 'The tool',
  pattern: RECORD_ID,
  record: TOOL,
  usual: 'brush-full',
} as const;

/**
 * For a plan that may name a bench of one's own: a text that begins as one does, which `core/bench/own-bench.ts` reads
 * once it is fetched.
 */
export const BENCH_FIELD = {
  kind: 'text',
  key: 'bench',
  what: 'The bench',
  pattern: /^[a-z\d-]+_[a-z]+_\d[^&\n]{0,300}$/u,
  optional: true,
} as const;

/** Records that a page can narrow to the bench that a plan names. */
export interface Narrowable {
  readonly onBench?: (bench: string, records: Catalogue) => Catalogue;
}

/** The records as they are on a bench of one's own, where one is named and these records can be narrowed to it. */
export const recordsOn = (bench: string | undefined, records: Catalogue & Narrowable): Catalogue =>
  (bench !== undefined && records.onBench?.(bench, records)) || records;
