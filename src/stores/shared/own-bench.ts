/**
 * The bench that a reader has measured, kept on this device only: one text (core/bench/own-bench.ts). Where storage is
 * refused or broken, it lasts for the visit.
 */
import { atom, type ReadableAtom } from 'nanostores';
import { readBench } from '../../core/bench/own-bench';
import { BENCH_KEY } from './device-storage';

export interface KeptBench {
  /** empty where none is kept */
  readonly $bench: ReadableAtom<string>;
  /** false where this browser keeps nothing */
  readonly $kept: ReadableAtom<boolean>;
  readonly keep: (text: string) => void;
  readonly forget: () => void;
}

export function openKeptBench(storage: Storage | undefined): KeptBench {
  const $bench = atom(stored(storage));
  const $kept = atom(storage !== undefined);
  const put = (text: string) => {
    $bench.set(text);
    try {
      if (text === '') storage?.removeItem(BENCH_KEY);
      else storage?.setItem(BENCH_KEY, text);
    } catch {
      $kept.set(false);
    }
  };
  return { $bench, $kept, keep: put, forget: () => put('') };
}

function stored(storage: Storage | undefined): string {
  try {
    const text = storage?.getItem(BENCH_KEY) ?? '';
    return readBench(text) ? text : '';
  } catch {
    return '';
  }
}
