/** Published trials count only when asked, as another's bench, and go again. */
import { describe, expect, test } from 'vitest';
import { ownBench } from '../../../src/core/learn/condition';
import { judgedIn } from '../../../src/core/learn/judged';
import { countAlso, isCounted, leaveOut } from '../../../src/stores/trial/published';
import { createShelf } from '../../../src/stores/trial/shelf';
import { trialWith } from '../../core/support/trial';
import { readCatalogue } from '../../tools/read-content';

/** A storage in memory. */
function memoryStorage(): Storage {
  const held = new Map<string, string>();
  return {
    get length() {
      return held.size;
    },
    clear: () => held.clear(),
    key: (i) => [...held.keys()][i] ?? null,
    getItem: (key) => held.get(key) ?? null,
    removeItem: (key) => void held.delete(key),
    setItem: (key, value) => void held.set(key, value),
  };
}

const theirs = trialWith(() => 'pass', { id: 'theirs', by: 'Bo' });
const file = () => Promise.resolve({ format: 'open-time-trial', licence: 'CC0-1.0', trials: [theirs] });

describe('counting a published trial', () => {
  test('it is kept as another’s bench, never as one’s own, and can be left out again', async () => {
    const shelf = createShelf(memoryStorage());
    expect(await countAlso(shelf, 'theirs', '/x.json', file)).toBeUndefined();
    expect(isCounted(shelf.$trials.get(), 'theirs')).toBe(true);
    const { conditions } = judgedIn(shelf.$trials.get(), readCatalogue());
    expect(conditions.length).toBeGreaterThan(0);
    expect(ownBench(conditions)).toBeUndefined();
    leaveOut(shelf, 'theirs');
    expect(isCounted(shelf.$trials.get(), 'theirs')).toBe(false);
  });
  test.for<readonly [string, () => Promise<unknown>, RegExp]>([
    ['no network', () => Promise.reject(new Error('offline')), /could not be fetched/],
    ['another file', () => Promise.resolve({ hello: 1 }), /no trial that can be counted/],
    [
      'an invented trial',
      () => Promise.resolve({ trials: [{ ...theirs, demo: true }] }),
      /no trial that can be counted/,
    ],
  ])('%s: a message, and nothing is changed', async ([, get, says]) => {
    const shelf = createShelf(memoryStorage());
    shelf.put(trialWith(() => 'fail'));
    const before = shelf.$trials.get();
    expect(await countAlso(shelf, 'theirs', '/x.json', get)).toMatch(says);
    expect(shelf.$trials.get()).toEqual(before);
  });
  test('storage refused: it counts in this page and says so', async () => {
    const shelf = createShelf(undefined);
    expect(await countAlso(shelf, 'theirs', '/x.json', file)).toMatch(/while this page is open/);
    expect(isCounted(shelf.$trials.get(), 'theirs')).toBe(true);
  });
});
