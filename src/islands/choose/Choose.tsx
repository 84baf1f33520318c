/**
 * The chooser on its own page: what is asked, and the answer. What stands below it (ChooseRest) is an island of its
 * own, so that the answer does not wait for it. The build renders both with the start job, so the page reads and prints
 * without script; with a link it is drawn anew when it wakes.
 */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { jobInWords } from '../../core/choose/tipping-words';
import type { NextRoom, NextStep } from '../../core/handover/choose-to-all';
import { sheetOf } from '../../core/paper/sheet';
import type { ChoosePageStore } from '../../stores/choose/choose-page';
import { leaveChoosePage, openChoosePage, prepareChoosePage } from '../../stores/choose/open-choose-page';
import { $benchJob, tailAhead } from '../../stores/shared/bench-job';
import { localStorageOrNone } from '../../stores/shared/device-storage';
import { isTyped, type Typed } from '../../stores/shared/typed';
import { syncAddress } from '../../stores/shared/url-sync';
import { Answer, AnswerSpoken } from './Answer';
import { AnswerStrip } from './AnswerStrip';
import { BlindNote, type Blind } from './BlindNote';
import { JobForm } from './JobForm';
import { RoomAndBoardFields, MoreAboutPaper, NeedFields } from './MoreFields';
import { NextSteps } from './NextSteps';
import { PaperOfTask, TaskField } from './TaskField';
import { LinkNotice } from './LinkNotice';
import { hasTrials, OwnTrialsNote } from './OwnTrials';
import { SlipOfBest } from './SlipOfBest';
import { BenchOffer } from '../parts/BenchOffer';
import { KnownJob } from '../parts/KnownJob';
import type { TakeOwnPaper } from '../parts/TakeOwnPaper';
import { ProblemList } from '../parts/ProblemList';

interface Props {
  /** path of this page */
  readonly address: string;
  /** path of the page where a bench is measured */
  readonly benchAt: string;
  /** where the model was asked blind and was wrong */
  readonly blind: readonly Blind[];
  /** path of the page that shows the checks */
  readonly checks: string;
  /** paths of the pages that an answer leads to */
  readonly rooms: Readonly<Record<NextRoom, string>>;
  readonly steps: readonly NextStep[];
  readonly typed?: Typed;
}

const prefix = 'ch-';

/** The tail of the page's own link; none while the site is built. */
const linkHere = () => (typeof window === 'undefined' ? '' : window.location.search);
/** The tail that it opens with: of the link, or of the job that is kept. */
const opensWith = () => (typeof window === 'undefined' ? '' : tailAhead('choose', linkHere()));

export default function Choose({ address, benchAt, blind, checks, rooms, steps, typed }: Props) {
  const opened = useMemo(opensWith, []);
  const store = useMemo(() => openChoosePage(opened, { prefix, typed }), []);
  const startJob = useMemo(() => store.$job.get(), []);
  const problems = useStore(store.$problems);
  const { aside } = useStore($benchJob);
  const stale = problems.length > 0 ? ' stale' : '';

  useEffect(() => {
    // Read before the address is written for the first time.
    const sent = new URLSearchParams(linkHere()).get('ev') ?? undefined;
    store.$sentEvidence.set(sent);
    // What stands below speaks of the start job until it is woken.
    const wakeRest = () =>
      void setTimeout(() => {
        // for a rest whose script comes later than this
        document.documentElement.dataset['answered'] = '';
        document.dispatchEvent(new Event('answered'));
      });
    // What was typed before the script came is put back before this.
    const isOther = opened !== '' || isTyped(typed) || store.$job.get() !== startJob;
    if (isOther || sent !== undefined || hasTrials()) wakeRest();
    const stopWaking = store.$job.listen(wakeRest);
    const stopSyncing = syncAddress('choose', store.load, store.$tail);
    return () => {
      stopWaking();
      stopSyncing();
      leaveChoosePage();
    };
  }, []);

  return (
    <>
      <AnswerStrip store={store} href={`#${prefix}answer`} />
      <div class="bench-inputs" role="group" aria-label="What you have">
        <ProblemList problems={problems} idOf={(field) => prefix + field} />
        <JobForm store={store}>
          <TaskField store={store} prefix={prefix} />
          <OwnPapers store={store} />
          <PaperOfTask store={store} prefix={prefix} />
          <MoreAboutPaper store={store} prefix={prefix} />
          <NeedFields store={store} />
          <RoomAndBoardFields store={store} prefix={prefix} />
        </JobForm>
      </div>
      <section class={`bench-answer${stale}`} id={`${prefix}answer`} aria-label="The answer" tabIndex={-1}>
        <Asked store={store} />
        {aside && <KnownJob room="choose" address={address} />}
        <LinkNotice store={store} />
        <Answer store={store} clock={<SlipOfBest store={store} />} />
        <BlindNote store={store} blind={blind} checks={checks} />
        <OwnTrialsNote store={store} />
        <BenchOf store={store} benchAt={benchAt} />
        {!aside && <KnownJob room="choose" address={address} />}
        <NextSteps store={store} rooms={rooms} steps={steps} />
        <AnswerSpoken store={store} />
      </section>
    </>
  );
}

/** Before it wakes. */
Choose.prepare = ({ typed }: Props) => prepareChoosePage(opensWith(), { prefix, typed });

/** With a link, a job that is kept or something typed it shows another job than the built page does. */
Choose.isOther = ({ typed }: Props) => opensWith() !== '' || isTyped(typed);

/** Without the fields, on paper or without script, this says what was asked. */
function Asked({ store }: { readonly store: ChoosePageStore }) {
  const job = useStore(store.$job);
  return <p class="only-still">{jobInWords(job, sheetOf(job, store.catalogue), store.catalogue)}</p>;
}

/** Papers of one's own that this device keeps: fetched where there are some. */
function OwnPapers({ store }: { readonly store: ChoosePageStore }) {
  const [Take, setTake] = useState<typeof TakeOwnPaper>();
  useEffect(() => {
    if (localStorageOrNone()?.getItem('open-time:papers'))
      void import('../parts/TakeOwnPaper').then((own) => setTake(() => own.TakeOwnPaper));
  }, []);
  return Take ? <Take id={`${prefix}own-paper`} onTake={store.takePaper} /> : null;
}

function BenchOf({ store, benchAt }: Pick<Props, 'benchAt'> & { readonly store: ChoosePageStore }) {
  const { bench } = useStore(store.$job);
  return <BenchOffer bench={bench} benchAt={benchAt} onTake={(text) => store.set('bench', text)} />;
}
