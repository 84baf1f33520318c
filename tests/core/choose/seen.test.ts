/** The answer that the sender of a link saw. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { choose } from '../../../src/core/choose/choose';
import { DEFAULT_JOB } from '../../../src/core/choose/job';
import { MODEL_VERSION } from '../../../src/core/link/model-version';
import {
  decodeSeen,
  decodeTaught,
  encodeSeen,
  encodeTaught,
  sameAnswer,
  seenIn,
  type Seen,
} from '../../../src/core/choose/seen';
import { catalogue } from '../../../src/data/catalogue';
const seen: fc.Arbitrary<Seen> = fc.record({
  modelVersion: fc.nat(9999),
  adhesiveId: fc.constantFrom(...catalogue.adhesives.keys()),
  verdict: fc.constantFrom('sound', 'likely', 'touch-and-go', 'unlikely', 'ruled-out', 'refused', 'defer'),
  slipLow: fc.nat(99_999),
  slipHigh: fc.nat(99_999),
});

describe('the answer that was seen', () => {
  test('it goes there and back', () => {
    fc.assert(
      fc.property(seen, (one) => {
        expect(decodeSeen(encodeSeen(one))).toEqual(one);
      }),
    );
  });
  test('what a page shows can be carried: every verdict, an hour of slip', () => {
    for (const needs of [[], ['food'], ['valued']] as const) {
      const best = choose({ ...DEFAULT_JOB, needs }, catalogue)[0]!;
      const now = seenIn(best);
      expect(now).toMatchObject({ modelVersion: MODEL_VERSION, adhesiveId: best.adhesiveId, verdict: best.verdict });
      expect(decodeSeen(encodeSeen(now))).toEqual(now);
    }
  });
  test.for([
    '',
    '1',
    '1.pva.sound.5',
    '1.pva.fine.5.9',
    'x.pva.sound.5.9',
    '1.PVA.sound.5.9',
    '1.pva.sound.-5.9',
    '1.pva.sound.5.9s',
    '1.pva.sound.5.9.1',
    '1. pva.sound.5.9',
    '1.pva!.sound.5.9',
    '1..sound.5.9',
  ])('"%s" is none', (text) => expect(decodeSeen(text)).toBeUndefined());
  test('any text is an answer or none', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const read = decodeSeen(text);
        if (read) expect(read.slipLow).toBeGreaterThanOrEqual(0);
      }),
    );
    expect(decodeSeen(undefined)).toBeUndefined();
  });
  const one: Seen = { modelVersion: 1, adhesiveId: 'pva', verdict: 'sound', slipLow: 50, slipHigh: 110 };
  test.for([
    ['the same', {}, true],
    ['a newer model that says the same', { modelVersion: 7 }, true],
    ['slip within a tenth', { slipLow: 52, slipHigh: 118 }, true],
    ['slip a fifth longer', { slipHigh: 135 }, false],
    ['slip a fifth shorter', { slipLow: 39 }, false],
    ['another adhesive', { adhesiveId: 'eva' }, false],
    ['another verdict', { verdict: 'likely' }, false],
  ] as const)('%s', ([, change, same]) => {
    expect(sameAnswer(one, { ...one, ...change })).toBe(same);
    expect(sameAnswer({ ...one, ...change }, one)).toBe(same);
  });
  test('a second either way is the same where times are short', () => {
    expect(sameAnswer({ ...one, slipLow: 1 }, { ...one, slipLow: 2 })).toBe(true);
    expect(sameAnswer({ ...one, slipLow: 1 }, { ...one, slipLow: 5 })).toBe(false);
    // a second, and a tenth of the longer: 100 and 89 are 11 apart, which passes, 100 and 88 are 12
    expect(sameAnswer({ ...one, slipLow: 100 }, { ...one, slipLow: 89 })).toBe(true);
    expect(sameAnswer({ ...one, slipLow: 100 }, { ...one, slipLow: 88 })).toBe(false);
    expect(sameAnswer({ ...one, slipLow: 0 }, { ...one, slipLow: 1 })).toBe(true);
  });
});

describe('an answer that had learned from swatches', () => {
  const taught = { swatches: 16, digest: '90b9df' };
  test('goes into a link with the three that stood first, and comes out again', () => {
    const choices = [
      { adhesiveId: 'pva', chance: 0.824 },
      { adhesiveId: 'flour-paste', chance: 0.5 },
      { adhesiveId: 'eva', chance: 0.004 },
      { adhesiveId: 'cmc', chance: 0 },
    ];
    const word = encodeTaught(taught, choices);
    expect(word).toBe('16.90b9df~pva.82~flour-paste.50~eva.0');
    expect(decodeTaught(word)).toEqual({
      ...taught,
      firsts: [
        { adhesiveId: 'pva', hundredths: 82 },
        { adhesiveId: 'flour-paste', hundredths: 50 },
        { adhesiveId: 'eva', hundredths: 0 },
      ],
    });
  });
  test('a link of before, without places, still says how many; places that are none are left out', () => {
    expect(decodeTaught('16.90b9df')).toEqual({ ...taught, firsts: [] });
    expect(decodeTaught('16.90b9df~pva.101~<b>.3~eva.7')).toEqual({
      ...taught,
      firsts: [{ adhesiveId: 'eva', hundredths: 7 }],
    });
    for (const none of [undefined, 7, '', '0.90b9df', '16.90b9dg', 'pva.82'])
      expect(decodeTaught(none)).toBeUndefined();
  });
});
