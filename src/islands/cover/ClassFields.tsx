/** For many makers, and what it costs. */
import { useStore } from '@nanostores/preact';
import type { CoverField } from '../../core/cover/plan';
import { TextOf } from '../parts/PlanField';
import type { CoverFieldsProps } from './CoverFields';

export function CopiesFields(props: CoverFieldsProps) {
  const { makers, bottle } = useStore(props.store.$texts);
  return (
    <details open={makers.trim() !== '1' || bottle !== ''}>
      <summary>For a class, and what it costs</summary>
      <div class="field-row">
        <TextOf<CoverField> {...props} field="makers" />
        <TextOf<CoverField> {...props} field="spare" hint="For practice and mishaps." />
        <TextOf<CoverField> {...props} field="bottle" placeholder="leave blank" />
        <TextOf<CoverField> {...props} field="price" hint="In your own currency." placeholder="leave blank" />
      </div>
    </details>
  );
}
