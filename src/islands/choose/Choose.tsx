/**
 * The chooser on its own page: a paper, what it goes on and what is needed, and the ranking that follows.
 * The build renders it with its start job, so it reads and prints without script; a link is read after
 * mounting.
 */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Flip } from '../../core/choose/tipping-points';
import { jobInWords } from '../../core/choose/tipping-words';
import { sheetOf } from '../../core/paper/sheet';
import type { ChoosePageStore } from '../../stores/choose/choose-page';
import { openChoosePage, prepareChoosePage } from '../../stores/choose/open-choose-page';
import { syncAddress } from '../../stores/shared/url-sync';
import { Answer, AnswerSpoken, AnswerStrip } from './Answer';
import { BenchFields, MoreAboutPaper, NeedFields } from './MoreFields';
import { PaperFields, TaskField } from './PaperFields';
import { LinkNotice } from './LinkNotice';
import { OwnTrials, OwnTrialsNote } from './OwnTrials';
import { Rest, type CautionText } from './ChooseDetails';
import { TakeOwnPaper } from '../parts/TakeOwnPaper';
import { ProblemList } from '../parts/ProblemList';

interface Props {
  /** worked out at build for the start job, so that the first paint is whole */
  readonly flips: readonly Flip[];
  readonly cautions: Readonly<Record<string, CautionText>>;
  /** path of this page, for the link */
  readonly address: string;
  /** path of the trial pages */
  readonly trialsAt: string;
  /** path of the page that shows the checks */
  readonly checks: string;
}

const prefix = 'ch-';

export default function Choose({ flips, cautions, address, checks, trialsAt }: Props) {
  const store = useMemo(openChoosePage, []);
  const problems = useStore(store.$problems);
  const stale = problems.length > 0 ? ' stale' : '';

  /** evidence in the link: null until the page is awake */
  const [sent, setSent] = useState<string | undefined | null>(null);

  useEffect(() => {
    store.$flips.set(flips);
    // Read before the address is written for the first time.
    setSent(new URLSearchParams(window.location.search).get('ev') ?? undefined);
    const stopLooking = lookAfterPauses(store);
    const stopSyncing = syncAddress('choose', store.load, store.$tail);
    return () => {
      stopLooking();
      stopSyncing();
    };
  }, []);

  return (
    <div class="bench">
      <AnswerStrip store={store} href={`#${prefix}answer`} />
      <div class="bench-inputs" role="group" aria-label="What you have">
        <ProblemList problems={problems} idOf={(field) => prefix + field} />
        <TaskField store={store} prefix={prefix} />
        <TakeOwnPaper id={`${prefix}own-paper`} onTake={store.takePaper} />
        <PaperFields store={store} prefix={prefix} />
        <MoreAboutPaper store={store} prefix={prefix} />
        <NeedFields store={store} />
        <BenchFields store={store} prefix={prefix} />
      </div>
      <section class={`bench-answer${stale}`} id={`${prefix}answer`} aria-label="The answer" tabIndex={-1}>
        <JobLine store={store} />
        <LinkNotice store={store} />
        <Answer store={store} />
        <OwnTrialsNote store={store} />
        <AnswerSpoken store={store} />
      </section>
      <div class={`bench-rest${stale}`}>
        {sent !== null && <OwnTrials store={store} sent={sent} trialsAt={trialsAt} />}
        <Rest
          store={store}
          flipsAtStart={flips}
          cautions={cautions}
          prefix={prefix}
          address={address}
          checks={checks}
        />
      </div>
    </div>
  );
}

/** Before it wakes. */
Choose.prepare = () => prepareChoosePage(window.location.search);

/** On paper the fields are left out; this says what was asked. */
function JobLine({ store }: { readonly store: ChoosePageStore }) {
  const job = useStore(store.$job);
  return <p class="only-print">{jobInWords(job, sheetOf(job, store.catalogue), store.catalogue)}</p>;
}

/** The search for flips asks the model a hundred times, so it waits for a pause and works in small turns. */
function lookAfterPauses(store: ChoosePageStore): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const later = (work: () => void) => {
    timer = setTimeout(work, 8);
  };
  const stop = store.$job.listen(() => {
    clearTimeout(timer);
    store.$flips.set(undefined);
    timer = setTimeout(() => store.lookForFlips(later), 500);
  });
  return () => {
    clearTimeout(timer);
    stop();
  };
}
