/**
 * The frame of a calculator whose fields are said in a table: its strip on a phone, its fields with what is wrong
 * with them, its answer with what its link said, and below them the rest and the link. It reads the address once and
 * keeps it in step.
 */
import { useStore } from '@nanostores/preact';
import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import type { FieldTable } from '../../core/link/fields';
import type { JobFacts } from '../../core/handover/job-facts';
import { ROOMS, type RoomId } from '../../core/handover/rooms';
import type { PlanStore, ReadableAtom } from '../../stores/shared/plan';
import { loadPlan } from '../../stores/shared/plan-link';
import { syncAddress } from '../../stores/shared/url-sync';
import { BenchOffer } from './BenchOffer';
import { FormFold } from './FormFold';
import { baseOf } from './job-line';
import { KnownJob } from './KnownJob';
import { LinkSaid, OtherFigures } from './LinkSaid';
import { NextRooms } from './NextRooms';
import { ProblemList } from './ProblemList';
import { SendLink } from './SendLink';

interface Props<S extends FieldTable, A> {
  readonly store: PlanStore<S, A>;
  readonly room: RoomId;
  /** what this room tells the others besides what its link says */
  readonly $tells?: ReadableAtom<JobFacts> | undefined;
  /** of every id in this calculator */
  readonly prefix: string;
  /** path of the calculator's page */
  readonly address: string;
  /** the answer in two words, for the strip that stays in view on a phone */
  readonly brief: readonly [what: string, amount: string];
  /** what was asked, in a few words, where the answer’s own do not say it: it stands for the form when that is folded */
  readonly asked?: string;
  /** names the fields together */
  readonly asks?: string;
  readonly inputs: ComponentChildren;
  readonly answer: ComponentChildren;
  readonly rest?: ComponentChildren;
  /** false while there is nothing to send */
  readonly sends?: boolean;
  /** what comes after the link */
  readonly last?: ComponentChildren;
}

export function PlanBench<S extends FieldTable, A>(props: Props<S, A>) {
  const {
    room,
    $tells,
    store,
    prefix,
    address,
    brief,
    asked = brief[0],
    asks = 'What you have',
    inputs,
    answer,
    rest,
    sends = true,
    last,
  } = props;
  const problems = useStore(store.$problems);
  const { dropped } = useStore(store.$link);
  const other = useStore(store.$otherAnswer);
  const tail = useStore(store.$tail);
  const { bench }: Readonly<Record<string, unknown>> = useStore(store.$solved).plan;
  const isLoading = useStore(store.$isLoading);
  const stale = problems.length > 0 || isLoading ? ' stale' : '';
  useEffect(() => syncAddress(room, (text) => loadPlan(store, text), store.$tail, $tells), []);
  return (
    <>
      <KnownJob room={room} address={address} />
      <div class="bench">
        <a class="bench-strip no-print" href={`#${prefix}answer`}>
          <span>{brief[0]}</span>
          <span class="number">{brief[1]}</span>
        </a>
        <div class="bench-pair">
          <div class="bench-inputs" role="group" aria-label={asks}>
            <ProblemList problems={problems} idOf={(field) => prefix + field} />
            <FormFold line={asked}>{inputs}</FormFold>
          </div>
          <section
            class={`bench-answer${stale}`}
            id={`${prefix}answer`}
            aria-label="The answer"
            aria-busy={isLoading}
            tabIndex={-1}
          >
            <LinkSaid dropped={dropped}>{other && <OtherFigures figures={other} />}</LinkSaid>
            {answer}
            {typeof bench === 'string' && (
              <BenchOffer
                bench={bench}
                benchAt={`${baseOf(room, address)}${ROOMS.bench.path}`}
                onTake={(text) => store.set('bench', text)}
              />
            )}
            <NextRooms room={room} address={address} tail={tail} $tells={$tells} />
          </section>
        </div>
        <div class={`bench-rest${stale}`}>
          {rest}
          {sends && <SendLink id={`${prefix}link`} address={address} tail={tail} />}
          <p class="no-print">
            <a href={`${baseOf(room, address)}embed/`}>Embed this</a>: put it in a page of your own.
          </p>
          {last}
        </div>
      </div>
    </>
  );
}
