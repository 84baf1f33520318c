/** Starch to cook. */
import { STARCHES } from '../../core/mix/jars';
import type { MixField } from '../../core/mix/plan';
import { PickOf, TextOf } from '../parts/PlanField';
import { AmountFields, useNames, type MixFieldsProps } from './AmountFields';

export function PasteFields(props: MixFieldsProps) {
  const names = useNames(props);
  return (
    <>
      <PickOf<MixField> {...props} field="starch" options={names(STARCHES)} />
      <div class="field-row">
        <TextOf<MixField> {...props} field="waterParts" hint="3 to 10." />
        <PickOf<MixField>
          {...props}
          field="by"
          options={[
            { value: 'mass', text: 'mass' },
            { value: 'volume', text: 'volume' },
          ]}
        />
      </div>
      <PickOf<MixField>
        {...props}
        field="vessel"
        options={[
          { value: 'pan', text: 'a pan' },
          { value: 'double-boiler', text: 'a double boiler' },
          { value: 'microwave', text: 'a microwave oven' },
        ]}
      />
      <TextOf<MixField> {...props} field="boiledOff" hint="5 to 20 in an open pan; less under a lid." />
      <PickOf<MixField>
        {...props}
        field="use"
        options={[
          { value: 'as-cooked', text: 'nothing: use it as cooked' },
          { value: 'covering', text: 'covering (about 16 %)' },
          { value: 'hinging', text: 'hinging (about 12 %)' },
          { value: 'lining', text: 'lining (about 8 %)' },
        ]}
      />
      <AmountFields {...props} />
    </>
  );
}
