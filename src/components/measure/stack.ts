/** The thickness of one sheet from a stack of them, and the most it can be out. */
export interface Stack {
  /** what the ruler or gauge shows, mm */
  readonly millimetres: number;
  readonly sheets: number;
  /** how far the reading of the whole stack may be out, mm */
  readonly withinMm: number;
}

export function caliperFromStack({ millimetres, sheets, withinMm }: Stack): { micrometres: number; within: number } {
  return { micrometres: (millimetres * 1000) / sheets, within: (withinMm * 1000) / sheets };
}
