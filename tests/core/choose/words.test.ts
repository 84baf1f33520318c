/** Sentences round the answers: every turn they can take, said out by hand. */
import { describe, expect, it } from 'vitest';
import { cutSentence, cutWarnings, leftOver } from '../../../src/core/cut/words';
import { assumptions, flipSentence, jobInWords } from '../../../src/core/choose/tipping-words';
import { DEFAULT_JOB } from '../../../src/core/choose/job';
import { sheetOf } from '../../../src/core/paper/sheet';
import type { SheetLayout } from '../../../src/core/cut/layout-types';
import { besideSheet } from '../../../src/core/class/cutting';
import { classWarnings, slipWarnings, slowerOnes } from '../../../src/core/class/warnings';
import { choose } from '../../../src/core/choose/choose';
import { DEFAULT_CLASS, type ClassPlan } from '../../../src/core/class/plan';
import type { WetAdhesive } from '../../../src/core/records/records';
import { catalogue } from '../../../src/data/catalogue';

const plainly = (text: string) => text.replaceAll('\u00a0', ' ');
const layout = (over: Partial<SheetLayout>) =>
  ({ sheets: 2, bound: 2, proved: true, waste: 0.11, ...over }) as SheetLayout;

describe('a cutting plan', () => {
  it('says what is left in whole per cents, and never nothing for something', () => {
    expect([0.11, 0.0049, 0.0004, 0].map((waste) => plainly(leftOver(layout({ waste }))))).toEqual([
      ...['11 %', 'under 1 %', 'nothing', 'nothing'],
    ]);
  });
  it('says sheets, what is left, and that no plan needs fewer', () =>
    expect(
      plainly(
        cutSentence([
          { name: 'board', layout: layout({}) },
          { name: 'paper', layout: layout({ sheets: 1, bound: 1, waste: 0.4 }) },
        ]),
      ),
    ).toBe(
      '2 sheets of board and 1 sheet of paper. Left over: 11 % of the board and 40 % of the paper. Proved: no plan of straight-through cuts needs fewer.',
    ));
  it('says how far it is proved where it is not', () => {
    const open = { name: 'board', layout: layout({ proved: false, bound: 1 }) };
    expect(cutSentence([open])).toMatch(
      /Perhaps it can be done with fewer: any plan takes at least 1 sheet of board\.$/,
    );
    expect(cutSentence([open, { name: 'paper', layout: layout({}) }])).toMatch(
      /of board\. For the rest it is proved that no plan needs fewer\.$/,
    );
  });
  it('warns where a grain is asked for and not minded, and of what a cut takes', () => {
    const stock = { name: 'board', grain: 'none' } as never;
    const piece = (grain: 'height' | 'either', at = 0) => ({ stock: at, grain }) as never;
    expect(cutWarnings([stock], [piece('either')], '')).toEqual([]);
    expect(cutWarnings([stock], [piece('height', 1)], '')).toEqual([]);
    expect(cutWarnings([{ name: 'board', grain: 'long' } as never], [piece('height')], '')).toEqual([]);
    expect(cutWarnings([stock], [piece('height')], '')[0]).toMatch(/^The grain of board is not minded/);
    expect(cutWarnings([{ name: '', grain: 'none' } as never], [piece('height')], '')[0]).toContain('of one sheet');
    const both = cutWarnings([stock], [piece('height')], '2 mm');
    expect(both).toHaveLength(2);
    expect(both[1]).toContain('Each cut takes 2 mm');
  });
});

describe('the chooser', () => {
  const job = { ...DEFAULT_JOB, needs: [], placeSeconds: 30 };
  const words = (change: Partial<typeof DEFAULT_JOB>) => {
    const asked = { ...job, ...change };
    return plainly(jobInWords(asked, sheetOf(asked, catalogue), catalogue));
  };
  it('puts the job in a line', () => {
    const paper = { family: 'wove-text', grammage: 80 };
    const on = catalogue.substrates.get(job.substrate)!.name;
    const line = words({ paper, widthMm: 200, heightMm: 300, celsius: 20, humidity: 50 });
    expect(line).toContain(`, 80.0 g/m², on ${on[0]!.toLowerCase()}${on.slice(1)}; 200 × 300 mm, `);
    expect(line).toMatch(/, 20 °C and 50 % RH\.$/);
    expect(words({ paper, needs: ['undo', 'flat'] })).toMatch(
      / % RH; asked: can be undone with water, must stay flat\.$/,
    );
    expect(words({ paper: { family: 'wove-text' } })).toMatch(/, \d+ to \d+ g\/m², on /);
  });
  it('says what would change the answer, by the name of the adhesive', () => {
    const flip = { field: 'grammage', from: 70, to: 41, adhesiveId: 'pva' } as const;
    expect(plainly(flipSentence(flip, catalogue))).toBe(
      `With a sheet of 41 g/m² (now 70), ${catalogue.adhesives.get('pva')!.short} comes first.`,
    );
    expect(plainly(flipSentence({ ...flip, field: 'celsius', to: 9, adhesiveId: 'gone' }, catalogue))).toBe(
      'With a room at 9 °C (now 70), gone comes first.',
    );
    expect(flipSentence({ ...flip, field: 'absorbency' }, catalogue)).toContain('a drop that sinks in after');
    expect(flipSentence({ ...flip, field: 'placeSeconds' }, catalogue)).toContain('to place it');
  });
  it('lists what was taken and not measured, and nothing that was', () => {
    const lines = (paper: typeof DEFAULT_JOB.paper, placeSeconds?: number) => {
      const { placeSeconds: _, ...rest } = DEFAULT_JOB;
      const asked = { ...rest, paper, ...(placeSeconds !== undefined && { placeSeconds }) };
      return assumptions(sheetOf(asked, catalogue), asked).map((line) => line.split(':')[0]);
    };
    expect(lines({ family: 'wove-text' }).sort()).toEqual([
      ...['Absorbency', 'Density', 'Strength, weaker way', 'Time to place it', 'Weight'],
    ]);
    expect(lines({ family: 'wove-text', grammage: 80, caliper: 100, dropSeconds: 20 }, 30)).toEqual([
      'Strength, weaker way',
    ]);
  });
});

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
