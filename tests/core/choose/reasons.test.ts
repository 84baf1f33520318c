/** Why an adhesive stands where it stands, from findings made by hand. What outweighs what is our own choice; what is said follows from the findings. */
import type { Reason } from '../../../src/core/choose/finding';
import { describe, expect, it, test } from 'vitest';
import { reasonsFor } from '../../../src/core/choose/reasons';
import { factsOf, TACK_FILM, type Found } from '../support/facts';

const order = (found: Found) => reasonsFor(factsOf(found)).map(({ code }) => code);
const one = (code: string, found: Found): Reason => reasonsFor(factsOf(found)).find((reason) => reason.code === code)!;
const note = (code: string, weight: number): Reason => ({ code, weight, against: true, text: `${code}.` });
const MARGINS = ['spread', 'lift', 'bond', 'flat'] as const;

describe('which is named first', () => {
  it('each of the four margins and the time are named once, and every note', () => {
    expect(order({ notes: [note('undo', 2), note('damp', 3)] }).sort()).toEqual(
      ['bond', 'damp', 'flat', 'lift', 'slip', 'spread', 'undo'].sort(),
    );
  });
  test.for(MARGINS)('%s, where it alone fails', (code) => {
    expect(order({ chances: { spread: 1, lift: 1, bond: 1, flat: 1, [code]: 0.49 } })[0]).toBe(code);
  });
  test.for(MARGINS)('%s, where it fails more often than another', (code) => {
    // what fails at nearly the same rate as the lift comes after it
    const often = { spread: 0.3, lift: 0.3, bond: 0.3, flat: 0.3, [code]: 0.1 };
    expect(order({ chances: often })[0]).toBe(code);
  });
  it('what fails before what comes late, and both before all that holds', () => {
    const late = { slip: [10, 20, 40], needed: 30 } as const;
    expect(order({ ...late, chances: { bond: 0.4, spread: 1 } }).slice(0, 3)).toEqual(['bond', 'slip', 'spread']);
    expect(order({ ...late, chances: { spread: 1, lift: 1, bond: 1, flat: 1 } })[0]).toBe('slip');
  });
  it('what fails nine times in ten before a tool that is too thick for it, which comes before what may fail', () => {
    const tool = [note('tool', 4)];
    expect(order({ notes: tool, chances: { bond: 0.1 } }).slice(0, 2)).toEqual(['bond', 'tool']);
    expect(order({ notes: tool, chances: { bond: 0.45 } }).slice(0, 2)).toEqual(['tool', 'bond']);
  });
  it('what rules an adhesive out before anything that fails', () => {
    expect(order({ notes: [note('undo', 9)], chances: { spread: 0, lift: 0, bond: 0, flat: 0 } })[0]).toBe('undo');
  });
  it('of what holds: what holds for certain, then time enough, then what holds three times in four', () => {
    expect(order({ chances: { flat: 1 } })).toEqual(['flat', 'slip', 'lift', 'bond', 'spread']);
    expect(order({ chances: { flat: 0.9 } })).toEqual(['slip', 'flat', 'lift', 'bond', 'spread']);
  });
  it('what holds only just before what holds well enough', () => {
    expect(order({ chances: { flat: 0.52 } }).indexOf('flat')).toBeLessThan(
      order({ chances: { flat: 0.52 } }).indexOf('bond'),
    );
  });
  it('of two that fail alike, the lift: what it spoils is the paper', () => {
    expect(order({ chances: { bond: 0.3, lift: 0.3 } }).slice(0, 2)).toEqual(['lift', 'bond']);
    expect(order({ chances: { bond: 0.3, lift: 0.33 } }).slice(0, 2)).toEqual(['lift', 'bond']);
    expect(order({ chances: { bond: 0.3, lift: 0.35 } }).slice(0, 2)).toEqual(['bond', 'lift']);
  });
  it('the same order whatever order the notes come in', () => {
    const notes = ['stiff', 'ages', 'heat'].map((code) => note(code, 2));
    expect(order({ notes: [...notes].reverse() })).toEqual(order({ notes }));
    expect(order({ notes }).slice(0, 3)).toEqual(['ages', 'heat', 'stiff']);
  });
});

describe('for or against', () => {
  test.for(MARGINS)('%s speaks against below one in two, and for from there', (code) => {
    expect(one(code, { chances: { [code]: 0.49 } }).against).toBe(true);
    expect(one(code, { chances: { [code]: 0.5 } }).against).toBe(false);
    expect(one(code, { chances: { [code]: 0.51 } }).against).toBe(false);
    // one that holds half the time does not outweigh like a failure
    expect(one(code, { chances: { [code]: 0.5 } }).weight).toBeLessThan(2);
  });
  it('time speaks against where the middle of it is less than is needed', () => {
    expect(one('slip', { slip: [5, 29, 90], needed: 30 }).against).toBe(true);
    expect(one('slip', { slip: [5, 30, 90], needed: 30 }).against).toBe(false);
    expect(one('slip', { slip: [5, 31, 90], needed: 30 }).against).toBe(false);
  });
});

const said = (code: string, found: Found) => one(code, found).text;

describe('what is said of spreading', () => {
  it('how many times over the sheet bears the tool, with its weight', () => {
    const text = said('spread', { margins: { spread: 2.5 } });
    expect(text).toMatch(/100\sg\/m² sheet bears 2\.5 times/);
  });
  it('many times from twenty on, for more digits say no more', () => {
    expect(said('spread', { margins: { spread: 19 } })).toMatch(/bears 19 times/);
    expect(said('spread', { margins: { spread: 20 } })).toMatch(/bears many times/);
    expect(said('spread', { margins: { spread: Infinity } })).toMatch(/bears many times/);
  });
  it('that it drags and wrinkles, and what share of it the sheet bears', () => {
    const text = said('spread', { chances: { spread: 0.2 }, margins: { spread: 0.6 } });
    expect(text).toMatch(/drags and wrinkles.*bears 0\.6 of/);
  });
  it('of a dry adhesive: rubbing drags, or it does not', () => {
    const adhesive = TACK_FILM;
    expect(said('spread', { adhesive })).toMatch(/without dragging/);
    const fails = said('spread', { adhesive, chances: { spread: 0.2 }, margins: { spread: 0.6 } });
    expect(fails).toMatch(/Rubbing.*drags a 100\sg\/m² sheet.*0\.6 of/);
    expect(one('spread', { adhesive, chances: { spread: 0.2 } })).toMatchObject({ code: 'spread', against: true });
  });
});

describe('what is said of lifting', () => {
  it('when it is lifted, how often it comes away clean, and how far the weaker side is from giving', () => {
    const text = said('lift', { chances: { lift: 0.7 }, margins: { lift: 3 }, needed: 45 });
    expect(text).toMatch(/45\ss after laying.*clean about 7 in 10 times.*bears 3 times/);
  });
  it('which side gives where it does not', () => {
    const fails = { chances: { lift: 0.2 }, margins: { lift: 0.4 } };
    expect(said('lift', { ...fails, gives: 'substrate' })).toMatch(/what it lies on comes away.*0\.4 of/);
    for (const gives of ['paper', 'neither'] as const) {
      expect(said('lift', { ...fails, gives })).toMatch(/the paper tears/);
      expect(said('lift', { ...fails, gives })).not.toMatch(/lies on/);
    }
  });
});

describe('what is said of the time', () => {
  it('how long, and how long is needed', () => {
    expect(said('slip', { slip: [40, 60, 90], needed: 30 })).toMatch(/for about 40 to 90\ss; you need 30\ss/);
  });
  it('an hour or more, without "about", where nine in ten leave an hour', () => {
    expect(said('slip', { slip: [3600, 5000, 9000] })).toMatch(/for an hour or more;/);
    expect(said('slip', { slip: [3599, 5000, 9000] })).toMatch(/for about 60\smin or more;/);
  });
  it('what to do where it is too short: place it first, or roll a film down from one edge', () => {
    const late = { slip: [5, 10, 20], needed: 30 } as const;
    expect(said('slip', late)).toMatch(/5 to 20\ss, and you need 30\ss: place it before it touches/);
    expect(said('slip', { ...late, adhesive: TACK_FILM })).toMatch(/lay one edge first/);
    expect(said('slip', { adhesive: TACK_FILM })).not.toMatch(/edge/);
  });
});

describe('what is said of the joint', () => {
  it('how many times over it holds: the film of what is wet, the joint of what is dry', () => {
    expect(said('bond', { margins: { bond: 4 } })).toMatch(/dry film is 4 times/);
    expect(said('bond', { margins: { bond: 4 }, adhesive: TACK_FILM })).toMatch(/dry joint is 4 times/);
  });
  it('that it may not hold, and that the use which was named is why', () => {
    const fails = { chances: { bond: 0.2 }, margins: { bond: 0.7 } };
    expect(said('bond', fails)).toMatch(/may not hold.*0\.7 of what/);
    for (const need of ['flexes', 'damp'] as const)
      expect(said('bond', { ...fails, needs: [need] })).toMatch(/the use you named/);
    for (const needs of [[], ['undo', 'flat', 'children']] as const)
      expect(said('bond', { ...fails, needs })).not.toMatch(/the use you named/);
  });
});

describe('what is said of lying flat', () => {
  it('how much of what passes it bows: a margin of four is a quarter', () => {
    expect(said('flat', { margins: { flat: 4 } })).toMatch(/Pressed until dry.*about a quarter of what still/);
    for (const [flat, words] of [
      [10, 'a tenth'],
      [5, 'a fifth'],
      [3, 'a third'],
      [2, 'half'],
      [1.5, 'two thirds'],
      [1.05, 'nine tenths'],
    ] as const)
      expect(said('flat', { margins: { flat } })).toContain(`about ${words} of what still passes`);
  });
  it('that there is too little water, from a twentieth down', () => {
    expect(said('flat', { margins: { flat: 19 } })).not.toMatch(/too little/);
    expect(said('flat', { margins: { flat: 20 } })).toMatch(/too little water/);
    expect(said('flat', { margins: { flat: Infinity } })).toMatch(/too little water/);
  });
  it('that it cockles or bows, and by how much too much', () => {
    expect(said('flat', { chances: { flat: 0.2 }, margins: { flat: 0.4 } })).toMatch(/cockle or bow.*2\.5 times/);
  });
});

describe('as it is read aloud', () => {
  const spread = (grammage: number) => one('spread', { grammage }).text;
  it('eighty, eleven and eighteen take "an"; others take "a"', () => {
    for (const weight of [80, 85, 8, 11, 18]) expect(spread(weight)).toMatch(/^An \d/);
    for (const weight of [70, 10, 12, 110, 180, 60]) expect(spread(weight)).toMatch(/^A \d/);
  });
});
