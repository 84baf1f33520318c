/**
 * One's own trials beside the chooser's model. Fetched only where there are trials on this device, or where
 * a link brings what its sender's swatches showed.
 */
import { atom, computed, type ReadableAtom } from 'nanostores';
import type { Job } from '../../core/choose/job';
import {
  adjustRanking,
  decodeEvidence,
  encodeEvidence,
  evidenceFor,
  type Evidence,
  type Told,
} from '../../core/handover/trial-to-choose';
import type { Trial } from '../../core/trial/record';
import type { ChoosePageStore } from './choose-page';

export interface EvidenceStore {
  readonly $isOn: ReadableAtom<boolean>;
  readonly turn: (on: boolean) => void;
  /** 'sent': it came in the link and holds for the job as it was sent */
  readonly $source: ReadableAtom<'own' | 'sent'>;
  readonly $told: ReadableAtom<ReadonlyMap<string, Told>>;
  /** does any swatch bear on the job at all */
  readonly $speaks: ReadableAtom<boolean>;
}

const SWITCH_KEY = 'open-time:evidence';

/** `sentText`: the evidence in the link, if there is any. Demo trials say nothing. */
export function openEvidence(
  chooser: ChoosePageStore,
  $trials: ReadableAtom<readonly Trial[]>,
  sentText: string | undefined,
  storage: Storage | undefined,
): EvidenceStore {
  const { $job, catalogue } = chooser;
  const sentJob: Job = $job.get();
  const sent = decodeEvidence(sentText);
  const stored = (() => {
    try {
      return storage?.getItem(SWITCH_KEY);
    } catch {
      return undefined;
    }
  })();
  // A reader of a link sees what its sender saw, whatever was switched here before.
  const $isOn = atom(sent.size > 0 || stored !== 'off');
  const $source = computed($job, (job): 'own' | 'sent' => (sent.size > 0 && job === sentJob ? 'sent' : 'own'));
  const $evidence = computed([$job, $trials, $source], (job, trials, source): Evidence =>
    source === 'sent'
      ? sent
      : evidenceFor(
          trials.filter((trial) => !trial.demo),
          job,
          catalogue,
        ),
  );
  const $told = atom<ReadonlyMap<string, Told>>(new Map());
  const apply = () => {
    const evidence = $evidence.get();
    const on = $isOn.get() && evidence.size > 0;
    chooser.$adjust.set(
      on
        ? {
            choices: (choices) => adjustRanking(choices, evidence, catalogue).choices,
            tail: `&ev=${encodeEvidence(evidence)}`,
          }
        : undefined,
    );
    // What the swatches would change is worked out even while they are switched off.
    $told.set(adjustRanking(chooser.$modelChoices.get(), evidence, catalogue).told);
  };
  $evidence.subscribe(apply);
  $isOn.listen(apply);
  return {
    $isOn,
    $source,
    $told,
    $speaks: computed($evidence, (evidence) => evidence.size > 0),
    turn: (on) => {
      $isOn.set(on);
      try {
        storage?.setItem(SWITCH_KEY, on ? 'on' : 'off');
      } catch {
        // The switch holds for this visit.
      }
    },
  };
}
