/**
 * One's own trials beside the chooser's model. Fetched only where there are trials on this device, or where
 * a link brings what its sender's swatches showed.
 */
import { atom, computed, type ReadableAtom } from 'nanostores';
import type { InTurns } from '../../core/base/turns';
import type { Ranked } from '../../core/choose/finding';
import { settleJob, type Job } from '../../core/choose/job';
import { rankInTurns } from '../../core/choose/ranking';
import { encodeTaught, type TaughtBy } from '../../core/choose/seen';
import { leftToLearn } from '../../core/handover/trial-evidence';
import {
  adjustRanking,
  decodeEvidence,
  encodeEvidence,
  evidenceFor,
  type Evidence,
  type TrialsTold,
} from '../../core/handover/trial-to-choose';
import { learnedDraws } from '../../core/learn/reweigh';
import { digestOf, drawsForTaught, movedBy, type Moved } from '../../core/learn/taught';
import type { Trial } from '../../core/trial/record';
import { inTurns } from '../shared/time-slice';
import type { ChoosePageStore } from './choose-page';
import { openLearning, type Learning } from './learning';

export interface EvidenceStore {
  readonly $isOn: ReadableAtom<boolean>;
  readonly turn: (on: boolean) => void;
  /** 'sent': it came in the link and holds for the job as it was sent */
  readonly $source: ReadableAtom<'own' | 'sent'>;
  readonly $told: ReadableAtom<ReadonlyMap<string, TrialsTold>>;
  /** does any swatch bear on the job at all */
  readonly $speaks: ReadableAtom<boolean>;
  /** what the model has learned from all swatches, however far from this job */
  readonly learning: Learning;
  /** chances that have moved by what was learned, those that moved most first */
  readonly $moved: ReadableAtom<readonly Moved[]>;
  /** first place of the model alone, and with what was learned, each with its chance; undefined until it is worked out */
  readonly $firsts: ReadableAtom<Firsts | undefined>;
}

export interface Firsts {
  readonly before: Pick<Ranked, 'adhesiveId' | 'chance'>;
  readonly now: Pick<Ranked, 'adhesiveId' | 'chance'>;
  /** what is first now, by the model alone */
  readonly nowBefore: number;
}

/** As many as a curve of ratios is worked out with. */
const DRAWS = 32;

const SWITCH_KEY = 'open-time:evidence';

/** `sentText`: the evidence in the link, if there is any; `sentTaught`: what its sender's model had learned from. Demo trials say nothing. */
export function openEvidence(
  chooser: ChoosePageStore,
  $trials: ReadableAtom<readonly Trial[]>,
  sentText: string | undefined,
  storage: Storage | undefined,
  sentTaught?: TaughtBy,
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
  const learning = openLearning(
    $trials,
    catalogue,
    computed($job, ({ bench }) => bench),
  );
  // A reader of a link sees what its sender saw, whatever was switched here before.
  const $isOn = atom(sent.size > 0 || stored !== 'off');
  const $source = computed([$job, learning.$learned], (job, learned): 'own' | 'sent' => {
    if (sent.size === 0 || job !== sentJob) return 'own';
    // one's own link, opened where its swatches are
    return learned && sentTaught && digestOf(learned).digest === sentTaught.digest ? 'own' : 'sent';
  });
  const $evidence = computed([$job, $trials, $source], (job, trials, source): Evidence =>
    source === 'sent'
      ? sent
      : evidenceFor(
          trials.filter((trial) => !trial.demo),
          job,
          catalogue,
        ),
  );
  const $told = atom<ReadonlyMap<string, TrialsTold>>(new Map());
  const $moved = atom<readonly Moved[]>([]);
  const $firsts = atom<Firsts | undefined>(undefined);
  /** the answer by what was learned, before the swatches of this very pair are counted */
  const $learnedChoices = atom<{ readonly job: Job; readonly choices: readonly Ranked[] } | undefined>(undefined);
  const apply = () => {
    const evidence = $evidence.get();
    const job = $job.get();
    const learned = $learnedChoices.get();
    const taught = learned?.job === job && $source.get() === 'own' ? learned.choices : undefined;
    const on = $isOn.get() && (evidence.size > 0 || taught !== undefined);
    // What the swatches would change is worked out even while they are switched off.
    const before = chooser.$modelChoices.get();
    const adjusted = adjustRanking(taught ?? before, evidence, catalogue);
    const tail =
      (evidence.size > 0 ? `&ev=${encodeEvidence(evidence)}` : '') +
      (taught ? `&ls=${encodeTaught(digestOf(learning.$learned.get()!), adjusted.choices)}` : '');
    chooser.$adjust.set(
      on
        ? {
            choices: (choices, now) =>
              adjustRanking((now === job ? taught : undefined) ?? choices, evidence, catalogue).choices,
            tail,
            ...(taught && { learned: learnedDraws(learning.$learned.get()!, job.paper, DRAWS) }),
          }
        : undefined,
    );
    $told.set(adjusted.told);
    $moved.set(taught ? movedBy(before, adjusted.choices) : []);
    const [was, is] = [before[0]!, adjusted.choices[0]!];
    const same = before.find(({ adhesiveId }) => adhesiveId === is.adhesiveId);
    $firsts.set(taught && { before: was, now: is, nowBefore: same?.chance ?? is.chance });
  };
  let stop = () => {};
  const learn = () => {
    stop();
    const job = $job.get();
    const learned = learning.$learned.get();
    if (!learned || learned.swatches === 0 || $source.get() === 'sent') return $learnedChoices.set(undefined);
    const speaksOf = $evidence.get();
    function* answer(): InTurns<readonly Ranked[]> {
      // in the turn of whoever learned there is no time left for it
      yield 'rest';
      const keeps = new Map([...speaksOf.keys()].map((id) => [id, leftToLearn(id, job, catalogue)]));
      const draws = yield* drawsForTaught(learned!, job.paper, keeps);
      const choices = yield* rankInTurns(settleJob(job, catalogue).job, catalogue, draws);
      // and with this the page is drawn anew
      yield 'rest';
      return choices;
    }
    stop = inTurns(answer(), (choices) => $learnedChoices.set({ job, choices }));
  };
  $evidence.subscribe(apply);
  $isOn.listen(apply);
  $learnedChoices.listen(apply);
  computed([learning.$isSettled, learning.$learned], (settled, learned) =>
    !settled ? undefined : learned ? digestOf(learned).digest : '',
  ).subscribe((digest) => chooser.$taughtHere.set(digest));
  $job.listen(learn);
  learning.$learned.subscribe(learn);
  return {
    $isOn,
    $source,
    $told,
    $speaks: computed($evidence, (evidence) => evidence.size > 0),
    learning,
    $moved,
    $firsts,
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
