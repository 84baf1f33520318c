/** The address of the page follows the job: read once, written after a pause, and never more than that. */
import { atom } from 'nanostores';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { syncAddress } from '../../../src/stores/shared/url-sync';

let replaceState: ReturnType<typeof vi.fn>;
const pushState = vi.fn();
/** what the page listens to */
let heard: Map<string, (event: unknown) => void>;

beforeEach(() => {
  vi.useFakeTimers();
  replaceState = vi.fn();
  heard = new Map();
  vi.stubGlobal('window', {
    location: { search: '?gsm=80', pathname: '/choose/', hash: '#ch-answer' },
    history: { state: { kept: true }, replaceState, pushState },
    addEventListener: (type: string, listener: (event: unknown) => void) => heard.set(type, listener),
    removeEventListener: (type: string) => heard.delete(type),
  });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

function start() {
  const load = vi.fn();
  const $tail = atom('v=1');
  return { load, $tail, stop: syncAddress('choose', load, $tail) };
}

test('the link is read once, and reading it writes nothing', () => {
  const { load } = start();
  expect(load.mock.calls).toEqual([['?gsm=80']]);
  vi.runAllTimers();
  expect(replaceState).not.toHaveBeenCalled();
});

test('while someone types nothing is written; after a pause, the last of it, once', () => {
  const { $tail } = start();
  for (const gsm of ['8', '80', '805']) {
    $tail.set(`v=1&gsm=${gsm}`);
    vi.advanceTimersByTime(100);
  }
  expect(replaceState).not.toHaveBeenCalled();
  vi.runAllTimers();
  expect(replaceState.mock.calls).toEqual([[{ kept: true }, '', '/choose/?v=1&gsm=805#ch-answer']]);
  expect(pushState).not.toHaveBeenCalled();
});

test('however someone types, half a minute brings no more than the hundred changes that browsers allow', () => {
  for (const gap of [50, 299, 301, 450]) {
    const { $tail, stop } = start();
    replaceState.mockClear();
    for (let at = 0, i = 0; at < 30_000; at += gap, i += 1) {
      $tail.set(`v=1&gsm=${i}`);
      vi.advanceTimersByTime(gap);
    }
    expect(replaceState.mock.calls.length, `every ${gap} ms`).toBeLessThanOrEqual(100);
    stop();
  }
});

test('a frame that may not change its address is let be', () => {
  replaceState.mockImplementation(() => {
    throw new DOMException('no', 'SecurityError');
  });
  const { $tail } = start();
  $tail.set('v=1&gsm=9');
  expect(() => vi.runAllTimers()).not.toThrow();
});

test('once stopped it writes no more, not even what was waiting', () => {
  const { $tail, stop } = start();
  $tail.set('v=1&gsm=9');
  stop();
  $tail.set('v=1&gsm=10');
  vi.runAllTimers();
  expect(replaceState).not.toHaveBeenCalled();
});

test('while the answer to a link is worked out, the link is neither written over nor forgotten', () => {
  const kept = new Map<string, string>();
  Object.assign(window, {
    sessionStorage: {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, text: string) => void kept.set(key, text),
    },
  });
  const { $tail } = start();
  // some other change of what stands there at first
  vi.runAllTimers();
  expect(replaceState).not.toHaveBeenCalled();
  expect(JSON.parse(kept.get('open-time:job')!).rooms.choose[0]).toBe('gsm=80');
  $tail.set('v=1&gsm=80');
  vi.runAllTimers();
  expect(replaceState.mock.calls).toEqual([[{ kept: true }, '', '/choose/?v=1&gsm=80#ch-answer']]);
});

test('whoever goes on by a link before the pause is over leaves all of it in the address', () => {
  const { $tail } = start();
  $tail.set('v=1&gsm=55');
  heard.get('click')!({ target: { closest: () => null } });
  expect(replaceState).not.toHaveBeenCalled();
  heard.get('click')!({ target: { closest: () => ({}) } });
  expect(replaceState.mock.calls).toEqual([[{ kept: true }, '', '/choose/?v=1&gsm=55#ch-answer']]);
  vi.runAllTimers();
  expect(replaceState).toHaveBeenCalledTimes(1);
});

test('once stopped it listens to nothing', () => {
  const { stop } = start();
  expect([...heard.keys()].sort()).toEqual(['click', 'pageshow']);
  stop();
  expect([...heard.keys()]).toEqual([]);
});
