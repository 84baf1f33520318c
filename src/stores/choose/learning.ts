/** What the model has learned from all the swatches on this device. Fetched only where there are some. */
import { atom, type ReadableAtom } from 'nanostores';
import { judgedIn, type Judged } from '../../core/learn/judged';
import { learnInTurns, type Learned } from '../../core/learn/reweigh';
import { pairsInTurns, taughtBy, type Pair, type Taught } from '../../core/learn/taught';
import type { Catalogue } from '../../core/records/records';
import type { Trial } from '../../core/trial/record';
import { inTurns } from '../shared/time-slice';

export interface Learning {
  /** undefined until it is worked out, and where there is nothing to learn from */
  readonly $learned: ReadableAtom<Learned | undefined>;
  readonly $taught: ReadableAtom<Taught | undefined>;
  /** the pairs that were tried, those that taught most first */
  readonly $pairs: ReadableAtom<readonly Pair[]>;
  /** judged swatches that the model cannot be asked about */
  readonly $unnamed: ReadableAtom<number>;
}

/** Learns from these trials, in turns, and again whenever they change. */
export function openLearning($trials: ReadableAtom<readonly Trial[]>, catalogue: Catalogue): Learning {
  const $learned = atom<Learned | undefined>(undefined);
  const $taught = atom<Taught | undefined>(undefined);
  const $pairs = atom<readonly Pair[]>([]);
  const $unnamed = atom(0);
  let stop = () => {};
  const learn = (judged: Judged) => {
    stop();
    $unnamed.set(judged.unnamed);
    if (judged.swatches === 0) {
      $taught.set(undefined);
      $pairs.set([]);
      return $learned.set(undefined);
    }
    stop = inTurns(learnInTurns(judged.conditions, catalogue), (learned) => {
      $taught.set(taughtBy(learned));
      $learned.set(learned);
      stop = inTurns(pairsInTurns(learned), (pairs) => $pairs.set(pairs));
    });
  };
  $trials.subscribe((trials) => learn(judgedIn(trials, catalogue)));
  return { $learned, $taught, $pairs, $unnamed };
}
