/** The frame of a calculator inside a lesson: a few fields, the answer, and the way to the whole of it. */
import { useStore } from '@nanostores/preact';
import type { ComponentChildren } from 'preact';
import type { InputError } from '../../core/base/result';
import type { ReadableAtom } from '../../stores/shared/plan';
import { ProblemList } from './ProblemList';

/** What every calculator inside a lesson is told. */
export interface LessonProps<Start> {
  readonly start: Start;
  /** path of the calculator's own page */
  readonly address: string;
  /** told apart from other islands on the page */
  readonly name: string;
}

interface Props {
  readonly store: { readonly $problems: ReadableAtom<readonly InputError[]>; readonly $tail: ReadableAtom<string> };
  /** of every id in this calculator */
  readonly prefix: string;
  readonly address: string;
  readonly inputs: ComponentChildren;
  /** the words of the link to its own page, and what is said after them */
  readonly more: readonly [link: string, after: string];
  /** the answer */
  readonly children: ComponentChildren;
}

export function LessonBench({ store, prefix, address, inputs, more, children }: Props) {
  const problems = useStore(store.$problems);
  const tail = useStore(store.$tail);
  return (
    <div class="bench">
      <div class="bench-inputs" role="group" aria-label="What you have">
        <ProblemList problems={problems} idOf={(field) => prefix + field} />
        {inputs}
      </div>
      <section class={problems.length > 0 ? 'bench-answer stale' : 'bench-answer'} aria-label="The answer">
        {children}
        <p class="no-print">
          <a href={`${address}?${tail}`}>{more[0]}</a>
          {more[1]}
        </p>
      </section>
    </div>
  );
}
