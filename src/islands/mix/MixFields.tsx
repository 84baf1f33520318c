/** What the mixing calculator asks, by kind of job. */
import { useStore } from '@nanostores/preact';
import type { MixField, MixKind } from '../../core/mix/plan';
import { OneOfField } from '../parts/PlanField';
import type { MixFieldsProps } from './AmountFields';
import { JarFields } from './JarFields';
import { PasteFields } from './PasteFields';
import { PowderFields } from './PowderFields';
import { StretchFields } from './StretchFields';

export const KIND_WORDS: Readonly<Record<MixKind, string>> = {
  powder: 'Dissolve a powder in water',
  paste: 'Cook starch paste',
  stretch: 'Make PVA go further',
  dilute: 'Make a batch from a stronger stock',
  correct: 'Thin or thicken what I have',
};

export function KindField(props: MixFieldsProps) {
  const options = Object.entries(KIND_WORDS).map(([value, text]) => ({ value, text }));
  return <OneOfField<MixField> {...props} field="kind" options={options} />;
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
