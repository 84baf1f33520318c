/**
 * The mixing calculator: what goes in the pot, how much of it, in what order. The build renders it with
 * its start plan, so it reads and prints without script; a link is read after mounting.
 */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo } from 'preact/hooks';
import type { MixPlan } from '../core/mix-plan';
import { openMixing } from '../stores/open-mixing';
import { syncAddress } from '../stores/url-sync';
import { KindField, MixFields } from './mix/MixFields';
import { MixFacts, MixPlates, MixResult, MixSteps } from './mix/MixResult';
import { Cautions, LinkSaid, type CautionText } from './parts/Facts';
import { ProblemList } from './parts/ProblemList';
import { SendLink } from './parts/SendLink';

interface Props {
  readonly cautions: Readonly<Record<string, CautionText>>;
  /** path of the calculator's own page */
  readonly address: string;
  readonly start?: MixPlan;
  /** inside a lesson: one kind of job, no address of its own; `name` tells it from other islands there */
  readonly lesson?: string;
}

export default function Mix({ cautions, address, start, lesson }: Props) {
  const store = useMemo(() => openMixing(start), []);
  const problems = useStore(store.$problems);
  const { answer } = useStore(store.$solved);
  const { dropped } = useStore(store.$link);
  const other = useStore(store.$otherAnswer);
  const tail = useStore(store.$tail);
  const prefix = lesson ? `${lesson}-` : 'mix-';
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
        {!lesson && <KindField store={store} prefix={prefix} />}
        <MixFields store={store} prefix={prefix} />
      </form>
      <section class={`bench-answer${stale}`} id={`${prefix}answer`} aria-label="The answer" tabIndex={-1}>
        <LinkSaid dropped={dropped} other={other} />
        <MixResult store={store} />
        <MixPlates store={store} />
        {lesson && (
          <p class="no-print">
            <a href={`${address}?${tail}`}>Open this in the mixing calculator</a>, with the steps and the rest.
          </p>
        )}
      </section>
      {!lesson && (
        <div class={`bench-rest${stale}`}>
          <Cautions ids={answer.cautions} texts={cautions} />
          <div class="compare">
            <MixSteps store={store} />
            <MixFacts store={store} />
          </div>
          <SendLink id={`${prefix}link`} address={address} tail={tail} />
        </div>
      )}
    </div>
  );
}
