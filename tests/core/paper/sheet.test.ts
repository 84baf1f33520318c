/** The paper of a job: what was measured counts, and what was not is said to be assumed. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { at, type Range } from '../../../src/core/base/quantity';
import { DEFAULT_JOB } from '../../../src/core/choose/job';
import type { JobPaper } from '../../../src/core/paper/asked-paper';
import { assumptions } from '../../../src/core/choose/tipping-words';
import { sheetOf } from '../../../src/core/paper/sheet';
import { catalogue } from '../../../src/data/catalogue';
import { soundJob } from '../support/jobs';

const of = (paper: JobPaper) => sheetOf({ ...DEFAULT_JOB, paper }, catalogue);
const family = catalogue.papers.get('chiyogami')!;

test('with nothing measured it is its kind, and says that everything was assumed', () => {
  const { assumed, ...sheet } = of({ family: 'chiyogami' });
  expect(sheet).toEqual(family);
  expect(assumed).toEqual(['grammage', 'absorbency', 'caliper', 'strength']);
});

test('with everything measured only the strength is assumed', () => {
  const sheet = of({ family: 'chiyogami', grammage: 80, caliper: 100, cobb: 30 });
  expect(sheet.assumed).toEqual(['strength']);
  expect(sheet.density.middle).toBeCloseTo(0.8, 12); // ISO 534: 80 g/m² over 100 µm
  expect(sheet.sorptivity.middle).toBeCloseTo(3.873, 3); // 30 over the root of 60, by hand
});

describe('absorbency', () => {
  test('a Cobb figure wins over a drop, a drop over a sizing', () => {
    const cobb = of({ family: 'chiyogami', cobb: 30, dropSeconds: 1, sizing: 'unsized' });
    expect(cobb.sorptivity).toEqual(of({ family: 'chiyogami', cobb: 30 }).sorptivity);
    const drop = of({ family: 'chiyogami', dropSeconds: 1, sizing: 'hard-sized' });
    expect(drop.sorptivity).toEqual(of({ family: 'chiyogami', dropSeconds: 1 }).sorptivity);
  });
  test('the harder it is sized, the slower it drinks', () => {
    const series = (['unsized', 'lightly-sized', 'sized', 'hard-sized'] as const).map(
      (sizing) => of({ family: 'blotting', sizing }).sorptivity.middle,
    );
    expect(series).toEqual(series.toSorted((a, b) => b - a));
  });
  test('its own sizing, said aloud, changes nothing; a sizing is an assumption still', () => {
    expect(of({ family: 'chiyogami', sizing: family.sizing }).sorptivity).toEqual(family.sorptivity);
    expect(of({ family: 'chiyogami', sizing: 'unsized' }).assumed).toContain('absorbency');
  });
  test('a drop test leaves more open than a Cobb test', () => {
    const width = ({ low, high }: Range) => high / low;
    expect(width(of({ family: 'chiyogami', dropSeconds: 20 }).sorptivity)).toBeGreaterThan(
      width(of({ family: 'chiyogami', cobb: 30 }).sorptivity),
    );
  });
});

test('surface and colours: what is said outweighs the kind', () => {
  const sheet = of({ family: 'chiyogami', surface: 'embossed', coloursRun: true });
  expect(sheet.surface).toBe('embossed');
  expect(sheet.contact.high).toBeLessThan(family.contact.low);
  expect(sheet.coloursRun).toBe('likely');
  expect(of({ family: 'unryu', coloursRun: false }).coloursRun).toBe('unlikely');
});

test('whatever is stated, every range runs upwards, is above 0, and no sheet is denser than cellulose', () => {
  fc.assert(
    fc.property(soundJob, (job) => {
      const sheet = sheetOf(job, catalogue);
      const { grammage, density, sorptivity, tensileIndex, wetRetention, contact, wetExpansion } = sheet;
      for (const { low, middle, high } of [
        ...[grammage, density, sorptivity, tensileIndex, wetRetention, contact, wetExpansion],
      ]) {
        expect(low).toBeGreaterThan(0);
        expect(low <= middle && middle <= high).toBe(true);
      }
      expect(density.high).toBeLessThan(1.5);
      expect(contact.high).toBeLessThanOrEqual(1);
      const lines = assumptions(sheet, job);
      expect(lines).toHaveLength(sheet.assumed.length + (job.placeSeconds === undefined ? 1 : 0));
      for (const line of lines) expect(line).not.toMatch(/NaN|undefined|not known/);
    }),
    { numRuns: 300 },
  );
});

test('a draw stays in its range, rises with u, and has its middle in the middle', () => {
  const u = fc.double({ min: 0, max: 1, noNaN: true });
  const ends = fc.tuple(u, u, u).map((three) => three.toSorted((a, b) => a - b));
  fc.assert(
    fc.property(ends, u, u, ([low, middle, high], a, b) => {
      const range: Range = { low: low!, middle: middle!, high: high!, basis: 'estimate' };
      const [one, other] = [at(range, Math.min(a, b)), at(range, Math.max(a, b))];
      expect(one).toBeGreaterThanOrEqual(low! - 1e-12);
      expect(other).toBeLessThanOrEqual(high! + 1e-12);
      expect(one).toBeLessThanOrEqual(other + 1e-12);
      expect(at(range, 0.5)).toBeCloseTo(middle!, 12);
    }),
  );
});
