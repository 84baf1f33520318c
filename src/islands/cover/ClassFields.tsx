/** For many makers, and what it costs. */
import { useStore } from '@nanostores/preact';
import type { CoverField } from '../../core/cover/plan';
import { TextOf } from '../parts/PlanField';
import type { CoverFieldsProps } from './CoverFields';

export function ClassFields(props: CoverFieldsProps) {
  const { makers, bottle } = useStore(props.store.$texts);
  return (
    <details open={makers.trim() !== '1' || bottle !== ''}>
      <summary>For a class, and what it costs</summary>
      <div class="field-row">
        <TextOf<CoverField> {...props} field="makers" label="Makers" />
        <TextOf<CoverField> {...props} field="spare" label="Spare" unit="%" hint="For practice and mishaps." />
        <TextOf<CoverField> {...props} field="bottle" label="One bottle holds" unit="ml" placeholder="leave empty" />
        <TextOf<CoverField>
          {...props}
          field="price"
          label="and costs"
          hint="In your own currency."
          placeholder="leave empty"
        />
      </div>
    </details>
  );
}
