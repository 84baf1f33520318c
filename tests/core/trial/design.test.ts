/** The design of a trial: how many swatches, and how many claims its page will make. */
import { describe, expect, it } from 'vitest';
import { claimCount, drawOrder, swatchCount } from '../../../src/core/trial/design';
import { TRIAL_LIMITS, type Question } from '../../../src/core/trial/record';
import { DESIGN } from '../support/trial';

describe('swatches', () => {
  it('2 papers × 2 adhesives × 1 hold × 3', () => expect(swatchCount(DESIGN)).toBe(12));
  it('as many swatches as a trial holds, and no more', () => {
    const of = (replicates: number) =>
      drawOrder({ ...DESIGN, papers: [{ id: 'p' }], glues: [{ id: 'a' }], replicates }, 1);
    expect(of(TRIAL_LIMITS.swatches)).toHaveLength(TRIAL_LIMITS.swatches);
    expect(() => of(TRIAL_LIMITS.swatches + 1)).toThrow(/at most/);
  });
});

describe('claims', () => {
  const things = (n: number) => Array.from({ length: n }, (_, i) => ({ id: `x-${i}`, name: `X ${i}` }));
  const ask = (n: number) => things(n).map((one): Question => ({ ...one, kind: 'own', text: 'Asked', criterion: '' }));
  const weighed = (...grammages: readonly number[]) =>
    grammages.map((grammage, i) => ({ id: `p-${i}`, name: 'P', grammage }));
  it('each two adhesives on each question', () =>
    expect(claimCount({ papers: things(5), glues: things(4), questions: ask(3) })).toBe(6 * 3));
  it('and each adhesive over three weights or more', () => {
    expect(claimCount({ papers: weighed(20, 40, 80), glues: things(3), questions: ask(6) })).toBe((3 + 3) * 6);
    expect(claimCount({ papers: weighed(20, 40, 40), glues: things(3), questions: ask(6) })).toBe(3 * 6);
  });
  it('one adhesive on one weight: none', () =>
    expect(claimCount({ papers: weighed(20), glues: things(1), questions: ask(2) })).toBe(0));
});
