/** A record's id as links carry it, and what to say of one that there is no record for. */
import type { InputError } from './result';

export const RECORD_ID = /^[a-z0-9]+(-[a-z0-9]+)*$/;

/** The id of a kind of paper, or a paper of one's own; whether it is one, only `readPaper` and the records know. */
export const PAPER_TEXT = /^[a-z0-9]+(-[a-z0-9]+)*(~[^~&\n]{1,50}){0,10}$/u;

/** `what` as in "Choose a paper from the list." */
export const unknownId = (field: string, what: string): InputError => ({
  field,
  code: 'unknown-id',
  message: `Choose ${what} from the list.`,
});
