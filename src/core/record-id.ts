/** A record's id as links carry it, and what to say of one that there is no record for. */
import type { InputError } from './result';

export const RECORD_ID = /^[a-z0-9]+(-[a-z0-9]+)*$/;

/** `what` as in "Choose a paper from the list." */
export const unknownId = (field: string, what: string): InputError => ({
  field,
  code: 'unknown-id',
  message: `Choose ${what} from the list.`,
});
