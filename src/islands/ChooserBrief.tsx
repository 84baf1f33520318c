/** The chooser inside a lesson: the paper, its weight and what it goes on; the answer; the way to the whole of it. */
import { useStore } from '@nanostores/preact';
import { useMemo } from 'preact/hooks';
import type { Job } from '../core/job';
import { openChooser, prepareChooser } from '../stores/open-chooser';
import { Answer, AnswerSpoken } from './chooser/Answer';
import { PaperFields } from './chooser/PaperFields';
import { ProblemList } from './parts/ProblemList';

interface Props {
  readonly start: Job;
  /** path of the chooser's own page */
  readonly address: string;
  /** told apart from other islands on the page */
  readonly name: string;
}

export default function ChooserBrief({ start, address, name }: Props) {
  const store = useMemo(() => openChooser(start), []);
  const problems = useStore(store.$problems);
  const tail = useStore(store.$tail);
  const prefix = `${name}-`;
  return (
    <div class="bench">
      <div class="bench-inputs" role="group" aria-label="What you have">
        <ProblemList problems={problems} idOf={(field) => prefix + field} />
        <PaperFields store={store} prefix={prefix} />
      </div>
      <section class={problems.length > 0 ? 'bench-answer stale' : 'bench-answer'} aria-label="The answer">
        <Answer store={store} />
        <AnswerSpoken store={store} />
        <p class="no-print">
          <a href={`${address}?${tail}`}>Open this in the chooser</a>, with every field and the reasons.
        </p>
      </section>
    </div>
  );
}

/** Before it wakes. */
ChooserBrief.prepare = ({ start }: Props) => prepareChooser(start);
