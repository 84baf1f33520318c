/** The mixing calculator inside a lesson: one kind of job, and the way to the whole of it. */
import { useStore } from '@nanostores/preact';
import type { ComponentChildren } from 'preact';
import type { MixPlan } from '../../core/mix-plan';
import type { MixStore } from '../../stores/mixing';
import { ProblemList } from '../parts/ProblemList';
import type { MixFieldsProps } from './AmountFields';
import { MixResult } from './MixResult';

export interface MixLabProps {
  readonly start: MixPlan;
  /** path of the calculator's own page */
  readonly address: string;
  /** told apart from other islands on the page */
  readonly name: string;
}

interface Props extends Omit<MixLabProps, 'start'> {
  readonly store: MixStore;
  readonly Fields: (props: MixFieldsProps) => ComponentChildren;
  /** drawings below the answer */
  readonly children?: ComponentChildren;
}

export function MixBrief({ store, Fields, address, name, children }: Props) {
  const problems = useStore(store.$problems);
  const tail = useStore(store.$tail);
  const prefix = `${name}-`;
  return (
    <div class="bench">
      <div class="bench-inputs" role="group" aria-label="What you have">
        <ProblemList problems={problems} idOf={(field) => prefix + field} />
        <Fields store={store} prefix={prefix} />
      </div>
      <section class={problems.length > 0 ? 'bench-answer stale' : 'bench-answer'} aria-label="The answer">
        <MixResult store={store} />
        {children}
        <p class="no-print">
          <a href={`${address}?${tail}`}>Open this in the mixing calculator</a>, with the steps and the rest.
        </p>
      </section>
    </div>
  );
}
