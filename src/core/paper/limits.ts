/** What each number of a paper may be, in one place: forms, links, own papers and jobs all hold to these. */
import type { NumberLimits } from '../base/limits';

/** Nobody watches a drop for longer; by then the sheet lets hardly any water in. Our own line. */
export const LONGEST_DROP_SECONDS = 1800;

export const PAPER_LIMITS = {
  grammage: { low: 5, high: 600, unit: 'g/m²', what: 'The weight of the paper' },
  caliper: { low: 10, high: 3000, unit: 'µm', what: 'The thickness' },
  dropSeconds: {
    low: 0.2,
    high: LONGEST_DROP_SECONDS,
    unit: 's',
    what: 'The drop test',
    ifTooLarge: ' A slower drop says no more than that the face is closed: leave this empty and choose hard-sized.',
  },
  cobb: { low: 1, high: 400, unit: 'g/m²', what: 'The Cobb 60 figure' },
} as const satisfies Record<string, NumberLimits>;
