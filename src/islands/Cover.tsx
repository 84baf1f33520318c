/** The coverage calculator: how much adhesive the pieces take, as a range with a figure to have in hand. */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo } from 'preact/hooks';
import type { FlatFacts } from '../core/cover-answer';
import { openCovering } from '../stores/open-covering';
import { loadPlan } from '../stores/plan-link';
import { syncAddress } from '../stores/url-sync';
import { ClassFields } from './cover/ClassFields';
import { CoverDetails, CoverPieces, MixLink } from './cover/CoverDetails';
import { CoatFields, ThingFields } from './cover/CoverFields';
import { CoverResult } from './cover/CoverResult';
import { LinkSaid, OtherFigures } from './parts/LinkSaid';
import { ProblemList } from './parts/ProblemList';
import { SendLink } from './parts/SendLink';

interface Props {
  /** paths of this calculator's own page and of the mixing calculator's */
  readonly address: string;
  readonly mixAddress: string;
  /** worked out at build for the first answer; the model that reckons the others follows after */
  readonly flat: FlatFacts;
}

const prefix = 'cover-';

export default function Cover({ address, mixAddress, flat }: Props) {
  const store = useMemo(() => openCovering(() => flat), []);
  const problems = useStore(store.$problems);
  const { answer } = useStore(store.$solved);
  const { dropped } = useStore(store.$link);
  const other = useStore(store.$otherAnswer);
  const tail = useStore(store.$tail);
  const stale = problems.length > 0 ? ' stale' : '';
  useEffect(() => {
    // The model is fetched when something else is asked than what the build has answered: by a link, or by hand.
    const stop = store.$texts.listen(() => {
      stop();
      void import('../core/cover-flat').then(({ flatFacts }) => store.learn(flatFacts));
    });
    return stop;
  }, []);
  useEffect(() => syncAddress((text) => loadPlan(store, text), store.$tail), []);

  return (
    <div class="bench">
      <a class="bench-strip no-print" href={`#${prefix}answer`}>
        <span>{answer.brief[0]}</span>
        <span class="number">{answer.brief[1]}</span>
      </a>
      <div class="bench-inputs" role="group" aria-label="What you have">
        <ProblemList problems={problems} idOf={(field) => prefix + field} />
        <ThingFields store={store} prefix={prefix} />
        <CoatFields store={store} prefix={prefix} />
        <ClassFields store={store} prefix={prefix} />
      </div>
      <section class={`bench-answer${stale}`} id={`${prefix}answer`} aria-label="The answer" tabIndex={-1}>
        <LinkSaid dropped={dropped}>{other && <OtherFigures figures={other} />}</LinkSaid>
        <CoverResult store={store}>
          <MixLink store={store} address={mixAddress} />
        </CoverResult>
        <CoverPieces store={store} />
      </section>
      <div class={`bench-rest${stale}`}>
        <CoverDetails store={store} />
        <SendLink id={`${prefix}link`} address={address} tail={tail} />
      </div>
    </div>
  );
}
