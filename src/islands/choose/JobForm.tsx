/** The chooser's form, folded to the job in one line on a phone once there is one, so that the answer comes first. */
import { useStore } from '@nanostores/preact';
import type { ComponentChildren } from 'preact';
import { jobInBrief } from '../../core/choose/job-words';
import type { ChoosePageStore } from '../../stores/choose/choose-page';
import { FormFold } from '../parts/FormFold';

interface Props {
  readonly store: ChoosePageStore;
  readonly children: ComponentChildren;
}

export function JobForm({ store, children }: Props) {
  const job = useStore(store.$job);
  return (
    <div class="job-form">
      <FormFold line={jobInBrief(job, store.catalogue)}>{children}</FormFold>
    </div>
  );
}
