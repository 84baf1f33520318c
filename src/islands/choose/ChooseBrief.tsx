/** The chooser inside a lesson: the paper, its weight and what it goes on; the answer. */
import { useMemo } from 'preact/hooks';
import type { Job } from '../../core/choose/job';
import { openChoose, prepareChoose } from '../../stores/choose/open-choose';
import { isTyped, type Typed } from '../../stores/shared/typed';
import { Answer, AnswerSpoken } from './Answer';
import { PaperFields, type AskedOfTask } from './PaperFields';
import { SlipFigure } from './SlipFigure';
import { SlipOfBest } from './SlipOfBest';
import { LessonBench, type LessonProps } from '../parts/LessonBench';

type Props = LessonProps<Job> & { readonly asks: AskedOfTask; readonly typed?: Typed };

export default function ChooseBrief({ start, address, name, asks, typed }: Props) {
  const prefix = `${name}-`;
  const store = useMemo(() => openChoose(start, { prefix, typed }), []);
  return (
    <LessonBench
      store={store}
      prefix={prefix}
      address={address}
      inputs={<PaperFields store={store} prefix={prefix} asks={asks} />}
      more={['Open this in the chooser', ', with every field and the reasons.']}
    >
      <Answer store={store} clock={<SlipOfBest store={store} />} />
      <SlipFigure store={store} />
      <AnswerSpoken store={store} />
    </LessonBench>
  );
}

/** Before it wakes. */
ChooseBrief.prepare = ({ start, name, typed }: Props) => prepareChoose(start, { prefix: `${name}-`, typed });

/** What was typed by then is another job than that of the built page. */
ChooseBrief.isOther = ({ typed }: Props) => isTyped(typed);
