/** The coverage calculator inside a lesson: the thing, the adhesive, the figure, and the way to the whole of it. */
import { useStore } from '@nanostores/preact';
import { useMemo } from 'preact/hooks';
import type { CoverPlan } from '../core/cover-plan';
import { openCovering } from '../stores/open-covering';
import { CoatFields, ThingFields } from './cover/CoverFields';
import { CoverResult } from './cover/CoverResult';
import { ProblemList } from './parts/ProblemList';

interface Props {
  readonly start: CoverPlan;
  /** path of the calculator's own page */
  readonly address: string;
  /** told apart from other islands on the page */
  readonly name: string;
}

export default function CoverBrief({ start, address, name }: Props) {
  const store = useMemo(() => openCovering(undefined, start), []);
  const problems = useStore(store.$problems);
  const tail = useStore(store.$tail);
  const prefix = `${name}-`;
  return (
    <div class="bench">
      <div class="bench-inputs" role="group" aria-label="What you have">
        <ProblemList problems={problems} idOf={(field) => prefix + field} />
        <ThingFields store={store} prefix={prefix} />
        <CoatFields store={store} prefix={prefix} />
      </div>
      <section class={problems.length > 0 ? 'bench-answer stale' : 'bench-answer'} aria-label="The answer">
        <CoverResult store={store} />
        <p class="no-print">
          <a href={`${address}?${tail}`}>Open this in the coverage calculator</a>, with the class and the figures behind
          it.
        </p>
      </section>
    </div>
  );
}
