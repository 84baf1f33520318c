/**
 * The mixing calculator: what goes in the pot, how much of it, in what order. The build renders it with
 * its start plan, so it reads and prints without script; a link is read after mounting.
 */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo } from 'preact/hooks';
import { mixAnswerer } from '../core/mix-any';
import { openMixing } from '../stores/open-mixing';
import { loadPlan } from '../stores/plan-link';
import { syncAddress } from '../stores/url-sync';
import { KindField, MixFields } from './mix/MixFields';
import { MixFacts, MixPlates, MixSteps } from './mix/MixRest';
import { MixResult } from './mix/MixResult';
import { Cautions, type CautionText } from './parts/Cautions';
import { LinkSaid, OtherFigures } from './parts/LinkSaid';
import { ProblemList } from './parts/ProblemList';
import { SendLink } from './parts/SendLink';

interface Props {
  readonly cautions: Readonly<Record<string, CautionText>>;
  /** path of the calculator's own page */
  readonly address: string;
}

const prefix = 'mix-';

export default function Mix({ cautions, address }: Props) {
  const store = useMemo(() => openMixing(mixAnswerer()), []);
  const problems = useStore(store.$problems);
  const { answer } = useStore(store.$solved);
  const { dropped } = useStore(store.$link);
  const other = useStore(store.$otherAnswer);
  const tail = useStore(store.$tail);
  const { kind } = useStore(store.$texts);
  const stale = problems.length > 0 ? ' stale' : '';
  useEffect(() => syncAddress((text) => loadPlan(store, text), store.$tail), []);
  useEffect(() => {
    // The chooser's model is fetched only for those who stretch PVA.
    if (kind === 'stretch')
      void import('../core/mix-stretch-slip').then(({ mixStretchedWithSlip }) =>
        store.learn(mixAnswerer(mixStretchedWithSlip)),
      );
  }, [kind]);

  return (
    <div class="bench">
      <a class="bench-strip no-print" href={`#${prefix}answer`}>
        <span>{answer.brief[0]}</span>
        <span class="number">{answer.brief[1]}</span>
      </a>
      <div class="bench-inputs" role="group" aria-label="What you have">
        <ProblemList problems={problems} idOf={(field) => prefix + field} />
        <KindField store={store} prefix={prefix} />
        <MixFields store={store} prefix={prefix} />
      </div>
      <section class={`bench-answer${stale}`} id={`${prefix}answer`} aria-label="The answer" tabIndex={-1}>
        <LinkSaid dropped={dropped}>{other && <OtherFigures figures={other} />}</LinkSaid>
        <MixResult store={store} />
        <MixPlates store={store} />
      </section>
      <div class={`bench-rest${stale}`}>
        <Cautions ids={answer.cautions} texts={cautions} />
        <div class="compare">
          <MixSteps store={store} />
          <MixFacts store={store} />
        </div>
        <SendLink id={`${prefix}link`} address={address} tail={tail} />
      </div>
    </div>
  );
}
