/**
 * The trials kept on this device, each under its own key of the browser's local storage. Every change is
 * made to what is stored at that moment, not to what this page last saw, so that two tabs do not undo each
 * other. When storage is full or refused the trial lives on in this page, and the page says so.
 */
import { atom, type ReadableAtom } from 'nanostores';
import { parseTrial } from '../../core/trial/parse';
import type { Trial } from '../../core/trial/record';
import { localStorageOrNone } from '../shared/device-storage';

export const TRIAL_KEY = 'open-time:trial:';
/** The last steps of a trial (run.ts): they go when it goes. */
export const UNDO_KEY = 'open-time:undo:';

/** 'full': there is no room; 'refused': this browser does not let the page store anything. */
export type Trouble = 'full' | 'refused';

export interface Damaged {
  readonly key: string;
  readonly text: string;
}

export interface TrialShelf {
  readonly $trials: ReadableAtom<readonly Trial[]>;
  /** stored texts that are no trial any more; they are never deleted unasked */
  readonly $damaged: ReadableAtom<readonly Damaged[]>;
  readonly $trouble: ReadableAtom<Trouble | undefined>;
  /** the trial as it is stored now */
  readonly read: (id: string) => Trial | undefined;
  readonly put: (trial: Trial) => boolean;
  /** false when the change could not be stored and is held in this page alone */
  readonly change: (id: string, step: (trial: Trial) => Trial) => boolean;
  readonly remove: (id: string) => void;
  readonly removeDamaged: (key: string) => void;
  /** reads everything again: after another tab has written, or on waking up */
  readonly refresh: () => void;
}

/** Newest first; of the same day by name. */
const inOrder = (a: Trial, b: Trial): number =>
  a.createdAt === b.createdAt ? (a.name < b.name ? -1 : 1) : a.createdAt < b.createdAt ? 1 : -1;

/** `storage` undefined: the browser has none, or forbids it. */
export function createShelf(storage: Storage | undefined): TrialShelf {
  const $trials = atom<readonly Trial[]>([]);
  const $damaged = atom<readonly Damaged[]>([]);
  const $trouble = atom<Trouble | undefined>(storage ? undefined : 'refused');
  /** what could not be written: newer than what is stored */
  const unsaved = new Map<string, Trial>();

  const textAt = (key: string): string | null => {
    try {
      return storage?.getItem(key) ?? null;
    } catch {
      return null;
    }
  };
  const parsed = (text: string) => {
    try {
      return parseTrial(JSON.parse(text));
    } catch {
      return parseTrial(undefined);
    }
  };
  const keys = (): string[] => {
    try {
      return Array.from({ length: storage?.length ?? 0 }, (_, i) => storage?.key(i) ?? '').filter((key) =>
        key.startsWith(TRIAL_KEY),
      );
    } catch {
      return [];
    }
  };

  const read = (id: string): Trial | undefined => {
    const held = unsaved.get(id);
    if (held) return held;
    const text = textAt(TRIAL_KEY + id);
    const found = text === null ? undefined : parsed(text);
    return found?.ok ? found.trial : undefined;
  };

  const refresh = (): void => {
    const trials = new Map<string, Trial>();
    const damaged: Damaged[] = [];
    for (const key of keys()) {
      const text = textAt(key) ?? '';
      const found = parsed(text);
      if (found.ok) trials.set(found.trial.id, found.trial);
      else damaged.push({ key, text });
    }
    for (const [id, trial] of unsaved) trials.set(id, trial);
    $trials.set([...trials.values()].sort(inOrder));
    $damaged.set(damaged);
  };

  const put = (trial: Trial): boolean => {
    try {
      if (!storage) throw new Error('no storage');
      storage.setItem(TRIAL_KEY + trial.id, JSON.stringify(trial));
      unsaved.delete(trial.id);
      // What was held back earlier may fit now.
      if (unsaved.size === 0) $trouble.set(undefined);
    } catch (problem) {
      unsaved.set(trial.id, trial);
      $trouble.set(troubleIn(problem, storage));
    }
    refresh();
    return !unsaved.has(trial.id);
  };

  const change = (id: string, step: (trial: Trial) => Trial): boolean => {
    // Another tab may have deleted it meanwhile: what this page shows is then put back, not lost.
    const now = read(id) ?? $trials.get().find((trial) => trial.id === id);
    return now === undefined ? false : put(step(now));
  };

  const drop = (key: string): void => {
    try {
      storage?.removeItem(key);
    } catch {
      // Storage that cannot be read cannot be emptied either.
    }
    refresh();
  };
  const remove = (id: string): void => {
    unsaved.delete(id);
    drop(UNDO_KEY + id);
    drop(TRIAL_KEY + id);
  };

  refresh();
  return { $trials, $damaged, $trouble, read, put, change, remove, removeDamaged: drop, refresh };
}

function troubleIn(problem: unknown, storage: Storage | undefined): Trouble {
  // An empty storage that takes nothing is forbidden, not full.
  const full = problem instanceof Error && /quota/i.test(problem.name + problem.message);
  return full && storage !== undefined && storage.length > 0 ? 'full' : 'refused';
}

let shared: TrialShelf | undefined;

/** The shelf of this browser, kept in step with other tabs. */
export function openShelf(): TrialShelf {
  if (shared) return shared;
  const shelf = createShelf(localStorageOrNone());
  if (typeof window !== 'undefined') {
    shared = shelf;
    window.addEventListener('storage', shelf.refresh);
    window.addEventListener('pageshow', shelf.refresh);
    document.addEventListener('visibilitychange', shelf.refresh);
  }
  return shelf;
}
