/**
 * Changes whenever the answer to some job can change: constants, records, sampling or ranking. A link
 * carries the version it was made with, so that a page can say when it would answer otherwise today.
 */
export const MODEL_VERSION = 13;
