/** When each thing is done in a class. */
import { describe, expect, it } from 'vitest';
import { classAnswer } from '../../../src/core/class/answer';
import { DEFAULT_CLASS, type ClassPlan } from '../../../src/core/class/plan';
import { cuttingMinutes, scheduleFor } from '../../../src/core/class/schedule';
import { catalogue } from '../../../src/data/catalogue';

describe('a class', () => {
  function answered(change: Partial<ClassPlan>) {
    const found = classAnswer({ ...DEFAULT_CLASS, ...change }, catalogue);
    if (!found.ok) throw new Error(found.errors.map(({ field, message }) => `${field}: ${message}`).join('\n'));
    return found.value;
  }
  it('reckons a minute and a half for a cut in board and less in paper, and spreads them over afternoons', () => {
    const sheet = (cuts: number, times: number) => ({ steps: Array(cuts).fill({}), plan: { times } });
    const cut = (times: number) =>
      ({
        stocks: [
          { stock: { name: 'board' }, sheets: [sheet(4, times), sheet(2, 1)] },
          { stock: { name: 'paper' }, sheets: [sheet(5, 2)] },
        ],
      }) as never;
    // (4 × 10 + 2) × 1.5 + 5 × 2 × 0.6 (the module's own minutes)
    expect(cuttingMinutes(cut(10))).toBeCloseTo(69, 9);
    const adhesive = catalogue.adhesives.get('pva') as never;
    const day = { batches: [], adhesive, length: 180, startsAt: 14 * 60, pressed: 'the boards' };
    const said = (times: number) => scheduleFor({ ...day, cut: cut(times) }).map(({ what }) => what);
    const nineOn = (times: number) =>
      scheduleFor({ ...day, cut: cut(times) }).find(({ what }) => /^Mark/.test(what))!.at;
    expect(said(10).join()).not.toContain('spread over');
    // an afternoon is four hours: 600 minutes are three of them, and begin at nine three days before
    expect(said(98).join()).toContain('spread over 3 days');
    expect(nineOn(98)).toBe(-3 * 24 * 60 + 9 * 60 - 14 * 60);
    expect(nineOn(10)).toBe(-24 * 60 + 9 * 60 - 14 * 60);
    expect(said(10).at(-1)).toMatch(/^Dry enough to open/);
  });
  it('names the covering after its stock', () => {
    expect(JSON.stringify(answered({ stock: 'cloth' }))).not.toContain('bookcloth');
    expect(JSON.stringify(answered({ stock: 'paper', cover: 'quarter' }))).toContain('bookcloth');
  });
  it('says beside its field what cannot be', () => {
    const found = classAnswer({ ...DEFAULT_CLASS, joint: 1 }, catalogue);
    expect(found.ok ? [] : found.errors.map(({ field }) => field)).toEqual(['joint']);
    const unknown = classAnswer({ ...DEFAULT_CLASS, adhesive: 'no-such' }, catalogue);
    expect(unknown.ok ? [] : unknown.errors.map(({ field }) => field)).toContain('adhesive');
  });
});
