/** What a class asks besides its project: people, day, materials, room, and the sheets that are bought. */
import { useStore } from '@nanostores/preact';
import type { LengthUnit } from '../../core/base/length-text';
import { SHEET_SIZES, sizeTyped, typedSize } from '../../core/cut/sheet-sizes';
import { SHEET_FIELDS, type ClassField } from '../../core/class/plan';
import type { ClassStore } from '../../stores/class/class';
import { named, SelectField } from '../parts/Field';
import { PaperPick } from '../parts/PaperPick';
import { PickOf, TextOf } from '../parts/PlanField';
import { DayField } from './DayField';

interface Props {
  readonly store: ClassStore;
  readonly prefix: string;
}

export function ClassFields(props: Props) {
  return (
    <>
      <div class="field-row">
        <TextOf<ClassField> {...props} field="people" />
        <TextOf<ClassField> {...props} field="spare" hint="One for you to show." />
      </div>
      <div class="field-row">
        <DayField {...props} field="day" kind="date" label="Day" hint="Or leave it blank." />
        <DayField {...props} field="time" kind="time" label="It starts at" />
        <TextOf<ClassField> {...props} field="hours" />
      </div>
      <div class="field-row">
        <TextOf<ClassField> {...props} field="celsius" />
        <TextOf<ClassField> {...props} field="humidity" unit="% RH" />
      </div>
    </>
  );
}

export function MaterialFields(props: Props) {
  const { catalogue } = props.store;
  const wet = named(new Map([...catalogue.adhesives].filter(([, { form }]) => form === 'wet')));
  return (
    <>
      <PaperPick<ClassField> {...props} field="paper" />
      <PickOf<ClassField> {...props} field="on" options={named(catalogue.substrates)} />
      <PickOf<ClassField> {...props} field="adhesive" options={wet} />
      <PickOf<ClassField> {...props} field="tool" options={named(catalogue.techniques)} />
      <TextOf<ClassField> {...props} field="loss" />
    </>
  );
}

const STOCKS = [
  ['board', 'Board'],
  ['paper', 'Covering paper'],
  ['cloth', 'Cloth'],
  ['lining', 'Paper for the inside'],
] as const;
const GRAINS = [
  { value: 'long', text: 'grain long' },
  { value: 'short', text: 'grain short' },
  { value: 'none', text: 'no grain to mind' },
];
const SIZES = [...SHEET_SIZES.map(({ id, name }) => ({ value: id, text: name })), { value: 'own', text: 'as typed' }];

export function SheetSizeFields(props: Props) {
  const { store, prefix } = props;
  const texts = useStore(store.$texts);
  const problems = useStore(store.$problems);
  const unit = texts.unit as LengthUnit;
  const wrong = problems.some(({ field }) =>
    Object.values(SHEET_FIELDS)
      .flat()
      .includes(field as ClassField),
  );
  return (
    <details open={wrong}>
      <summary>The sheets you buy</summary>
      {STOCKS.map(([stock, legend]) => {
        const [wide, high, grain] = SHEET_FIELDS[stock];
        const pick = (id: string) => {
          const size = typedSize(id, unit);
          if (!size) return;
          store.set(wide, size.wide);
          store.set(high, size.high);
        };
        return (
          <fieldset class="choice-set" key={stock}>
            <legend>{legend}</legend>
            <SelectField
              id={`${prefix}${stock}-size`}
              label="Sold as"
              value={sizeTyped(texts[wide], texts[high], unit)}
              options={SIZES}
              onPick={pick}
            />
            <div class="field-row">
              <TextOf<ClassField> {...props} field={wide} />
              <TextOf<ClassField> {...props} field={high} />
              <PickOf<ClassField> {...props} field={grain} options={GRAINS} />
            </div>
          </fieldset>
        );
      })}
    </details>
  );
}
