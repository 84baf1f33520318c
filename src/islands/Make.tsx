/** The project calculator: from a book's or a box's size to the pieces to cut, drawn with their measures. */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo } from 'preact/hooks';
import { createMaking } from '../stores/making';
import { loadPlan } from '../stores/plan-link';
import { syncAddress } from '../stores/url-sync';
import { MakeFields } from './make/MakeFields';
import { MeasureFields } from './make/MeasureFields';
import { MakeResult, MorePictures, PieceTable, Steps } from './make/MakeResult';
import { Cautions, type CautionText } from './parts/Cautions';
import { LinkSaid, OtherFigures } from './parts/LinkSaid';
import { ProblemList } from './parts/ProblemList';
import { SendLink } from './parts/SendLink';

interface Props {
  readonly cautions: Readonly<Record<string, CautionText>>;
  /** paths of this calculator's own page and of the coverage calculator's */
  readonly address: string;
  readonly coverAddress: string;
  readonly cutAddress: string;
  readonly classAddress: string;
}

const prefix = 'make-';

export default function Make({ cautions, address, coverAddress, cutAddress, classAddress }: Props) {
  const store = useMemo(() => createMaking(), []);
  const problems = useStore(store.$problems);
  const { answer } = useStore(store.$solved);
  const { dropped } = useStore(store.$link);
  const other = useStore(store.$otherAnswer);
  const tail = useStore(store.$tail);
  const coverTail = useStore(store.$coverTail);
  const cutTail = useStore(store.$cutTail);
  const classTail = useStore(store.$classTail);
  const stale = problems.length > 0 ? ' stale' : '';
  useEffect(() => syncAddress((text) => loadPlan(store, text), store.$tail), []);

  return (
    <div class="bench">
      <a class="bench-strip no-print" href={`#${prefix}answer`}>
        <span>{answer.brief[0]}</span>
        <span class="number">{answer.brief[1]}</span>
      </a>
      <div class="bench-inputs" role="group" aria-label="What you make">
        <ProblemList problems={problems} idOf={(field) => prefix + field} />
        <MakeFields store={store} prefix={prefix} />
        <MeasureFields store={store} prefix={prefix} />
      </div>
      <section class={`bench-answer${stale}`} id={`${prefix}answer`} aria-label="The answer" tabIndex={-1}>
        <LinkSaid dropped={dropped}>{other && <OtherFigures figures={other} />}</LinkSaid>
        <MakeResult store={store} />
        <PieceTable store={store} />
        <p class="button-row no-print">
          <a class="button" href={`${coverAddress}?${coverTail}`}>
            How much adhesive this takes
          </a>
          <a class="button-quiet" href={`${cutAddress}?${cutTail}`}>
            Cut it from sheets
          </a>
          <a class="button-quiet" href={`${classAddress}?${classTail}`}>
            Plan a class with it
          </a>
        </p>
      </section>
      <div class={`bench-rest${stale}`}>
        <MorePictures store={store} />
        <Steps store={store} />
        <Cautions ids={['knife']} texts={cautions} />
        <SendLink id={`${prefix}link`} address={address} tail={tail} />
      </div>
    </div>
  );
}
