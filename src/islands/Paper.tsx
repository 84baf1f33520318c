/** The paper calculator: weight, thickness, absorbency and grain of one's own sheet, kept for the other calculators. */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo } from 'preact/hooks';
import { openKnowing } from '../stores/open-knowing';
import { loadPlan } from '../stores/plan-link';
import { syncAddress } from '../stores/url-sync';
import { AbsorbencyFields, KindFields, ThicknessFields, WeightFields } from './paper/MeasureFields';
import { GrainFields } from './paper/GrainFields';
import { KeepIt, type UseAddresses } from './paper/KeepIt';
import { KnowResult, PoundsTable } from './paper/KnowResult';
import { LinkSaid, OtherFigures } from './parts/LinkSaid';
import { ProblemList } from './parts/ProblemList';
import { SendLink } from './parts/SendLink';

interface Props {
  /** path of this page */
  readonly address: string;
  /** pages that a paper can be taken to */
  readonly uses: UseAddresses;
}

const prefix = 'know-';

export default function Paper({ address, uses }: Props) {
  const store = useMemo(openKnowing, []);
  const problems = useStore(store.$problems);
  const { answer } = useStore(store.$solved);
  const { dropped } = useStore(store.$link);
  const other = useStore(store.$otherAnswer);
  const tail = useStore(store.$tail);
  const stale = problems.length > 0 ? ' stale' : '';
  useEffect(() => syncAddress((text) => loadPlan(store, text), store.$tail), []);
  const fields = { store, prefix };
  return (
    <div class="bench">
      <a class="bench-strip no-print" href={`#${prefix}answer`}>
        <span>{answer.paper.name ?? 'your paper'}</span>
        <span class="number">{answer.brief}</span>
      </a>
      <div class="bench-inputs" role="group" aria-label="What you have">
        <ProblemList problems={problems} idOf={(field) => prefix + field} />
        <KindFields {...fields} />
        <WeightFields {...fields} />
        <ThicknessFields {...fields} />
        <AbsorbencyFields {...fields} />
        <GrainFields {...fields} />
      </div>
      <section class={`bench-answer${stale}`} id={`${prefix}answer`} aria-label="The answer" tabIndex={-1}>
        <LinkSaid dropped={dropped}>{other && <OtherFigures figures={other} />}</LinkSaid>
        <KnowResult answer={answer} />
      </section>
      <div class={`bench-rest${stale}`}>
        <KeepIt store={store} uses={uses} />
        <PoundsTable answer={answer} />
        <SendLink id={`${prefix}link`} address={address} tail={tail} />
      </div>
    </div>
  );
}
