/** The chooser on the home page: what is being done, the paper and what it goes on; the answer. */
import { useStore } from '@nanostores/preact';
import { useMemo } from 'preact/hooks';
import type { Job } from '../../core/choose/job';
import { TASK_WORDS } from '../../core/choose/task-words';
import { taskIn } from '../../stores/choose/choose';
import { openChoose, prepareChoose } from '../../stores/choose/open-choose';
import { isTyped, type Typed } from '../../stores/shared/typed';
import { named } from '../parts/Field';
import { LessonBench, type LessonProps } from '../parts/LessonBench';
import { PickOf } from '../parts/PlanField';
import { Answer, AnswerSpoken } from './Answer';
import { SlipOfBest } from './SlipOfBest';
import { TaskField } from './TaskField';

type Props = LessonProps<Job> & { readonly typed?: Typed };

export default function ChooseHome({ start, address, name, typed }: Props) {
  const prefix = `${name}-`;
  const store = useMemo(() => openChoose(start, { prefix, typed }), []);
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
      <Answer store={store} clock={<SlipOfBest store={store} />} />
      <AnswerSpoken store={store} />
    </LessonBench>
  );
}

/** Before it wakes. */
ChooseHome.prepare = ({ start, name, typed }: Props) => prepareChoose(start, { prefix: `${name}-`, typed });

/** What was typed by then is another job than that of the built page. */
ChooseHome.isOther = ({ typed }: Props) => isTyped(typed);
