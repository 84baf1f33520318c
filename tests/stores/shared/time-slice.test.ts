/** Work in turns: what is done in the first, what waits, and what is stopped. */
import { expect, it } from 'vitest';
import type { InTurns } from '../../../src/core/base/turns';
import { inLine, inTurns } from '../../../src/stores/shared/time-slice';

function* counting(upTo: number, seen: number[], rest = false): InTurns<string> {
  for (let i = 1; i <= upTo; i += 1) {
    seen.push(i);
    yield rest ? 'rest' : undefined;
  }
  return 'done';
}

it('a short piece is done in the first turn', () => {
  const seen: number[] = [];
  let result = '';
  inTurns(counting(3, seen), (value) => (result = value));
  expect([result, seen]).toEqual(['done', [1, 2, 3]]);
});

it('a rest ends the turn, and the rest of the work comes later', async () => {
  const seen: number[] = [];
  const result = new Promise((resolve) => inTurns(counting(3, seen, true), resolve));
  expect(seen).toEqual([1]);
  expect(await result).toBe('done');
  expect(seen).toEqual([1, 2, 3]);
});

it('what is stopped goes no further', async () => {
  const seen: number[] = [];
  const stop = inTurns(counting(3, seen, true), () => seen.push(99));
  stop();
  await new Promise((resolve) => inTurns(counting(5, [], true), resolve));
  expect(seen).toEqual([1]);
});

it('in a line one piece follows the other, none of it in the task that asks', async () => {
  const line = inLine();
  const told: string[] = [];
  const work = (name: string, turns: number) => {
    const seen: number[] = [];
    return new Promise<void>((resolve) => {
      line(counting(turns, seen, true), () => {
        told.push(name);
        resolve();
      });
      expect(seen).toEqual([]);
    });
  };
  await Promise.all([work('long', 6), work('short', 1)]);
  expect(told).toEqual(['long', 'short']);
  // the line is not worn out by being empty
  await work('later', 1);
  expect(told).toEqual(['long', 'short', 'later']);
});

it('what is taken out of the line, waiting or at work, does not hold it up', async () => {
  const line = inLine();
  const told: string[] = [];
  const stopFirst = line(counting(1000, [], true), () => told.push('first'));
  const stopSecond = line(counting(1, [], true), () => told.push('second'));
  stopSecond();
  const third = new Promise<void>((resolve) => {
    line(counting(1, [], true), () => {
      told.push('third');
      resolve();
    });
  });
  await new Promise((resolve) => setTimeout(resolve));
  stopFirst();
  await third;
  expect(told).toEqual(['third']);
});
