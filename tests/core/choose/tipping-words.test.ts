/** Sentences round the answers: every turn they can take, said out by hand. */
import { describe, expect, it } from 'vitest';
import { assumptions, flipSentence, jobInWords } from '../../../src/core/choose/tipping-words';
import { DEFAULT_JOB } from '../../../src/core/choose/job';
import { sheetOf } from '../../../src/core/paper/sheet';
import { catalogue } from '../../../src/data/catalogue';

const plainly = (text: string) => text.replaceAll('\u00a0', ' ');

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
    expect(line).toContain(`, 80 g/m², on ${on[0]!.toLowerCase()}${on.slice(1)}; 200 × 300 mm, `);
    expect(line).toMatch(/, 20 °C and 50 % RH\.$/);
    // the usual brush gives way to what suits the method; another was asked for, and is named
    expect(line).not.toMatch(/brush/i);
    expect(words({ paper, tool: 'roller' })).toMatch(/ mm, foam or short-pile roller, /);
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
