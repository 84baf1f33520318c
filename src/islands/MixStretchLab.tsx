/** Making PVA go further, inside a lesson. */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo } from 'preact/hooks';
import { mixStretched } from '../core/mix-stretch';
import { openMixing } from '../stores/open-mixing';
import { MixBrief, type MixLabProps } from './mix/MixBrief';
import { StretchFields } from './mix/StretchFields';
import { SlipPlate } from './parts/SlipPlate';

export default function MixStretchLab({ start, ...rest }: MixLabProps) {
  const store = useMemo(() => openMixing(mixStretched, start), []);
  useEffect(() => {
    void import('../core/mix-stretch-slip').then(({ mixStretchedWithSlip }) => store.learn(mixStretchedWithSlip));
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
