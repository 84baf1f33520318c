/** The workshop sheet: a class of one project, from the shopping list to the handout, all of it in one link. */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo } from 'preact/hooks';
import { openWorkshop } from '../stores/open-workshop';
import { loadPlan } from '../stores/plan-link';
import { syncAddress } from '../stores/url-sync';
import { MakeFields } from './make/MakeFields';
import { Cautions, type CautionText } from './parts/Cautions';
import { LinkSaid, OtherFigures } from './parts/LinkSaid';
import { ProblemList } from './parts/ProblemList';
import { SendLink } from './parts/SendLink';
import { SheetPlans } from './sheets/SheetPlans';
import { Batches } from './workshop/Batches';
import { ClassFields, MaterialFields, SheetSizeFields } from './workshop/ClassFields';
import { HandoutSheet } from './workshop/HandoutSheet';
import { Schedule, Shopping, WorkshopResult } from './workshop/Lists';

interface Props {
  /** paths of this page, the chooser, the cutting plan and the lessons */
  readonly address: string;
  readonly choose: string;
  readonly cut: string;
  readonly lessons: readonly { readonly title: string; readonly path: string }[];
  readonly cautions: Readonly<Record<string, CautionText>>;
}

const prefix = 'class-';

export default function Workshop({ address, choose, cut, lessons, cautions }: Props) {
  const store = useMemo(openWorkshop, []);
  const problems = useStore(store.$problems);
  const { answer, plan } = useStore(store.$solved);
  const { dropped } = useStore(store.$link);
  const other = useStore(store.$otherAnswer);
  const tail = useStore(store.$tail);
  const stale = problems.length > 0 ? ' stale' : '';
  useEffect(() => syncAddress((text) => loadPlan(store, text), store.$tail), []);
  const fields = { store, prefix };

  return (
    <div class="bench">
      <a class="bench-strip no-print" href={`#${prefix}answer`}>
        <span>{answer.brief[0]}</span>
        <span class="number">{answer.brief[1]}</span>
      </a>
      <div class="bench-inputs" role="group" aria-label="Your class">
        <ProblemList problems={problems} idOf={(field) => prefix + field} />
        <ClassFields {...fields} />
        <details open>
          <summary>What everybody makes</summary>
          <MakeFields {...fields} />
        </details>
        <MaterialFields {...fields} />
        <SheetSizeFields {...fields} />
      </div>
      <section class={`bench-answer${stale}`} id={`${prefix}answer`} aria-label="The answer" tabIndex={-1}>
        <LinkSaid dropped={dropped}>{other && <OtherFigures figures={other} />}</LinkSaid>
        <WorkshopResult answer={answer} />
        <Shopping answer={answer} />
      </section>
      <div class={`bench-rest${stale}`}>
        <Schedule answer={answer} />
        <Batches answer={answer} />
        <SheetPlans stocks={answer.cut.stocks} unit={plan.unit} />
        <p class="no-print">
          <a href={`${cut}?${answer.tails.cut}`}>Change the cutting plan by itself</a>
        </p>
        <Cautions ids={answer.cautions} texts={cautions} />
        <SendLink id={`${prefix}link`} address={address} tail={tail} />
        <HandoutSheet answer={answer} plan={plan} choose={choose} lessons={lessons} />
      </div>
    </div>
  );
}
