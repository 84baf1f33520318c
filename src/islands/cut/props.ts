/** What every group of fields of the cutting plan is given. */
import type { CutStore } from '../../stores/cut/cut';

export interface CutFieldsProps {
  readonly store: CutStore;
  readonly prefix: string;
}
