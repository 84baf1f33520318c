/** What old things may bring with them, whatever is done with them: poisonous colours and mould. */

/** Ids of the cautions of handling what is old, or whose making is not known. */
export const OLD_THINGS = ['old-pigments', 'mould'] as const;
