import { describe, expect, it } from 'vitest';
import { openKeptBench } from '../../../src/stores/shared/own-bench';

const TEXT = 'brush-full_coat_54_63_73~named Loft';

function storage(text?: string): Storage {
  const kept = new Map<string, string>(text === undefined ? [] : [['open-time:bench', text]]);
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key),
  } as unknown as Storage;
}

describe('a bench that is kept', () => {
  it('is found again, and can be deleted', () => {
    const device = storage();
    openKeptBench(device).keep(TEXT);
    const again = openKeptBench(device);
    expect(again.$bench.get()).toBe(TEXT);
    again.forget();
    expect(again.$bench.get()).toBe('');
    expect(openKeptBench(device).$bench.get()).toBe('');
  });
  it.for(['no bench', '', '{', 'brush-full_coat_9_1_2'])('of which only “%s” is left is none', (text) => {
    expect(openKeptBench(storage(text)).$bench.get()).toBe('');
  });
  it('lasts for the visit where nothing can be kept', () => {
    const refusing = {
      getItem: () => null,
      setItem: () => {
        throw new DOMException('full', 'QuotaExceededError');
      },
    } as unknown as Storage;
    const own = openKeptBench(refusing);
    own.keep(TEXT);
    expect(own.$bench.get()).toBe(TEXT);
    expect(own.$kept.get()).toBe(false);
    expect(openKeptBench(undefined).$kept.get()).toBe(false);
  });
});
