/** What the name of a paper or a bench may hold (`PAPER_NAME`), in words. */
export const NAME_ALLOWS = "Only letters, digits, spaces and . , ; : ( ) ' / ° % + -.";
