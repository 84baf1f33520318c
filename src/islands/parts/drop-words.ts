/** What a clock says of a drop of water. */
import { LONGEST_DROP_SECONDS } from '../../core/paper/limits';
import { STANDARD_DROP_SECONDS } from '../../core/paper/sorption';

export const DROP_WORDS = ['A drop touches: start', 'Its shine is gone: stop'] as const;

/** What there is to say of a drop that has stood for so long. */
export const dropRemark = (seconds: number): string | undefined =>
  seconds > LONGEST_DROP_SECONDS
    ? 'It hardly drinks: choose hard-sized instead.'
    : seconds > STANDARD_DROP_SECONDS
      ? 'Slow. You may go on; a glass over the drop keeps it from drying.'
      : undefined;
