/** Cooking paste, inside a lesson. */
import { useMemo } from 'preact/hooks';
import { mixPaste } from '../core/mix-paste';
import { openMixing } from '../stores/open-mixing';
import { MixBrief, type MixLabProps } from './mix/MixBrief';
import { PasteFields } from './mix/PasteFields';

export default function MixPasteLab({ start, ...rest }: MixLabProps) {
  const store = useMemo(() => openMixing(mixPaste, start), []);
  return <MixBrief store={store} Fields={PasteFields} {...rest} />;
}
