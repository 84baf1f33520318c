/** Weight, thickness and absorbency: each asked in the way in which it is known. */
import { useStore } from '@nanostores/preact';
import { GRADES, type MeasureField } from '../../core/measure/plan';
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
        label="Your paper is most like"
        hint="It fills in what you cannot measure."
        options={named(props.store.catalogue.papers)}
      />
      <TextField
        id={`${props.prefix}name`}
        label="What you call it"
        most={40}
        value={name}
        error={problems.find(({ field }) => field === 'name')?.message}
        onText={(text) => props.store.set('name', text)}
      />
    </>
  );
}

export function WeightFields(props: MeasureFieldsProps) {
  const { weightBy } = useStore(props.store.$texts);
  return (
    <>
      <PickOf<MeasureField>
        {...props}
        field="weightBy"
        label="Its weight"
        options={[
          { value: 'weighed', text: 'I weigh it myself' },
          { value: 'metric', text: 'given in g/m²' },
          { value: 'pounds', text: 'given in pounds of a grade' },
          { value: 'thousand', text: 'given in kg per 1000 sheets' },
          { value: 'kind', text: 'not known: as its kind' },
        ]}
      />
      <div class="field-row">
        {weightBy === 'metric' && <TextOf<MeasureField> {...props} field="gsm" label="Grammage" unit="g/m²" />}
        {weightBy === 'pounds' && (
          <>
            <TextOf<MeasureField> {...props} field="pounds" label="Basis weight" unit="lb" />
            <PickOf<MeasureField>
              {...props}
              field="grade"
              label="of the grade"
              hint="The same pounds mean another paper in another grade."
              options={GRADES.map((value) => ({ value, text: value }))}
            />
          </>
        )}
        {weightBy === 'thousand' && (
          <>
            <TextOf<MeasureField> {...props} field="kilos" label="1000 sheets weigh" unit="kg" />
            <TextOf<MeasureField> {...props} field="sheetWide" label="Sheet width" unit="mm" />
            <TextOf<MeasureField> {...props} field="sheetHigh" label="Sheet height" unit="mm" />
          </>
        )}
        {weightBy === 'weighed' && (
          <>
            <TextOf<MeasureField> {...props} field="grams" label="The scale shows" unit="g" />
            <TextOf<MeasureField> {...props} field="pieces" label="for so many pieces" />
            <TextOf<MeasureField> {...props} field="pieceWide" label="each wide" unit="mm" />
            <TextOf<MeasureField> {...props} field="pieceHigh" label="and high" unit="mm" />
            <TextOf<MeasureField>
              {...props}
              field="step"
              label="Step of the scale"
              unit="g"
              hint="The smallest change it shows."
            />
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
        label="Its thickness"
        options={[
          { value: 'stack', text: 'I measure a stack with a ruler' },
          { value: 'gauge', text: 'measured with a calliper gauge' },
          { value: 'bulk', text: 'from a bulk in cm³/g' },
          { value: 'kind', text: 'not known: as its kind' },
        ]}
      />
      <div class="field-row">
        {thickBy === 'gauge' && (
          <TextOf<MeasureField> {...props} field="caliper" label="Caliper" unit="µm" hint="0.1 mm is 100 µm." />
        )}
        {thickBy === 'stack' && (
          <>
            <TextOf<MeasureField> {...props} field="stackMm" label="Stack, pressed" unit="mm" />
            <TextOf<MeasureField> {...props} field="stackSheets" label="Sheets in it" />
          </>
        )}
        {thickBy === 'bulk' && <TextOf<MeasureField> {...props} field="bulk" label="Bulk" unit="cm³/g" />}
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
        label="How it drinks"
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
            label="Drops took"
            unit="s"
            hint="Put a drop on the face that takes the glue and wait until its shine is gone. Three drops on three places are better than one."
          />
          <DropClock store={props.store} />
        </>
      )}
      {drinkBy === 'cobb' && <TextOf<MeasureField> {...props} field="cobb" label="Cobb 60" unit="g/m²" />}
    </>
  );
}
