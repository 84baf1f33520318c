/** The chooser inside a lesson: the paper, its weight and what it goes on; the answer. */
import { useMemo } from 'preact/hooks';
import type { Job } from '../../core/choose/job';
import { openChoose, prepareChoose } from '../../stores/choose/open-choose';
import { Answer, AnswerSpoken } from './Answer';
import { PaperFields } from './PaperFields';
import { SlipFigure } from './SlipFigure';
import { LessonBench, type LessonProps } from '../parts/LessonBench';

export default function ChooseBrief({ start, address, name }: LessonProps<Job>) {
  const store = useMemo(() => openChoose(start), []);
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
      <SlipFigure store={store} />
      <AnswerSpoken store={store} />
    </LessonBench>
  );
}

/** Before it wakes. */
ChooseBrief.prepare = ({ start }: LessonProps<Job>) => prepareChoose(start);
