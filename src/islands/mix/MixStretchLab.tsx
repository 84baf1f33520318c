/** Making PVA go further, inside a lesson. */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo } from 'preact/hooks';
import { mixStretched } from '../../core/mix/stretch';
import { openMix } from '../../stores/mix/open-mix';
import { MixBrief, type MixLabProps } from './MixBrief';
import { StretchFields } from './StretchFields';
import { SlipPlate } from '../parts/SlipPlate';

export default function MixStretchLab({ start, ...rest }: MixLabProps) {
  const store = useMemo(() => openMix(mixStretched, start), []);
  useEffect(() => {
    void import('../../core/handover/mix-stretch-slip').then(({ mixStretchedWithSlip }) =>
      store.learn(mixStretchedWithSlip),
    );
  }, []);
  const { answer } = useStore(store.$solved);
  return (
    <MixBrief store={store} Fields={StretchFields} {...rest}>
      {answer.slip && (
        <figure class="plate">
          <div class="plate-body">
            <SlipPlate {...answer.slip} />
          </div>
          <figcaption class="plate-caption">
            How long an A5 sheet can be moved on binder’s board, by the chooser’s model.
          </figcaption>
        </figure>
      )}
    </MixBrief>
  );
}
