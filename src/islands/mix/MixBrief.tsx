/** The mixing calculator inside a lesson: one kind of job. */
import type { ComponentChildren } from 'preact';
import type { MixPlan } from '../../core/mix/plan';
import type { MixStore } from '../../stores/mix/mix';
import { LessonBench, type LessonProps } from '../parts/LessonBench';
import type { MixFieldsProps } from './AmountFields';
import { MixResult } from './MixResult';

export type MixLabProps = LessonProps<MixPlan>;

interface Props extends Omit<MixLabProps, 'start'> {
  readonly store: MixStore;
  readonly Fields: (props: MixFieldsProps) => ComponentChildren;
  /** drawings below the answer */
  readonly children?: ComponentChildren;
}

export function MixBrief({ store, Fields, address, name, children }: Props) {
  const prefix = `${name}-`;
  return (
    <LessonBench
      store={store}
      prefix={prefix}
      address={address}
      inputs={<Fields store={store} prefix={prefix} />}
      more={['Open this in the mixing calculator', ', with the steps and the rest.']}
    >
      <MixResult store={store} />
      {children}
    </LessonBench>
  );
}
