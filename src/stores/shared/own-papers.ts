/**
 * Papers a reader has measured, kept on this device only. Each is one text (core/paper/own-paper.ts). Where storage
 * is refused or broken, the list lasts for the visit.
 */
import { atom, type ReadableAtom } from 'nanostores';
import { readPaper } from '../../core/paper/own-paper';

const KEY = 'open-time:papers';
const MOST = 50;

export interface OwnPapers {
  readonly $papers: ReadableAtom<readonly string[]>;
  /** false where this browser keeps nothing */
  readonly $kept: ReadableAtom<boolean>;
  /** A paper of the same name takes the other's place. */
  readonly add: (text: string) => void;
  readonly remove: (text: string) => void;
}

export function openOwnPapers(storage: Storage | undefined): OwnPapers {
  const $papers = atom<readonly string[]>(stored(storage));
  const $kept = atom(storage !== undefined);
  const put = (step: (papers: readonly string[]) => readonly string[]) => {
    // What is stored at this moment, so that two tabs do not undo each other.
    $papers.set(step($kept.get() ? stored(storage) : $papers.get()).slice(0, MOST));
    try {
      storage?.setItem(KEY, JSON.stringify($papers.get()));
    } catch {
      $kept.set(false);
    }
  };
  const nameOf = (text: string) => readPaper(text)?.name;
  return {
    $papers,
    $kept,
    add: (text) => put((papers) => [text, ...papers.filter((one) => nameOf(one) !== nameOf(text))]),
    remove: (text) => put((papers) => papers.filter((one) => one !== text)),
  };
}

function stored(storage: Storage | undefined): readonly string[] {
  try {
    const list: unknown = JSON.parse(storage?.getItem(KEY) ?? '[]');
    if (!Array.isArray(list)) return [];
    return list.filter((one): one is string => typeof one === 'string' && readPaper(one)?.name !== undefined);
  } catch {
    return [];
  }
}
