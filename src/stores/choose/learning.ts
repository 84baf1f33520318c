/** What the model has learned from all the swatches on this device. Fetched only where there are some. */
import { atom, computed, type ReadableAtom } from 'nanostores';
import { ownBench } from '../../core/learn/condition';
import type { InTurns } from '../../core/base/turns';
import { judgedIn, type Judged } from '../../core/learn/judged';
import { learnInTurns, weighInTurns, type Learned } from '../../core/learn/reweigh';
import { pairsInTurns, taughtBy, type Pair, type Taught } from '../../core/learn/taught';
import { recordsOn, type Narrowable } from '../../core/records/kinds';
import type { Catalogue } from '../../core/records/records';
import type { Trial } from '../../core/trial/record';
import { fetchBench, waitsForBench } from '../shared/on-bench';
import { inTurns } from '../shared/time-slice';

/** `onMeasured`: one's own swatches were weighed on one's own bench as it was measured. */
export type TaughtHere = Taught & { readonly onMeasured: boolean };

export interface Learning {
  /** undefined until it is worked out, and where there is nothing to learn from */
  readonly $learned: ReadableAtom<Learned | undefined>;
  /** it is known whether there is anything to learn from, and what was learned is worked out */
  readonly $isSettled: ReadableAtom<boolean>;
  readonly $taught: ReadableAtom<TaughtHere | undefined>;
  /** the pairs that were tried, those that taught most first */
  readonly $pairs: ReadableAtom<readonly Pair[]>;
  /** judged swatches that the model cannot be asked about */
  readonly $unnamed: ReadableAtom<number>;
}

/**
 * Learns from these trials, in turns, and again whenever they change, or the bench that the answer is for does: swatches
 * of one's own are weighed on one's own bench as it was measured.
 */
export function openLearning(
  $trials: ReadableAtom<readonly Trial[]>,
  catalogue: Catalogue & Narrowable,
  $bench: ReadableAtom<string | undefined> = atom(undefined),
): Learning {
  const $learned = atom<Learned | undefined>(undefined);
  const $taught = atom<TaughtHere | undefined>(undefined);
  const $pairs = atom<readonly Pair[]>([]);
  const $unnamed = atom(0);
  const $isSettled = atom(false);
  let stop = () => {};
  const learn = (judged: Judged, bench: string | undefined) => {
    stop();
    if (waitsForBench({ bench })) {
      let left = false;
      stop = () => void (left = true);
      return void fetchBench().then(() => left || learn(judged, bench));
    }
    $unnamed.set(judged.unnamed);
    if (judged.swatches === 0) {
      $taught.set(undefined);
      $pairs.set([]);
      $learned.set(undefined);
      return $isSettled.set(true);
    }
    stop = inTurns(learnFrom(judged, bench), (learned) => {
      // which of them taught is told below the answer, and waits for it
      stop = inTurns(pairsInTurns(learned), (pairs) => $pairs.set(pairs), 'background');
    });
  };
  /** Hands over what is done as it goes, and ends its turn there: what each sets off is work of its own. */
  function* learnFrom({ conditions }: Judged, bench: string | undefined): InTurns<Learned> {
    // the task in which it was asked has run all the scripts that it needs
    yield 'rest';
    const onOwn = recordsOn(bench, catalogue);
    const learned = yield* learnInTurns(conditions, catalogue, ownBench(conditions), undefined, onOwn);
    yield* weighInTurns(learned);
    $taught.set({ ...taughtBy(learned), onMeasured: bench !== undefined });
    $learned.set(learned);
    $isSettled.set(true);
    yield 'rest';
    return learned;
  }
  computed([$trials, $bench], (trials, bench) => ({ trials, bench })).subscribe(({ trials, bench }) =>
    learn(judgedIn(trials, catalogue), bench),
  );
  return { $learned, $isSettled, $taught, $pairs, $unnamed };
}
