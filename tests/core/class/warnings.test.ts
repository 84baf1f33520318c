/** What a teacher is warned of before a class. */
import { describe, expect, it } from 'vitest';
import { DEFAULT_JOB } from '../../../src/core/choose/job';
import { besideSheet } from '../../../src/core/class/cutting';
import { classWarnings, slipWarnings, slowerOnes } from '../../../src/core/class/warnings';
import { choose } from '../../../src/core/choose/choose';
import { DEFAULT_CLASS, type ClassPlan } from '../../../src/core/class/plan';
import type { WetAdhesive } from '../../../src/core/records/records';
import { catalogue } from '../../../src/data/catalogue';
const plainly = (text: string) => text.replaceAll('\u00a0', ' ');

describe('a workshop', () => {
  const wet = catalogue.adhesives.get('pva') as WetAdhesive;
  const slip = (p10: number, p50: number, p90: number) =>
    ({ name: 'cover', slip: { p10, p50, p90 }, needed: 20 }) as never;
  it('warns where a beginner, half as slow again, may run out of time', () => {
    expect(slipWarnings([slip(30, 60, 90)], wet, ['paste'])).toEqual([]);
    const [line, better] = slipWarnings([slip(29, 60, 90)], wet, ['paste', 'mix']);
    expect(plainly(line!)).toMatch(/^The cover takes a beginner about 30 s .*some will run out of time/);
    expect(better).toContain(': paste, mix.');
    expect(slipWarnings([slip(5, 19, 40)], wet, [])).toHaveLength(1);
    expect(slipWarnings([slip(5, 19, 40)], wet, [])[0]).toContain('do not count on moving it');
    expect(slipWarnings([slip(5, 20, 40)], wet, [])[0]).toContain('some will run out of time');
  });
  it('names at most two slower ones, and only those that hold', () => {
    const choices = choose({ ...DEFAULT_JOB, paper: { family: 'wove-text', grammage: 80 } }, catalogue);
    const all = choices.map((one) => ({
      ...one,
      verdict: 'sound' as const,
      slipSeconds: { p10: 30, p50: 40, p90: 50 },
    }));
    expect(slowerOnes(all as never, 20, catalogue)).toHaveLength(2);
    expect(slowerOnes(all as never, 20.1, catalogue)).toEqual([]);
    expect(slowerOnes(all.map((one) => ({ ...one, verdict: 'touch-and-go' })) as never, 20, catalogue)).toEqual([]);
  });
  it('speaks of a room that is warm, cold, damp or dry, from its own lines on', () => {
    const [choice] = choose(DEFAULT_JOB, catalogue);
    const said = (room: Partial<ClassPlan>, verdict = 'sound') =>
      classWarnings({ ...DEFAULT_CLASS, celsius: 20, humidity: 50, ...room }, {
        ...choice!,
        verdict,
      } as never).join();
    expect(said({})).toBe('');
    expect(said({}, 'likely')).toBe('');
    expect([25.9, 26].map((celsius) => said({ celsius }).includes('warm room'))).toEqual([false, true]);
    expect([15, 14.9].map((celsius) => said({ celsius }).includes('cold a room'))).toEqual([false, true]);
    expect([69, 70].map((humidity) => said({ humidity }).includes('damp a room'))).toEqual([false, true]);
    expect([31, 30].map((humidity) => said({ humidity }).includes('dry a room'))).toEqual([false, true]);
    expect(said({}, 'unlikely')).toMatch(/^The adhesive you chose is \w/);
  });
  it('says beside a sheet’s own fields which piece it does not hold, once a field', () => {
    const problem = (field: string) => ({ field, code: 'too-large', message: field }) as const;
    const pieces = [{ stock: 'board' }, { stock: 'paper' }] as never;
    const fields = (...given: string[]) => besideSheet(given.map(problem), pieces).map(({ field }) => field);
    expect(fields('piece-0-wide', 'piece-0-high', 'piece-0-grain')).toEqual(['boardWide', 'boardHigh', 'boardGrain']);
    expect(fields('piece-1-wide', 'piece-1-wide')).toEqual(['paperWide']);
    expect(fields('kits')).toEqual(['people']);
    expect(fields('pieces')).toEqual(['people']);
    expect(fields('piece-9-wide', 'loss')).toEqual(['piece-9-wide', 'loss']);
  });
});
