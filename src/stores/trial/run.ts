/** Working through a trial at the bench: which swatch is up, what was done to it, and the way back. */
import { atom, computed, type ReadableAtom } from 'nanostores';
import {
  isDone,
  type Conditions,
  type Outcome,
  type Swatch,
  type SwatchMethod,
  type Trial,
} from '../../core/trial/record';
import { UNDO_KEY, type TrialShelf } from './shelf';

const WHO_KEY = 'open-time:who';
const BLIND_KEY = 'open-time:blind';
const MOST_UNDO = 30;

export interface Clock {
  /** milliseconds since 1970 */
  readonly now: () => number;
}

export interface TrialRun {
  readonly $trial: ReadableAtom<Trial | undefined>;
  readonly $swatch: ReadableAtom<Swatch | undefined>;
  readonly $canUndo: ReadableAtom<boolean>;
  readonly $who: ReadableAtom<string>;
  readonly setWho: (name: string) => void;
  /** the adhesive is hidden from whoever judges */
  readonly $blind: ReadableAtom<boolean>;
  readonly setBlind: (blind: boolean) => void;
  readonly show: (number: number) => void;
  /** the next one with something left to judge after the one shown, or round to the first */
  readonly next: () => void;
  /** starts the clock: the instant is stored, so that sleep and reload change nothing */
  readonly lay: () => void;
  readonly judge: (question: string, outcome: Outcome) => void;
  readonly spoil: (spoiled: boolean) => void;
  readonly note: (text: string) => void;
  readonly setConditions: (conditions: Conditions) => void;
  /** how all swatches of the trial are made, but for those that say another way */
  readonly setMethod: (method: SwatchMethod) => void;
  readonly undo: () => void;
}

export function createRun(shelf: TrialShelf, id: string, storage: Storage | undefined, { now }: Clock): TrialRun {
  const $trial = computed(shelf.$trials, (trials) => trials.find((trial) => trial.id === id));
  const $number = atom<number | undefined>(undefined);
  const $past = atom<readonly Swatch[]>(pastIn(textIn(storage, UNDO_KEY + id)));
  const $blind = atom(textIn(storage, BLIND_KEY) === 'yes');
  const $who = atom(textIn(storage, WHO_KEY) ?? '');
  const $swatch = computed([$trial, $number], (trial, number) => {
    const chosen = trial?.swatches.find((swatch) => swatch.number === number);
    return chosen ?? trial?.swatches.find((swatch) => !isDone(swatch, trial.questions)) ?? trial?.swatches[0];
  });

  const keep = (key: string, value: string): void => {
    try {
      storage?.setItem(key, value);
    } catch {
      // The shelf says that storage is full; the way back is kept in this page.
    }
  };
  const setPast = (past: readonly Swatch[]): void => {
    $past.set(past);
    keep(UNDO_KEY + id, JSON.stringify(past));
  };
  const replace = (swatch: Swatch): void =>
    void shelf.change(id, (trial) => ({
      ...trial,
      swatches: trial.swatches.map((one) => (one.number === swatch.number ? swatch : one)),
    }));
  /** Changes the swatch that is up, as it is stored now, and remembers what it was. */
  const edit = (step: (swatch: Swatch) => Swatch): void => {
    const number = $swatch.get()?.number;
    const before = shelf.read(id)?.swatches.find((one) => one.number === number) ?? $swatch.get();
    if (before === undefined || number === undefined) return;
    // It stays in view when its last question is answered.
    $number.set(number);
    setPast([...$past.get().slice(1 - MOST_UNDO), before]);
    replace(step(before));
  };
  const signed = (swatch: Swatch): Swatch => {
    const by = $who.get().trim();
    return { ...swatch, judgedAt: new Date(now()).toISOString(), ...(by && { by }) };
  };

  return {
    $trial,
    $swatch,
    $canUndo: computed($past, (past) => past.length > 0),
    $who,
    $blind,
    setBlind: (blind) => {
      $blind.set(blind);
      keep(BLIND_KEY, blind ? 'yes' : 'no');
    },
    setWho: (name) => {
      $who.set(name);
      keep(WHO_KEY, name);
    },
    show: (number) => $number.set(number),
    next: () => {
      const trial = $trial.get();
      const at = $swatch.get()?.number ?? 0;
      const open = trial?.swatches.filter((swatch) => !isDone(swatch, trial.questions)) ?? [];
      const following = open.find(({ number }) => number > at) ?? open.find(({ number }) => number !== at);
      const after = trial?.swatches.find(({ number }) => number > at);
      $number.set((following ?? after ?? trial?.swatches[0])?.number);
    },
    lay: () => edit((swatch) => ({ ...swatch, laidAt: now() })),
    judge: (question, outcome) =>
      edit((swatch) => {
        const { [question]: was, ...others } = swatch.outcomes;
        // A second tap on the same answer takes it back.
        return signed({ ...swatch, outcomes: was === outcome ? others : { ...others, [question]: outcome } });
      }),
    spoil: (spoiled) => edit(({ spoiled: _, ...swatch }) => signed(spoiled ? { ...swatch, spoiled } : swatch)),
    note: (text) => {
      // Typing is not a step to undo: it would push the judgements out of reach.
      const number = $swatch.get()?.number;
      $number.set(number);
      const noted = ({ note: _, ...swatch }: Swatch): Swatch =>
        text.trim() === '' ? swatch : { ...swatch, note: text };
      shelf.change(id, (trial) => ({
        ...trial,
        swatches: trial.swatches.map((one) => (one.number === number ? noted(one) : one)),
      }));
    },
    setConditions: (conditions) => void shelf.change(id, (trial) => ({ ...trial, conditions })),
    setMethod: (method) => void shelf.change(id, (trial) => ({ ...trial, method })),
    undo: () => {
      const last = $past.get().at(-1);
      if (!last) return;
      setPast($past.get().slice(0, -1));
      replace(last);
      $number.set(last.number);
    },
  };
}

function textIn(storage: Storage | undefined, key: string): string | undefined {
  try {
    return storage?.getItem(key) ?? undefined;
  } catch {
    return undefined;
  }
}

function pastIn(text: string | undefined): readonly Swatch[] {
  try {
    const past: unknown = JSON.parse(text ?? '[]');
    return Array.isArray(past)
      ? (past.filter((one) => typeof one?.number === 'number' && typeof one.outcomes === 'object') as Swatch[])
      : [];
  } catch {
    return [];
  }
}
