/** What a person may ask, and what is said when they ask something else. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  DEFAULT_JOB,
  JOB_FIELDS,
  jobProblems,
  placingSeconds,
  settleJob,
  type Job,
} from '../../../src/core/choose/job';
import { problemWith } from '../../../src/core/link/fields';
import { formatAmount } from '../../../src/core/base/format';
import { caliperProblem } from '../../../src/core/paper/misfit';
import { catalogue } from '../../../src/data/catalogue';
import { NUMBER_FIELDS, oddJob, soundJob } from '../support/jobs';

const numberProblem = (field: (typeof NUMBER_FIELDS)[number], value: number) =>
  problemWith(field, JOB_FIELDS[field], value);

describe('a number past its limits is met with what is allowed', () => {
  test.for(NUMBER_FIELDS)('%s', (field) => {
    const { low, high, unit } = JOB_FIELDS[field];
    expect(numberProblem(field, low)).toBeUndefined();
    expect(numberProblem(field, high)).toBeUndefined();
    const cases = [
      [low - 0.001, 'too-small'],
      [-1e9, 'too-small'],
      [high + 0.001, 'too-large'],
      [NaN, 'not-a-number'],
      [Infinity, 'not-a-number'],
    ] as const;
    for (const [value, code] of cases) {
      const problem = numberProblem(field, value);
      expect(problem).toMatchObject({ field, code, limits: { low, high, unit } });
      expect(problem!.message).toContain(`from ${formatAmount(low, 6)} to ${formatAmount(high, 6)}\u00a0${unit}`);
    }
  });
  test('a drop slower than half an hour says what to do instead', () => {
    expect(numberProblem('dropSeconds', 300)).toBeUndefined();
    expect(numberProblem('dropSeconds', 1801)!.message).toMatch(
      /1800\u00a0s.*hard-sized|1\u202f800\u00a0s.*hard-sized/,
    );
    expect(numberProblem('dropSeconds', 0)!.message).not.toMatch(/hard-sized/);
  });
});

describe('a thickness that the weight forbids', () => {
  test('denser than cellulose (1.5 g/cm³: 80 g/m² cannot be under 54 µm)', () => {
    const problem = caliperProblem(80, 50);
    expect(problem).toMatchObject({ field: 'caliper', code: 'contradiction', limits: { low: 54, unit: 'µm' } });
    expect(problem!.message).toMatch(/denser than cellulose.*54 to \d+ µm/);
  });
  test('a slip of unit: 0.1 for 0.1 mm', () => {
    expect(caliperProblem(80, 0.1)!.message).toMatch(/0\.1 mm is 100 µm/);
  });
  test('lighter than any paper', () => {
    expect(caliperProblem(80, 2000)!.message).toMatch(/lighter than any paper/);
  });
  test('what it says is allowed is allowed', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 600, noNaN: true }),
        fc.double({ min: 1, max: 20_000, noNaN: true }),
        (grammage, caliper) => {
          const problem = caliperProblem(grammage, caliper);
          if (!problem) return;
          expect(caliperProblem(grammage, problem.limits!.low)).toBeUndefined();
          expect(caliperProblem(grammage, problem.limits!.high)).toBeUndefined();
        },
      ),
    );
  });
  test('it is judged by the weight of the kind where none is given', () => {
    const job: Job = { ...DEFAULT_JOB, paper: { family: 'card', caliper: 20 } };
    expect(jobProblems(job, catalogue).map(({ field }) => field)).toEqual(['caliper']);
  });
});

describe('names', () => {
  test.for([
    ['family', { paper: { family: 'moon' } }],
    ['substrate', { substrate: '' }],
    ['tool', { tool: '__proto__' }],
    ['atHand', { atHand: ['pva', 'nectar'] }],
  ] as const)('an unknown %s is to be chosen from the list', ([field, change]) => {
    const problems = jobProblems({ ...DEFAULT_JOB, ...change }, catalogue);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ field, code: 'unknown-id' });
    expect(problems[0]!.message).toMatch(/^Choose .+ from the list\.$/);
  });
});

describe('settling', () => {
  test('a sound job stays as it is', () => {
    fc.assert(
      fc.property(soundJob, (job) => {
        expect(settleJob(job, catalogue)).toEqual({ job, dropped: [] });
      }),
    );
  });
  test('any other becomes sound, loses only what was wrong with it, and says what', () => {
    fc.assert(
      fc.property(oddJob, (job) => {
        const before = structuredClone(job);
        const { job: settled, dropped } = settleJob(job, catalogue);
        expect(jobProblems(settled, catalogue)).toEqual([]);
        expect(job).toEqual(before);
        for (const { field } of jobProblems(job, catalogue)) expect(dropped).toContain(field);
        for (const field of ['widthMm', 'heightMm', 'celsius', 'humidity', 'substrate', 'tool'] as const)
          expect(settled[field]).toBe(dropped.includes(field) ? DEFAULT_JOB[field] : job[field]);
        for (const field of ['grammage', 'caliper', 'dropSeconds', 'cobb'] as const)
          expect(settled.paper[field]).toBe(dropped.includes(field) ? undefined : job.paper[field]);
        expect(settled.needs).toEqual(job.needs);
      }),
      { numRuns: 300 },
    );
  });
});

describe('time to place a piece (common practice, no source)', () => {
  test('an A4 sheet about 20 s; a larger piece never less; no more than five minutes', () => {
    expect(placingSeconds(210, 297)).toBe(20);
    const side = fc.integer({ min: 5, max: 3000 });
    fc.assert(
      fc.property(side, side, side, (wide, high, more) => {
        expect(placingSeconds(wide + more, high)).toBeGreaterThanOrEqual(placingSeconds(wide, high));
        expect(placingSeconds(wide, high)).toBeLessThanOrEqual(300);
        expect(placingSeconds(wide, high)).toBeGreaterThanOrEqual(1);
      }),
    );
  });
});

test('the usual job is a sound one', () => {
  expect(jobProblems(DEFAULT_JOB, catalogue)).toEqual([]);
});

describe('each field by itself', () => {
  const sound: Job = {
    ...DEFAULT_JOB,
    paper: {
      family: 'kraft',
      grammage: 80,
      caliper: 100,
      dropSeconds: 20,
      cobb: 30,
      surface: 'smooth',
      sizing: 'sized',
    },
    widthMm: 100,
    heightMm: 90,
    placeSeconds: 12,
    celsius: 25,
    humidity: 40,
    tool: 'card',
    atHand: ['pva'],
  };
  const odd = 'odd' as never;
  const fieldsOf = (job: Job) => jobProblems(job, catalogue).map(({ field }) => field);
  test('a sound job has none, and stands as it is', () => {
    expect(fieldsOf(sound)).toEqual([]);
    expect(settleJob(sound, catalogue)).toEqual({ job: sound, dropped: [] });
  });
  test.for(['grammage', 'caliper', 'dropSeconds', 'cobb', 'surface', 'sizing'] as const)(
    'the paper’s %s is named, and left out',
    (field) => {
      const wrong = {
        ...sound,
        paper: { ...sound.paper, [field]: field === 'surface' || field === 'sizing' ? odd : -1 },
      };
      expect(fieldsOf(wrong)).toEqual([field]);
      const { [field]: _wrong, ...rest } = sound.paper;
      // 100 µm suit kraft of any weight in its record
      expect(settleJob(wrong, catalogue)).toEqual({ job: { ...sound, paper: rest }, dropped: [field] });
    },
  );
  test.for(['widthMm', 'heightMm', 'celsius', 'humidity', 'substrate', 'tool'] as const)(
    '%s is named, and stands at what it is at first',
    (field) => {
      const wrong = { ...sound, substrate: 'glass', [field]: field === 'substrate' || field === 'tool' ? odd : -1 };
      expect(fieldsOf(wrong)).toEqual([field]);
      const settled = { ...sound, substrate: 'glass', [field]: DEFAULT_JOB[field] };
      expect(settleJob(wrong, catalogue)).toEqual({ job: settled, dropped: [field] });
    },
  );
  test('the time to place it is left out, an unknown paper is the usual one, of what is at hand the known stay', () => {
    const { placeSeconds: _time, ...timeless } = sound;
    expect(settleJob({ ...sound, placeSeconds: 0 }, catalogue)).toEqual({ job: timeless, dropped: ['placeSeconds'] });
    const { job, dropped } = settleJob(
      { ...sound, paper: { family: 'moon', cobb: 30 }, atHand: ['pva', 'moon'] },
      catalogue,
    );
    expect(job).toEqual({ ...sound, paper: { family: DEFAULT_JOB.paper.family, cobb: 30 } });
    expect(dropped).toEqual(['family', 'atHand']);
  });
  test('a thickness is judged once the weight is sound, or is the kind’s own', () => {
    // 600 g/m² in 100 µm would be 6 g/cm³
    expect(fieldsOf({ ...sound, paper: { family: 'kraft', grammage: 600, caliper: 100 } })).toEqual(['caliper']);
    expect(fieldsOf({ ...sound, paper: { family: 'kraft', grammage: -1, caliper: 3000 } })).toEqual(['grammage']);
    expect(settleJob({ ...sound, paper: { family: 'kraft', grammage: -1, caliper: 3000 } }, catalogue)).toEqual({
      job: { ...sound, paper: { family: 'kraft' } },
      dropped: ['grammage', 'caliper'],
    });
  });
});
