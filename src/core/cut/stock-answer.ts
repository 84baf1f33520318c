/** How one stock of sheets is cut: the layout, and each different sheet with its drawing and its order of cuts. */
import type { StockRow } from './codec';
import type { SheetDrawing } from './drawing';
import type { CutStep } from './layout-order';
import type { SheetLayout, SheetPlan } from './layout-types';
import type { PlaceRow } from './table';

export interface SheetAnswer {
  readonly plan: SheetPlan;
  readonly steps: readonly CutStep[];
  readonly drawing: SheetDrawing;
  readonly rows: readonly PlaceRow[];
  /** "Cut 4 sheets like this" */
  readonly title: string;
  /** the drawing in words */
  readonly label: string;
  /** what is left that is worth keeping, in words */
  readonly offcut: string;
}

export interface StockAnswer {
  readonly stock: StockRow;
  readonly name: string;
  readonly layout: SheetLayout;
  readonly sheets: readonly SheetAnswer[];
}
