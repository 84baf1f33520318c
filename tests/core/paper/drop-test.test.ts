/** Drop times as they are typed and kept. */
import { describe, expect, it } from 'vitest';
import { asOneDrop, isDrop, parseDrops, readDrops, showDrops } from '../../../src/core/paper/drop-test';

describe('drops', () => {
  it('takes one to ten, each from 0.2 s to half an hour', () => {
    expect(parseDrops('0.2 1800')).toEqual({ ok: true, value: [0.2, 1800] });
    expect(parseDrops('1 2 3 4 5 6 7 8 9 10').ok).toBe(true);
    const said = (typed: string) => {
      const found = parseDrops(typed);
      return found.ok ? undefined : `${found.errors[0]!.code}: ${found.errors[0]!.message}`;
    };
    expect(said(' ')).toMatch(/^empty: Give the seconds of 1 to 10 drops/);
    expect(said('0.19')).toMatch(/^not-a-number: “0\.19” is not a time/);
    expect(said('20 soon')).toMatch(/“soon” is not a time/);
    expect(said('1800.5')).toContain('choose hard-sized');
    expect(said(`${'x'.repeat(25)}`)).toContain(`“${'x'.repeat(20)}”`);
  });
  it('keeps hundredths, and shows what it kept', () => {
    expect(parseDrops('1.234')).toEqual({ ok: true, value: [1.23] });
    expect(showDrops([28, 34, 31.5])).toBe('28 34 31.5');
    expect(readDrops('0.2_1800')).toEqual([0.2, 1800]);
    for (const text of ['', '1_', 'x']) expect(readDrops(text), text).toBeUndefined();
    for (const text of ['0.19', '1800.01', '1_0.1']) expect(readDrops(text)?.every(isDrop), text).toBe(false);
    expect(asOneDrop([7])).toEqual({ seconds: 7, factor: 1 });
    // (1 × 10 × 100)^(1/3)
    expect(asOneDrop([1, 10, 100])).toEqual({ seconds: 10, factor: 100 });
  });
});
