/** What each kind of mix is asked. */
import { askedOf } from '../../../src/core/link/fields';
import { describe, expect, it } from 'vitest';
import { DEFAULT_MIX, MIX_FIELDS, type MixPlan } from '../../../src/core/mix/plan';

describe('what is asked', () => {
  const asked = (change: Partial<MixPlan>) => askedOf({ ...DEFAULT_MIX, ...change }, MIX_FIELDS);
  it('each kind its own, and the amount where something is made', () => {
    const amount = ['need', 'loss', 'scale'];
    expect(asked({ kind: 'powder' })).toEqual(['kind', 'powder', 'grade', 'percent', 'basis', ...amount]);
    expect(asked({ kind: 'paste' })).toEqual(['kind', 'starch', 'waterParts', 'by', 'boiledOff', 'use', ...amount]);
    expect(asked({ kind: 'dilute' })).toEqual(['kind', 'basis', 'jar', 'stock', 'target', ...amount]);
    expect(asked({ kind: 'correct' })).toEqual(['kind', 'basis', 'jar', 'have', 'stock', 'target', 'scale']);
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
