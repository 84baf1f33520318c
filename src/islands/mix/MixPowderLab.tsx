/** Dissolving a powder, inside a lesson. */
import { useStore } from '@nanostores/preact';
import { useMemo } from 'preact/hooks';
import { mixPowder } from '../../core/mix/powder';
import { openMix } from '../../stores/mix/open-mix';
import { MixBrief, type MixLabProps } from './MixBrief';
import { PowderFields } from './PowderFields';
import { CurvePlate } from '../parts/CurvePlate';

export default function MixPowderLab({ start, ...rest }: MixLabProps) {
  const store = useMemo(() => openMix(mixPowder, start), []);
  const { answer } = useStore(store.$solved);
  return (
    <MixBrief store={store} Fields={PowderFields} {...rest}>
      {answer.curve && <CurvePlate {...answer.curve} />}
    </MixBrief>
  );
}
