/** What each kind of mix is asked. */
import { describe, expect, it } from 'vitest';
import { askedIn, DEFAULT_MIX, type MixPlan } from '../../../src/core/mix/plan';

describe('what is asked', () => {
  const asked = (change: Partial<MixPlan>) => askedIn({ ...DEFAULT_MIX, ...change });
  it('each kind its own, and the amount where something is made', () => {
    const amount = ['need', 'loss', 'scale'];
    expect(asked({ kind: 'powder' })).toEqual(['kind', 'powder', 'grade', 'percent', 'basis', ...amount]);
    expect(asked({ kind: 'paste' })).toEqual(['kind', 'starch', 'waterParts', 'by', 'boiledOff', 'use', ...amount]);
    expect(asked({ kind: 'dilute' })).toEqual(['kind', 'jar', 'stock', 'target', 'basis', ...amount]);
    expect(asked({ kind: 'correct' })).toEqual(['kind', 'jar', 'have', 'stock', 'target', 'basis', 'scale']);
    expect(asked({ kind: 'stretch', aim: 'parts', from: 'need' })).toEqual(
      expect.arrayContaining(['baseParts', 'extenderParts', ...amount]),
    );
    expect(asked({ kind: 'stretch', aim: 'solids', from: 'have' })).toEqual(
      expect.arrayContaining(['solids', 'haveGrams', 'scale']),
    );
    expect(asked({ kind: 'stretch', aim: 'solids', from: 'have' })).not.toEqual(expect.arrayContaining(['need']));
    expect(asked({ kind: 'stretch', aim: 'solids' })).not.toContain('baseParts');
  });
});
