/** The coverage calculator: how much adhesive the pieces take, as a range with a figure to have in hand. */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo } from 'preact/hooks';
import type { CoverPlan } from '../core/cover-plan';
import { openCovering } from '../stores/open-covering';
import { syncAddress } from '../stores/url-sync';
import { ClassFields, CoatFields, ThingFields } from './cover/CoverFields';
import { CoverDetails, CoverResult } from './cover/CoverResult';
import { LinkSaid } from './parts/Facts';
import { ProblemList } from './parts/ProblemList';
import { SendLink } from './parts/SendLink';

interface Props {
  /** paths of this calculator's own page and of the mixing calculator's */
  readonly address: string;
  readonly mixAddress: string;
  readonly start?: CoverPlan;
  /** inside a lesson: no address of its own; `name` tells it from other islands there */
  readonly lesson?: string;
}

export default function Cover({ address, mixAddress, start, lesson }: Props) {
  const store = useMemo(() => openCovering(start), []);
  const problems = useStore(store.$problems);
  const { answer } = useStore(store.$solved);
  const { dropped } = useStore(store.$link);
  const other = useStore(store.$otherAnswer);
  const tail = useStore(store.$tail);
  const prefix = lesson ? `${lesson}-` : 'cover-';
  const stale = problems.length > 0 ? ' stale' : '';
  useEffect(() => (lesson ? undefined : syncAddress((text) => store.load(text), store.$tail)), []);

  return (
    <div class="bench">
      {!lesson && (
        <a class="bench-strip no-print" href={`#${prefix}answer`}>
          <span>{answer.brief[0]}</span>
          <span class="number">{answer.brief[1]}</span>
        </a>
      )}
      <form class="bench-inputs" onSubmit={(event) => event.preventDefault()} noValidate>
        <ProblemList problems={problems} idOf={(field) => prefix + field} />
        <ThingFields store={store} prefix={prefix} />
        <CoatFields store={store} prefix={prefix} />
        {!lesson && <ClassFields store={store} prefix={prefix} />}
      </form>
      <section class={`bench-answer${stale}`} id={`${prefix}answer`} aria-label="The answer" tabIndex={-1}>
        <LinkSaid dropped={dropped} other={other} />
        <CoverResult store={store} mixAddress={mixAddress} />
        {lesson && (
          <p class="no-print">
            <a href={`${address}?${tail}`}>Open this in the coverage calculator</a>, with the pieces and the rest.
          </p>
        )}
      </section>
      {!lesson && (
        <div class={`bench-rest${stale}`}>
          <CoverDetails store={store} />
          <SendLink id={`${prefix}link`} address={address} tail={tail} />
        </div>
      )}
    </div>
  );
}
