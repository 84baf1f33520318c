/** The chooser on the home page: what is being done, the paper and what it goes on; the answer. */
import { useStore } from '@nanostores/preact';
import { useMemo } from 'preact/hooks';
import type { Job } from '../../core/choose/job';
import { TASK_WORDS } from '../../core/choose/task-words';
import { taskIn } from '../../stores/choose/choose';
import { openChoose, prepareChoose } from '../../stores/choose/open-choose';
import { named } from '../parts/Field';
import { LessonBench, type LessonProps } from '../parts/LessonBench';
import { PickOf } from '../parts/PlanField';
import { Answer, AnswerSpoken } from './Answer';
import { TaskField } from './TaskField';

export default function ChooseHome({ start, address, name }: LessonProps<Job>) {
  const store = useMemo(() => openChoose(start), []);
  const prefix = `${name}-`;
  const words = TASK_WORDS[taskIn(useStore(store.$texts))];
  const { papers, substrates } = store.catalogue;
  const props = { store, prefix };
  return (
    <LessonBench
      store={store}
      prefix={prefix}
      address={address}
      inputs={
        <>
          <TaskField {...props} />
          <PickOf {...props} field="family" label={words.sheet} options={named(papers)} />
          <PickOf {...props} field="substrate" label={words.ground} options={named(substrates)} />
        </>
      }
      more={['Open this in the chooser', ', with every field and the reasons.']}
    >
      <Answer store={store} />
      <AnswerSpoken store={store} />
    </LessonBench>
  );
}

/** Before it wakes. */
ChooseHome.prepare = ({ start }: LessonProps<Job>) => prepareChoose(start);
