/** Cooking paste, inside a lesson. */
import { useMemo } from 'preact/hooks';
import { mixPaste } from '../../core/mix/paste';
import { openMix } from '../../stores/mix/open-mix';
import { MixBrief, type MixLabProps } from './MixBrief';
import { PasteFields } from './PasteFields';

export default function MixPasteLab({ start, ...rest }: MixLabProps) {
  const store = useMemo(() => openMix(mixPaste, start), []);
  return <MixBrief store={store} Fields={PasteFields} {...rest} />;
}
