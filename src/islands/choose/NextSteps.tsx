/**
 * Where one goes from the answer, each link carrying the job's figures. What works these out follows the first answer:
 * until it has come there are those of the built page, and for another job none.
 */
import { useStore } from '@nanostores/preact';
import { useEffect, useState } from 'preact/hooks';
import { DEFAULT_JOB } from '../../core/choose/job';
import type { nextSteps, NextRoom, NextStep } from '../../core/handover/choose-to-all';
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
  /** from the answer that the page is built with */
  readonly steps: readonly NextStep[];
}

export function NextSteps({ store, rooms, steps: built }: Props) {
  const choices = useStore(store.$choices);
  const job = useStore(store.$job);
  const [find, setFind] = useState<typeof nextSteps>();
  useEffect(() => {
    import('../../core/handover/choose-to-all').then(
      (all) => setFind(() => all.nextSteps),
      // the answer stands without them
      () => {},
    );
  }, []);
  const { paper: known } = useStore($benchJob).facts;
  // The form holds the sheet field by field; where it is one that has a name, it goes on under its name.
  const asNamed = (to: NextRoom, tail: string): string => {
    const asked = new URLSearchParams(tail).get('paper');
    return known && asked && isSameSheet(asked, known) ? tailWith(to, { paper: known }, tail) : tail;
  };
  const link = encodeJob(job);
  const { verdict } = choices[0]!;
  const steps = find ? find(choices, job, store.catalogue) : link === encodeJob(DEFAULT_JOB) ? built : [];
  if (steps.length === 0 || verdict === 'refused' || verdict === 'ruled-out') return null;
  return (
    <nav class="next-steps no-print" aria-label="Next, with this job">
      {steps.map(({ to, tail }) => (
        <a key={to} href={`${rooms[to]}?${asNamed(to, tail)}`} onClick={() => sayWhole('choose', link)}>
          {WORDS[to]}
        </a>
      ))}
    </nav>
  );
}
