/** The chooser inside a lesson: the paper, its weight and what it goes on; the answer. */
import { useMemo } from 'preact/hooks';
import type { Job } from '../core/job';
import { openChooser, prepareChooser } from '../stores/open-chooser';
import { Answer, AnswerSpoken } from './chooser/Answer';
import { PaperFields } from './chooser/PaperFields';
import { LessonBench, type LessonProps } from './parts/LessonBench';

export default function ChooserBrief({ start, address, name }: LessonProps<Job>) {
  const store = useMemo(() => openChooser(start), []);
  const prefix = `${name}-`;
  return (
    <LessonBench
      store={store}
      prefix={prefix}
      address={address}
      inputs={<PaperFields store={store} prefix={prefix} />}
      more={['Open this in the chooser', ', with every field and the reasons.']}
    >
      <Answer store={store} />
      <AnswerSpoken store={store} />
    </LessonBench>
  );
}

/** Before it wakes. */
ChooserBrief.prepare = ({ start }: LessonProps<Job>) => prepareChooser(start);
