/** A whole trial in words, on cases made by hand. */
import { describe, expect, it } from 'vitest';
import type { Outcome, Trial } from '../../../src/core/trial/record';
import { summaryOf } from '../../../src/core/trial/summary';
import { laid, trialOf } from '../support/trial';

describe('a trial in words', () => {
  const takeaways = (lines: readonly string[], over: Partial<Trial> = {}) =>
    summaryOf(trialOf(lines, over)).questions[0]!.takeaways;
  const times = (n: number, line: string, outcome: Outcome) =>
    Array.from({ length: n }, (_, i) => `${line} ${i} ${outcome}`);
  it('what is clear first, then what passed or failed every time, then how many pairings are open', () => {
    const said = takeaways([
      ...times(2, 'p a 20', 'fail'),
      ...times(8, 'p b 20', 'pass'),
      ...times(8, 'q b 20', 'fail'),
      ...[...times(1, 'q a 20', 'pass'), 'q a 20 9 fail'],
    ]);
    expect(said[0]).toMatch(/^Light with Vinyl: 8 of 8 passed/);
    expect(said[1]).toMatch(/^Heavy with Vinyl: 0 of 8 passed/);
    expect(said[2]).toMatch(/^Light with Paste: 0 of 2 passed/);
    expect(said[3]).toMatch(/^For 2 of 6 pairings there is not enough to tell/);
    expect(said[4]).toMatch(/^Paste passed .*Vinyl/);
    expect(said).toHaveLength(5);
  });
  it('four pairings at most, nothing of open ones where there are none, and a weight where three were tried', () => {
    const papers = [20, 40, 80, 160, 320].map((grammage, i) => ({ id: `p${i}`, name: `P${i}`, grammage }));
    const glues = [{ id: 'a', name: 'Paste' }];
    const lines = papers.flatMap(({ id }, i) => times(8, `${id} a 20`, i < 2 ? 'fail' : 'pass'));
    const said = takeaways(lines, { papers, glues });
    expect(said.filter((text) => /of 8 passed/.test(text))).toHaveLength(4);
    expect(said.join(' ')).not.toMatch(/not enough to tell whether they/);
    expect(said.at(-1)).toMatch(/^Paste: Of these papers the heavier pass more often; half of them pass at about/);
    expect(takeaways(lines, { papers: papers.slice(0, 2), glues }).join(' ')).not.toMatch(/heavier/);
  });
  it('six comparisons at most, the clearest first, and how many were made', () => {
    const named = (letters: string) => [...letters].map((id) => ({ id, name: id.toUpperCase() }));
    const lines = ['a', 'b', 'c'].flatMap((id) => times(6, `p ${id} 20`, 'pass')).concat(times(6, 'p d 20', 'fail'));
    const said = takeaways(lines, { glues: named('abcd') });
    const compared = said.filter((text) => /^[A-D] passed/.test(text));
    expect(compared).toHaveLength(6);
    expect(compared.map((text) => /did better/.test(text))).toEqual([true, true, true, false, false, false]);
    expect(said.join(' ')).not.toMatch(/were compared/);
    const five = takeaways([...lines, ...times(6, 'p e 20', 'pass')], { glues: named('abcde') });
    expect(five.filter((text) => /^[A-E] passed/.test(text))).toHaveLength(6);
    expect(five.join(' ')).toContain('10 pairs of adhesives were compared; these are the 6 that differ most.');
  });
  it('the results come before how sure they are, and what luck could do is not called better', () => {
    const results = (lines: readonly string[], over: Partial<Trial> = {}) =>
      summaryOf(trialOf(lines, over)).questions[0]!.results;
    const on = (paper: string, paste: Outcome, vinyl: Outcome, n: number) => [
      ...times(n, `${paper} a 20`, paste),
      ...times(n, `${paper} b 20`, vinyl),
    ];
    // ahead on one paper, level on two: 16 of 24 against 8 of 24
    expect(
      results([...on('p', 'pass', 'fail', 8), ...on('q', 'pass', 'pass', 8), ...on('r', 'fail', 'fail', 8)]),
    ).toEqual(['Paste did better than Vinyl on 1 of 3 papers: 16 of 24 passed, against 8 of 24.']);
    expect(results([...on('p', 'pass', 'fail', 2), ...on('q', 'fail', 'pass', 1)])).toEqual([
      'Paste came out ahead of Vinyl on 1 of 2 papers (2 of 3 passed, against 1 of 3), but luck alone could do that.',
    ]);
    expect(results(times(3, 'p a 20', 'pass'))).toEqual(['Paste: 3 of 3 passed.']);
    expect(results(['p a 20 1 -'])).toEqual(['Nothing is judged yet.']);
  });
  it('nothing judged is said to be so', () => expect(takeaways(['p a 20 1 -'])).toEqual(['Nothing is judged yet.']));
  it('the facts: who, when, in what room, what was set aside; nothing of what is not known', () => {
    const swatches = laid('p a 20 1 pass', 'p a 60 1 fail').map((one, i) => ({
      ...one,
      judgedAt: `2026-03-0${2 - i}T10:00:00Z`,
      ...(i === 1 && { by: 'Ben', spoiled: true }),
    }));
    const { facts } = summaryOf(trialOf([], { swatches, holds: [20, 60], conditions: { celsius: 20, humidity: 50 } }));
    expect(facts.map((text) => text.replaceAll('\u00a0', ' '))).toEqual([
      '3 papers, 2 adhesives, 2 hold times, 3 of each: 2 swatches, 2 done, 1 of them set aside.',
      'Lifted after 20 s, 60 s, in random order (number 11).',
      'Judged by Ada, Ben, from 2026-03-01 to 2026-03-02.',
      'Room: 20 °C, 50 % relative humidity.',
    ]);
    const { by: _nobody, ...anonymous } = trialOf(['p a 20 1 -'], { conditions: {} });
    expect(summaryOf({ ...anonymous, by: '' } as Trial).facts).toHaveLength(2);
    const one = summaryOf(trialOf([], { by: '', swatches: swatches.slice(0, 1), conditions: {} })).facts;
    expect(one.at(-1)).toBe('Judged on 2026-03-02.');
  });
});

describe('one family of claims', () => {
  const times = (n: number, line: string, outcome: Outcome) =>
    Array.from({ length: n }, (_, i) => `${line} ${i} ${outcome}`);
  const question = (id: string) => ({ id, kind: 'own' as const, text: id, criterion: '' });
  /** The same swatches judged on several questions: on the first as they are, on the rest by turns. */
  const asked = (count: number, lines: readonly string[]) =>
    trialOf([], {
      questions: Array.from({ length: count }, (_, i) => question(i === 0 ? 'lift' : `q-${i}`)),
      swatches: laid(...lines).map((one, place) => ({
        ...one,
        outcomes: Object.fromEntries([
          ...Object.entries(one.outcomes),
          ...Array.from({ length: count - 1 }, (_, i) => [`q-${i + 1}`, place % 2 === 0 ? 'pass' : 'fail'] as const),
        ]),
      })),
    });
  // 4 of 4 against none by Boschloo: 2 ÷ 256
  const lines = [...times(4, 'p a 20', 'pass'), ...times(4, 'p b 20', 'fail')];
  it('a claim that stands alone falls among seven', () => {
    const stands = (count: number) => summaryOf(asked(count, lines)).questions[0]!.takeaways.join(' ');
    expect(stands(1)).toContain('Paste did better');
    expect(stands(6)).toContain('Paste did better');
    expect(stands(7)).not.toContain('did better');
    expect(stands(7)).toContain('somewhere among the 7 comparisons of this page about 1 time in 20');
  });
  it('says how many claims there are, and what they may get wrong together', () => {
    expect(summaryOf(asked(7, lines))).toMatchObject({ claims: 7, level: 0.05 });
    expect(summaryOf(asked(7, lines)).notes.join(' ')).toMatch(/^This page asks 7 times .* at most 1 trial of 20\.$/);
    expect(summaryOf(asked(1, lines)).notes).toEqual([]);
  });
  it('questions on which every swatch came out alike take nothing from the others, in several places', () => {
    const places = ['p', 'q'].flatMap((paper) => [
      ...times(3, `${paper} a 20`, 'pass'),
      ...times(3, `${paper} b 20`, 'fail'),
    ]);
    const alike = asked(12, places);
    const swatches = alike.swatches.map((one) => ({
      ...one,
      outcomes: Object.fromEntries(
        Object.entries(one.outcomes).map(([id, outcome]) => [id, id === 'lift' ? outcome : 'pass'] as const),
      ),
    }));
    // 2 of 400 alone; times twelve it would be 0.06
    const [lift] = summaryOf({ ...alike, swatches }).questions;
    expect(lift!.compared[0]!.adjusted).toBeCloseTo(2 / 400, 12);
    expect(summaryOf(alike).questions[0]!.compared[0]!.adjusted).toBeGreaterThan(0.05);
  });
  it('weights are claims as well, one for each adhesive and question, and one caveat for all', () => {
    const papers = [20, 60, 180].map((grammage, i) => ({ id: `p${i}`, name: `P${i}`, grammage }));
    const swatches = papers.flatMap(({ id }, i) => [
      ...times(5, `${id} a 20`, i === 2 ? 'pass' : 'fail'),
      ...times(5, `${id} b 20`, 'pass'),
    ]);
    const { claims, notes, questions } = summaryOf(trialOf(swatches, { papers }));
    expect(claims).toBe(3);
    expect(questions[0]!.weighed.map(({ glue, adjusted }) => [glue, adjusted <= 0.05])).toEqual([
      ['a', true],
      ['b', false],
    ]);
    expect(notes.join(' ')).toContain('Whether weight is what makes papers pass');
    expect(questions[0]!.takeaways.join(' ')).toContain('Vinyl: Not enough to tell whether the heavier');
  });
  it('a look at one hold of several may claim less', () => {
    const { questions } = summaryOf(trialOf(lines), 0.005);
    expect(questions[0]!.takeaways.join(' ')).toContain('Not enough to tell: luck alone');
  });
});
