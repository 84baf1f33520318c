/** One row of what stands behind an answer: a label, what it comes to, and how that is known. */
export interface Fact {
  readonly label: string;
  readonly value: string;
  /** where it comes from, or how sure it is */
  readonly note?: string;
}
