/** What the sheets calculator asks: the sheets you have, the pieces you need, and for how many. */
import type { CutFieldsProps } from './props';
import { useStore } from '@nanostores/preact';
import type { CutField } from '../../core/cut/plan';
import { TextOf } from '../parts/PlanField';
import { UnitField } from '../parts/UnitField';
import { CutPieceRows } from './CutPieceRows';
import { StockRows } from './StockRows';

export function CutFields(props: CutFieldsProps) {
  const { store, prefix } = props;
  const { kerf } = useStore(store.$texts);
  return (
    <>
      <div class="field-row">
        <TextOf<CutField> {...props} field="kits" hint="How many sets of the pieces." />
        <UnitField store={store} prefix={prefix} hint="You may type the unit too: 9 1/4 in." />
      </div>
      <StockRows {...props} />
      <CutPieceRows {...props} />
      <details open={kerf.trim() !== '0'}>
        <summary>If a cut takes material away</summary>
        <TextOf<CutField>
          {...props}
          field="kerf"
          hint="A knife or a board shear takes nothing; a saw takes the width of its blade."
        />
      </details>
    </>
  );
}
