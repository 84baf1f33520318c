/** Where one goes from the answer, each link carrying the job's figures. */
import { useStore } from '@nanostores/preact';
import { nextSteps, type NextRoom } from '../../core/handover/choose-to-all';
import { encodeJob } from '../../core/choose/write-link';
import { isSameSheet, tailWith } from '../../core/handover/job-facts';
import { $benchJob, sayWhole } from '../../stores/shared/bench-job';
import type { ChoosePageStore } from '../../stores/choose/choose-page';

const WORDS: Readonly<Record<NextRoom, string>> = {
  mix: 'Mix this',
  cover: 'How much',
  flat: 'Will it lie flat',
  trial: 'Try it on a swatch',
  class: 'Put it in a class',
};

interface Props {
  readonly store: ChoosePageStore;
  /** path of each page */
  readonly rooms: Readonly<Record<NextRoom, string>>;
}

export function NextSteps({ store, rooms }: Props) {
  const choices = useStore(store.$choices);
  const job = useStore(store.$job);
  const { paper: known } = useStore($benchJob).facts;
  // The form holds the sheet field by field; where it is one that has a name, it goes on under its name.
  const asNamed = (to: NextRoom, tail: string): string => {
    const asked = new URLSearchParams(tail).get('paper');
    return known && asked && isSameSheet(asked, known) ? tailWith(to, { paper: known }, tail) : tail;
  };
  const { verdict } = choices[0]!;
  if (verdict === 'refused' || verdict === 'ruled-out') return null;
  return (
    <nav class="next-steps no-print" aria-label="Next, with this job">
      {nextSteps(choices, job, store.catalogue).map(({ to, tail }) => (
        <a key={to} href={`${rooms[to]}?${asNamed(to, tail)}`} onClick={() => sayWhole('choose', encodeJob(job))}>
          {WORDS[to]}
        </a>
      ))}
    </nav>
  );
}
