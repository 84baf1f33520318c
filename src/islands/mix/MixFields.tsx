/** What the mixing calculator asks, by kind of job. */
import { useStore } from '@nanostores/preact';
import { BASES, EXTENDERS, POWDERS, STARCHES, type MixField, type MixKind } from '../../core/mix-plan';
import { named } from '../parts/Field';
import { OneOfField, PickOf, TextOf } from '../parts/PlanField';
import { AmountFields, ScaleField, type MixFieldsProps } from './AmountFields';
import { BASIS_OPTIONS, JarFields } from './JarFields';

export const KIND_WORDS: Readonly<Record<MixKind, string>> = {
  powder: 'Dissolve a powder in water',
  paste: 'Cook starch paste',
  stretch: 'Make PVA go further',
  dilute: 'Make a batch from a stronger stock',
  correct: 'Thin or thicken what I have',
};

export function KindField(props: MixFieldsProps) {
  const options = Object.entries(KIND_WORDS).map(([value, text]) => ({ value, text }));
  return <OneOfField<MixField> {...props} field="kind" label="What do you want to do?" options={options} />;
}

export function MixFields(props: MixFieldsProps) {
  const kind = useStore(props.store.$texts).kind as MixKind;
  switch (kind) {
    case 'powder':
      return <PowderFields {...props} />;
    case 'paste':
      return <PasteFields {...props} />;
    case 'stretch':
      return <StretchFields {...props} />;
    default:
      return <JarFields {...props} />;
  }
}

function useNames({ store }: MixFieldsProps) {
  return (ids: readonly string[]) =>
    ids.map((id) => {
      const { ingredients, adhesives } = store.catalogue;
      return { value: id, text: adhesives.get(id)?.name ?? ingredients.get(id)?.name ?? id };
    });
}

function PowderFields(props: MixFieldsProps) {
  const names = useNames(props);
  const gelatine = useStore(props.store.$texts).powder === 'gelatine';
  return (
    <>
      <PickOf<MixField> {...props} field="powder" label="The powder" options={names(POWDERS)} />
      <div class="field-row">
        <TextOf<MixField> {...props} field="percent" label="Strength" unit="%" />
        {!gelatine && (
          <TextOf<MixField>
            {...props}
            field="grade"
            label="Grade, if another"
            unit="mPa·s"
            hint="The label: viscosity at 2 %."
          />
        )}
      </div>
      <PickOf<MixField> {...props} field="basis" label="Per cent means" options={BASIS_OPTIONS} />
      <AmountFields {...props} />
    </>
  );
}

function PasteFields(props: MixFieldsProps) {
  const names = useNames(props);
  return (
    <>
      <PickOf<MixField> {...props} field="starch" label="The starch" options={names(STARCHES)} />
      <div class="field-row">
        <TextOf<MixField> {...props} field="waterParts" label="Water to 1 of starch" unit="parts" hint="3 to 10." />
        <PickOf<MixField>
          {...props}
          field="by"
          label="Parts by"
          options={[
            { value: 'mass', text: 'mass' },
            { value: 'volume', text: 'volume' },
          ]}
        />
      </div>
      <TextOf<MixField>
        {...props}
        field="boiledOff"
        label="Water that boils off"
        unit="%"
        hint="5 to 20 in an open pan; less under a lid."
      />
      <PickOf<MixField>
        {...props}
        field="use"
        label="Thin it for"
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

function StretchFields(props: MixFieldsProps) {
  const names = useNames(props);
  const { aim, from } = useStore(props.store.$texts);
  return (
    <>
      <PickOf<MixField> {...props} field="base" label="Stretch" options={names(BASES)} />
      <PickOf<MixField> {...props} field="extender" label="with" options={names(EXTENDERS)} />
      <PickOf<MixField>
        {...props}
        field="aim"
        label="Given as"
        options={[
          { value: 'parts', text: 'parts by volume' },
          { value: 'solids', text: 'solids of the mix' },
        ]}
      />
      {aim === 'parts' ? (
        <div class="field-row">
          <TextOf<MixField> {...props} field="baseParts" label="Parts of PVA" />
          <TextOf<MixField> {...props} field="extenderParts" label="Parts added" />
        </div>
      ) : (
        <TextOf<MixField> {...props} field="solids" label="Solids of the mix" unit="% by mass" />
      )}
      <PickOf<MixField>
        {...props}
        field="from"
        label="Start from"
        options={[
          { value: 'need', text: 'the amount I need' },
          { value: 'have', text: 'the PVA I have left' },
        ]}
      />
      {from === 'have' ? (
        <div class="field-row">
          <TextOf<MixField> {...props} field="haveGrams" label="PVA left" unit="g" />
          <ScaleField {...props} />
        </div>
      ) : (
        <AmountFields {...props} />
      )}
      <PickOf<MixField>
        {...props}
        field="paper"
        label="To be laid under"
        options={named(props.store.catalogue.papers)}
      />
      <div class="field-row">
        <PickOf<MixField>
          {...props}
          field="tool"
          label="Spread with"
          options={named(props.store.catalogue.techniques)}
        />
        <TextOf<MixField> {...props} field="celsius" label="Room" unit="°C" />
      </div>
    </>
  );
}
