/** Water leaving a coat: against an independent reckoning in small steps, and at its edges. */
import { describe, expect, it, test } from 'vitest';
import { takenUp, timeToLose, type Flow } from '../../../src/core/joint/water-loss';

describe('water leaving a coat', () => {
  const base: Flow = { paper: 2, substrate: 1, air: 0.01, capacity: 20, drainable: 60 };
  /** What is lost after t, from the rates, in small steps of √t: an independent reckoning. */
  function lost({ paper, substrate, air, capacity, drainable }: Flow, seconds: number): number {
    const steps = 20_000;
    const root = Math.sqrt(seconds);
    let [sheet, board] = [0, 0];
    for (let i = 0; i < steps; i += 1) {
      const left = drainable - sheet - board;
      if (left <= 0) break;
      const drinks = sheet < capacity ? Math.min((paper * root) / steps, capacity - sheet, left) : 0;
      sheet += drinks;
      board += Math.min((substrate * root) / steps, left - drinks);
    }
    return sheet + board + air * seconds;
  }
  test.each([
    ['both drink', base, 10],
    ['the sheet is full', base, 40],
    ['suction has had all', base, 75],
    ['the sheet has room for all', { ...base, capacity: 100 }, 70],
    ['nothing goes into the sheet', { ...base, paper: 0 }, 30],
    ['only the sheet drinks', { ...base, substrate: 0 }, 25],
    ['only the air', { ...base, paper: 0, substrate: 0 }, 5],
    ['the room takes what suction leaves', base, 80],
    ['the room takes what suction leaves of a sheet with room', { ...base, capacity: 100 }, 80],
  ] as const)('is lost when it should be: %s', (_, flow, grams) => {
    const seconds = timeToLose(flow, grams);
    expect(Math.abs(lost(flow, seconds) - grams)).toBeLessThan(0.02);
  });
  it('takes no time for nothing, and for ever without a way out', () => {
    expect(timeToLose(base, 0)).toBe(0);
    expect(timeToLose(base, -1)).toBe(0);
    const shut = { ...base, air: 0 };
    // by suction alone it gives 60 and no more
    expect(timeToLose(shut, 60)).toBeLessThan(Infinity);
    expect(timeToLose(shut, 61)).toBe(Infinity);
    expect(timeToLose({ ...shut, paper: 0, substrate: 0 }, 1)).toBe(Infinity);
    expect(timeToLose({ ...shut, paper: 0, substrate: 0 }, 0)).toBe(0);
  });
  it('a sheet without pores that drinks nothing leaves all to the board, then to the room', () => {
    const solid = { ...base, paper: 0, capacity: 0 };
    expect(timeToLose({ ...solid, air: 0 }, 60)).toBe(60 ** 2);
    expect(timeToLose({ ...solid, air: 0 }, 61)).toBe(Infinity);
    // 60 by suction and 40 by the room at 0.01 a second, which is longer than the board takes
    expect(timeToLose(solid, 100)).toBeCloseTo(4000, 9);
  });
  it('is shared between the sides until the sheet is full and the coat has given all', () => {
    expect(takenUp(base, 5)).toEqual({ paper: 10, substrate: 5 });
    expect(takenUp(base, 15)).toEqual({ paper: 20, substrate: 15 });
    // 20 in the sheet and 40 in the board: all that suction draws, at √t = 40
    expect(takenUp(base, 100)).toEqual({ paper: 20, substrate: 40 });
    // room for all: 60 at 3 a step is √t = 20
    expect(takenUp({ ...base, capacity: 100 }, 100)).toEqual({ paper: 40, substrate: 20 });
    expect(takenUp({ ...base, capacity: 40 }, 100)).toEqual({ paper: 40, substrate: 20 });
    expect(takenUp({ ...base, substrate: 0 }, 100)).toEqual({ paper: 20, substrate: 0 });
    expect(takenUp({ ...base, paper: 0, substrate: 0 }, 9)).toEqual({ paper: 0, substrate: 0 });
    // a coat without water between two closed sides
    expect(takenUp({ ...base, paper: 0, substrate: 0, drainable: 0 }, 9)).toEqual({ paper: 0, substrate: 0 });
  });
});
