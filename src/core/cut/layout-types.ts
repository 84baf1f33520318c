/** Words of the cutting plan: stock, pieces, and what a plan says. Lengths in mm, origin at the top left as drawn. */

/** Along which side of the stock sheet its grain runs: the longer one, the shorter one, or nothing to mind. */
export const STOCK_GRAINS = ['long', 'short', 'none'] as const;
export type StockGrain = (typeof STOCK_GRAINS)[number];

/** How the grain must run in a piece: along its height, along its width, or either. */
export const PIECE_GRAINS = ['height', 'width', 'either'] as const;
export type PieceGrain = (typeof PIECE_GRAINS)[number];

/** All pieces of one stock, kits included; more are not for one bench. */
export const MOST_TO_CUT = 2000;

export interface StockSheet {
  readonly widthMm: number;
  readonly heightMm: number;
  /** in a square sheet 'long' is along the height, 'short' along the width */
  readonly grain: StockGrain;
  /** taken off each of the four edges before anything else; 0 when left out */
  readonly trimMm?: number;
  /** what a cut eats; 0, a knife's, when left out */
  readonly kerfMm?: number;
}

export interface SheetPiece {
  readonly name: string;
  readonly widthMm: number;
  readonly heightMm: number;
  /** in one kit */
  readonly count: number;
  readonly grain: PieceGrain;
}

/** One piece where it lies. `turned`: its height lies along the sheet's width. */
export interface PlacedPiece {
  /** its row among the pieces asked for */
  readonly piece: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly turned: boolean;
}

/** A rectangle of the sheet and what becomes of it. */
export interface SheetPart {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly becomes:
    | { readonly kind: 'piece'; readonly placement: PlacedPiece }
    | { readonly kind: 'offcut' }
    /** cut from edge to edge: 'x' cuts run from top to bottom at these distances from its left edge, 'y' cuts from side to side at these from its top */
    | {
        readonly kind: 'cut';
        readonly axis: 'x' | 'y';
        readonly at: readonly number[];
        readonly parts: readonly SheetPart[];
      };
}

export interface SheetPlan {
  /** how many sheets are cut like this */
  readonly times: number;
  /** the sheet within its trim, and every cut in it */
  readonly part: SheetPart;
  readonly placements: readonly PlacedPiece[];
  /** biggest first, by area; slivers left out */
  readonly offcuts: readonly {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  }[];
}

export interface SheetLayout {
  readonly plans: readonly SheetPlan[];
  readonly sheets: number;
  /** share of all stock that no piece is made of, trim and kerf included: 0 to 1 */
  readonly waste: number;
  /** sheets that the area of the pieces alone asks for */
  readonly areaBound: number;
  /** no plan with straight-through cuts needs fewer than this; at least the area's */
  readonly bound: number;
  /** `sheets` is `bound` */
  readonly proved: boolean;
}
