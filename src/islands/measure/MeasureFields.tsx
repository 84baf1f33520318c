/** Weight, thickness and absorbency: each asked in the way in which it is known. */
import { useStore } from '@nanostores/preact';
import { EXAMPLE_MEASURE, GRADES, isMeasured, UNMEASURED, type MeasureField } from '../../core/measure/plan';
import type { MeasureStore } from '../../stores/measure/measure';
import { named } from '../parts/Field';
import { PickOf, TextOf } from '../parts/PlanField';
import { TextField } from '../parts/TextField';
import { DropClock } from './DropClock';

export interface MeasureFieldsProps {
  readonly store: MeasureStore;
  readonly prefix: string;
}

export function KindFields(props: MeasureFieldsProps) {
  const { name } = useStore(props.store.$texts);
  const problems = useStore(props.store.$problems);
  return (
    <>
      <PickOf<MeasureField>
        {...props}
        field="family"
        hint="It fills in what you cannot measure."
        options={named(props.store.catalogue.papers)}
      />
      <TextField
        id={`${props.prefix}name`}
        label={props.store.fields.name.label}
        most={40}
        value={name}
        error={problems.find(({ field }) => field === 'name')?.message}
        onText={(text) => props.store.set('name', text)}
      />
    </>
  );
}

/** The form opens empty: what stands in it is the reader's own, or an example that they asked for. */
export function ExampleButton({ store }: MeasureFieldsProps) {
  const { plan } = useStore(store.$solved);
  const problems = useStore(store.$problems);
  const isEmpty = problems.length === 0 && !isMeasured(plan);
  return (
    <p class="no-print">
      {isEmpty ? (
        <button type="button" class="button-quiet" onClick={() => store.take(EXAMPLE_MEASURE)}>
          Show an example
        </button>
      ) : (
        <button type="button" class="button-quiet" onClick={() => store.take({ ...UNMEASURED, family: plan.family })}>
          Empty the form
        </button>
      )}
    </p>
  );
}

export function WeightFields(props: MeasureFieldsProps) {
  const { weightBy } = useStore(props.store.$texts);
  return (
    <>
      <PickOf<MeasureField>
        {...props}
        field="weightBy"
        options={[
          { value: 'weighed', text: 'I weigh it myself' },
          { value: 'metric', text: 'given in g/m²' },
          { value: 'pounds', text: 'given in pounds of a grade' },
          { value: 'thousand', text: 'given in kg per 1000 sheets' },
          { value: 'kind', text: 'not known: as its kind' },
        ]}
      />
      <div class="field-row">
        {weightBy === 'metric' && <TextOf<MeasureField> {...props} field="gsm" />}
        {weightBy === 'pounds' && (
          <>
            <TextOf<MeasureField> {...props} field="pounds" />
            <PickOf<MeasureField>
              {...props}
              field="grade"
              hint="The same pounds mean another paper in another grade."
              options={GRADES.map((value) => ({ value, text: value }))}
            />
          </>
        )}
        {weightBy === 'thousand' && (
          <>
            <TextOf<MeasureField> {...props} field="kilos" />
            <TextOf<MeasureField> {...props} field="sheetWide" />
            <TextOf<MeasureField> {...props} field="sheetHigh" />
          </>
        )}
        {weightBy === 'weighed' && (
          <>
            <TextOf<MeasureField> {...props} field="grams" />
            <TextOf<MeasureField> {...props} field="pieces" />
            <TextOf<MeasureField> {...props} field="pieceWide" />
            <TextOf<MeasureField> {...props} field="pieceHigh" />
            <TextOf<MeasureField> {...props} field="step" hint="The smallest change it shows." />
          </>
        )}
      </div>
    </>
  );
}

export function ThicknessFields(props: MeasureFieldsProps) {
  const { thickBy } = useStore(props.store.$texts);
  return (
    <>
      <PickOf<MeasureField>
        {...props}
        field="thickBy"
        options={[
          { value: 'stack', text: 'I measure a stack with a ruler' },
          { value: 'gauge', text: 'measured with a calliper gauge' },
          { value: 'bulk', text: 'from a bulk in cm³/g' },
          { value: 'kind', text: 'not known: as its kind' },
        ]}
      />
      <div class="field-row">
        {thickBy === 'gauge' && <TextOf<MeasureField> {...props} field="caliper" hint="0.1 mm is 100 µm." />}
        {thickBy === 'stack' && (
          <>
            <TextOf<MeasureField> {...props} field="stackMm" />
            <TextOf<MeasureField> {...props} field="stackSheets" />
          </>
        )}
        {thickBy === 'bulk' && <TextOf<MeasureField> {...props} field="bulk" />}
      </div>
    </>
  );
}

export function AbsorbencyFields(props: MeasureFieldsProps) {
  const { drinkBy } = useStore(props.store.$texts);
  return (
    <>
      <PickOf<MeasureField>
        {...props}
        field="drinkBy"
        options={[
          { value: 'drop', text: 'I time a drop of water' },
          { value: 'cobb', text: 'a Cobb 60 figure from the mill' },
          { value: 'kind', text: 'not known: as its kind and sizing' },
        ]}
      />
      {drinkBy === 'drop' && (
        <>
          <TextOf<MeasureField>
            {...props}
            field="drops"
            unit="s"
            hint="Put a drop on the face that takes the glue and wait until its shine is gone. Three drops on three places are better than one."
          />
          <DropClock store={props.store} />
          <div class="field-row">
            <TextOf<MeasureField>
              {...props}
              field="dropsPerMl"
              hint="Count them into a 1 ml spoon or syringe. Leave blank for 20."
            />
            <TextOf<MeasureField>
              {...props}
              field="stain"
              hint="At its widest, when the shine has gone. You may leave it blank, but with it the answer is better."
            />
          </div>
        </>
      )}
      {drinkBy === 'cobb' && <TextOf<MeasureField> {...props} field="cobb" />}
    </>
  );
}
