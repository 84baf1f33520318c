/** The grain from several tests: Bayes’ rule worked by hand. */
import { describe, expect, it } from 'vitest';
import { findGrain, type GrainSeen } from '../../../src/core/paper/grain-tests';

describe('grain by Bayes’ rule', () => {
  const untried = { bend: 'untried', strips: 'untried', damp: 'untried', tear: 'untried' } as const;
  const chances = (seen: Partial<Record<keyof typeof untried, GrainSeen>>, kind: 'none' | 'weak' | 'marked') =>
    findGrain({ ...untried, ...seen }, kind);
  it('starts from how marked such a paper’s grain is', () => {
    const { chances: before, likeliest, settled, against } = chances({}, 'weak');
    expect(before.height).toBeCloseTo(0.35, 12);
    expect(before.width).toBeCloseTo(0.35, 12);
    expect(before.none).toBeCloseTo(0.3, 12);
    expect({ likeliest, settled, against }).toEqual({ likeliest: 'height', settled: false, against: [] });
    expect(chances({}, 'none')).toMatchObject({ likeliest: 'none', settled: true });
  });
  it('weighs one test as it is trusted, worked by hand', () => {
    // height 0.35 × 0.85, width 0.35 × 0.05, none 0.3 × 0.2: 0.2975 : 0.0175 : 0.06
    const bent = chances({ bend: 'height' }, 'weak').chances;
    expect(bent.height).toBeCloseTo(0.2975 / 0.375, 12);
    expect(bent.width).toBeCloseTo(0.0175 / 0.375, 12);
    // unclear: 0.35 × 0.2, twice, against 0.3 × 0.6
    const torn = chances({ tear: 'unclear' }, 'weak').chances;
    expect(torn.height).toBeCloseTo(0.07 / 0.32, 12);
    expect(torn.none).toBeCloseTo(0.18 / 0.32, 12);
  });
  it('multiplies what two tests say, and names the one that says otherwise', () => {
    // marked: 0.475 × 0.9 × 0.1, 0.475 × 0.05 × 0.7, 0.05 × 0.2 × 0.2
    const found = chances({ damp: 'height', tear: 'width' }, 'marked');
    const [height, width, none] = [0.475 * 0.09, 0.475 * 0.035, 0.05 * 0.04];
    expect(found.chances.height).toBeCloseTo(height / (height + width + none), 12);
    expect(found).toMatchObject({ likeliest: 'height', settled: false, against: ['tear'], next: 'bend' });
    expect(chances({ strips: 'unclear', damp: 'width' }, 'marked').against).toEqual([]);
    expect(chances({ damp: 'width', tear: 'height' }, 'marked').against).toEqual(['tear']);
  });
});
