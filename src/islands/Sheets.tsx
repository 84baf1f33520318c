/** The sheets calculator: how many sheets the pieces take, and how to cut each of them. */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo } from 'preact/hooks';
import { loadPlan } from '../stores/plan-link';
import { createSheets } from '../stores/sheets';
import { syncAddress } from '../stores/url-sync';
import { Cautions, type CautionText } from './parts/Cautions';
import { Facts } from './parts/Facts';
import { LinkSaid, OtherFigures } from './parts/LinkSaid';
import { ProblemList } from './parts/ProblemList';
import { SendLink } from './parts/SendLink';
import { SheetPlans } from './sheets/SheetPlans';
import { SheetsFields } from './sheets/SheetsFields';
import { SheetsResult } from './sheets/SheetsResult';

interface Props {
  /** path of this calculator's own page */
  readonly address: string;
  readonly cautions: Readonly<Record<string, CautionText>>;
}

const prefix = 'cut-';

export default function Sheets({ address, cautions }: Props) {
  const store = useMemo(() => createSheets(), []);
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
        <SheetsFields store={store} prefix={prefix} />
      </div>
      <section class={`bench-answer${stale}`} id={`${prefix}answer`} aria-label="The answer" tabIndex={-1}>
        <LinkSaid dropped={dropped}>{other && <OtherFigures figures={other} />}</LinkSaid>
        <SheetsResult store={store} />
        <Facts caption="Behind the number of sheets" facts={answer.facts} />
        <Cautions ids={['knife']} texts={cautions} />
      </section>
      <div class={`bench-rest${stale}`}>
        <SheetPlans store={store} />
        <SendLink id={`${prefix}link`} address={address} tail={tail} />
      </div>
    </div>
  );
}
