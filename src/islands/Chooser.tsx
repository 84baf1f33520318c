/**
 * The chooser: a paper, what it goes on and what is needed, and the ranking that follows. The build
 * renders it with its start job, so it reads and prints without script; a link is read after mounting.
 */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo } from 'preact/hooks';
import { answerSentence, VERDICT_WORDS } from '../core/answer-words';
import { durationSpan } from '../core/format';
import type { Flip } from '../core/flips';
import type { Job } from '../core/job';
import { openChooser } from '../stores/open-chooser';
import { syncAddress } from '../stores/url-sync';
import { Answer } from './chooser/Answer';
import { BenchFields, NeedFields, PaperFields } from './chooser/Fields';
import { LinkNotice } from './chooser/LinkNotice';
import { Rest, type CautionText } from './chooser/Rest';
import { SendIt } from './chooser/SendIt';
import { ProblemList } from './parts/ProblemList';
import { Spoken } from './parts/Spoken';

interface Props {
  readonly start?: Job;
  /** worked out at build for the start job, so that the first paint is whole */
  readonly flips: readonly Flip[];
  readonly cautions: Readonly<Record<string, CautionText>>;
  /** address of the chooser's own page, for links out of a lesson */
  readonly address: string;
  /** inside a lesson: fewer fields, no address of its own */
  readonly inLesson?: boolean;
}

/** Ids must differ between islands on one page; the start job's family is enough, as lessons use one each. */
const prefix = 'ch-';

export default function Chooser({ start, flips, cautions, address, inLesson = false }: Props) {
  const store = useMemo(() => openChooser(start), []);
  const problems = useStore(store.$problems);
  const choices = useStore(store.$choices);
  const best = choices[0]!;

  useEffect(() => {
    store.$flips.set(flips);
    const stopLooking = lookAfterPauses(store);
    const stopSyncing = inLesson ? undefined : syncAddress((tail) => store.load(tail), store.$tail);
    return () => {
      stopLooking();
      stopSyncing?.();
    };
  }, []);

  const adhesive = store.catalogue.adhesives.get(best.adhesiveId)!;
  const word = VERDICT_WORDS[best.verdict];
  const time = durationSpan(best.slipSeconds.p10, best.slipSeconds.p90);
  return (
    <div class="bench">
      <a class="bench-strip no-print" href={`#${prefix}answer`}>
        <span>
          {word}: {adhesive.short}
        </span>
        <span>{time}</span>
      </a>
      <form class="bench-inputs" onSubmit={(event) => event.preventDefault()} noValidate>
        <ProblemList problems={problems} idOf={(field) => prefix + field} />
        <PaperFields store={store} prefix={prefix} brief={inLesson} />
        {!inLesson && <NeedFields store={store} />}
        {!inLesson && <BenchFields store={store} prefix={prefix} />}
      </form>
      <section
        class={problems.length > 0 ? 'bench-answer stale' : 'bench-answer'}
        id={`${prefix}answer`}
        aria-label="The answer"
        tabIndex={-1}
      >
        <LinkNotice store={store} />
        <Answer store={store} />
        <SendIt store={store} address={address} inLesson={inLesson} />
        <Spoken text={`${word}. ${answerSentence(best, store.catalogue)}`} />
      </section>
      {!inLesson && (
        <div class={problems.length > 0 ? 'bench-rest stale' : 'bench-rest'}>
          <Rest store={store} flipsAtStart={flips} cautions={cautions} prefix={prefix} />
        </div>
      )}
    </div>
  );
}

/** The search for flips asks the model a hundred times, so it waits for a pause and works in small turns. */
function lookAfterPauses(store: ReturnType<typeof openChooser>): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const later = (work: () => void) => {
    timer = setTimeout(work, 30);
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
