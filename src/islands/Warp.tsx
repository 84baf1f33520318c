/** The calculator of warp: how far a covered board bows, which way, and what would help. */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo } from 'preact/hooks';
import { openWarping } from '../stores/open-warping';
import { loadPlan } from '../stores/plan-link';
import { syncAddress } from '../stores/url-sync';
import { Cautions, type CautionText } from './parts/Cautions';
import { LinkSaid, OtherFigures } from './parts/LinkSaid';
import { ProblemList } from './parts/ProblemList';
import { SendLink } from './parts/SendLink';
import { AirFields, GlueFields, SheetFields } from './warp/WarpFields';
import { WarpFacts, WarpRemedies } from './warp/WarpRest';
import { WarpResult } from './warp/WarpResult';

interface Props {
  readonly cautions: Readonly<Record<string, CautionText>>;
  /** path of this calculator's page */
  readonly address: string;
}

const prefix = 'warp-';

export default function Warp({ cautions, address }: Props) {
  const store = useMemo(() => openWarping(), []);
  const problems = useStore(store.$problems);
  const { answer } = useStore(store.$solved);
  const { dropped } = useStore(store.$link);
  const other = useStore(store.$otherAnswer);
  const tail = useStore(store.$tail);
  const stale = problems.length > 0 ? ' stale' : '';
  useEffect(() => syncAddress((text) => loadPlan(store, text), store.$tail), []);

  return (
    <div class="bench">
      <a class="bench-strip no-print" href={`#${prefix}answer`}>
        <span>{answer.brief[0]}</span>
        <span class="number">{answer.brief[1]}</span>
      </a>
      <div class="bench-inputs" role="group" aria-label="What you have">
        <ProblemList problems={problems} idOf={(field) => prefix + field} />
        <SheetFields store={store} prefix={prefix} />
        <GlueFields store={store} prefix={prefix} />
        <AirFields store={store} prefix={prefix} />
      </div>
      <section class={`bench-answer${stale}`} id={`${prefix}answer`} aria-label="The answer" tabIndex={-1}>
        <LinkSaid dropped={dropped}>{other && <OtherFigures figures={other} />}</LinkSaid>
        <WarpResult store={store} />
      </section>
      <div class={`bench-rest${stale}`}>
        <div class="compare">
          <WarpRemedies store={store} answerId={`${prefix}answer`} />
          <WarpFacts store={store} />
        </div>
        <Cautions ids={answer.cautions} texts={cautions} />
        <SendLink id={`${prefix}link`} address={address} tail={tail} />
      </div>
    </div>
  );
}
