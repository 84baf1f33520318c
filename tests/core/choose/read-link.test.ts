/** A link of the chooser, written and read back. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { choose } from '../../../src/core/choose/choose';
import { encodeJob } from '../../../src/core/choose/write-link';
import { DEFAULT_JOB, jobProblems, settleJob } from '../../../src/core/choose/job';
import { type Seen } from '../../../src/core/choose/seen';
import { decodeJob } from '../../../src/core/choose/read-link';
import { catalogue } from '../../../src/data/catalogue';
import { soundJob } from '../support/jobs';
const seen: fc.Arbitrary<Seen> = fc.record({
  modelVersion: fc.nat(9999),
  adhesiveId: fc.constantFrom(...catalogue.adhesives.keys()),
  verdict: fc.constantFrom('sound', 'likely', 'touch-and-go', 'unlikely', 'ruled-out', 'refused', 'defer'),
  slipLow: fc.nat(99_999),
  slipHigh: fc.nat(99_999),
});

describe('there and back', () => {
  test('any sound job, with or without the answer that was seen', () => {
    fc.assert(
      fc.property(soundJob, fc.option(seen, { nil: undefined }), (job, sent) => {
        const read = decodeJob(encodeJob(job, sent));
        expect(read.job).toEqual(job);
        expect(read.dropped).toEqual([]);
        expect(read.seen).toEqual(sent);
      }),
      { numRuns: 300 },
    );
  });
  test('a link that is read and written again is the same link', () => {
    fc.assert(
      fc.property(soundJob, (job) => {
        const link = encodeJob(job);
        expect(encodeJob(decodeJob(link).job)).toBe(link);
      }),
    );
  });
  test('it can be typed and spoken: words, figures, nothing that needs escaping', () => {
    fc.assert(
      fc.property(soundJob, seen, (job, sent) => {
        expect(encodeJob(job, sent)).toMatch(/^[a-z0-9.=&-]+$/);
      }),
    );
    expect(encodeJob(DEFAULT_JOB)).toBe(
      'v=1&paper=chiyogami&on=binders-board&wide=210&high=150&room=20&rh=50&tool=brush-full',
    );
  });
  test('the order in which needs and adhesives were ticked leaves no trace', () => {
    const job = { ...DEFAULT_JOB, needs: ['flat', 'undo'] as const, atHand: ['pva', 'eva'] };
    const other = { ...DEFAULT_JOB, needs: ['undo', 'flat'] as const, atHand: ['eva', 'pva'] };
    expect(encodeJob(job)).toBe(encodeJob(other));
  });
});

describe('what a person may do to a link', () => {
  test('the question mark may stay or go, a decimal comma is read, plus signs are spaces', () => {
    expect(decodeJob('?gsm=80').job.paper.grammage).toBe(80);
    expect(decodeJob('#gsm=80').job.paper.grammage).toBe(80);
    expect(decodeJob('gsm=80,5').job.paper.grammage).toBe(80.5);
    expect(decodeJob('gsm=1+0+0').job.paper.grammage).toBe(100);
  });
  test('keys of others are let be, without a word', () => {
    const read = decodeJob('gsm=80&utm_source=letter&x=1');
    expect(read).toEqual({ job: { ...DEFAULT_JOB, paper: { family: 'chiyogami', grammage: 80 } }, dropped: [] });
  });
  test('a number left empty is passed over, without a word', () => {
    expect(decodeJob('gsm=&wide=&rh=&place=')).toEqual({ job: DEFAULT_JOB, dropped: [] });
  });
  test('nothing at all is the usual job', () => {
    for (const nothing of ['', '?', '#', '&&&', '=', undefined, null, 42, {}, []])
      expect(decodeJob(nothing)).toEqual({ job: DEFAULT_JOB, dropped: [] });
  });
});

describe('what cannot be read is named and left at its usual value', () => {
  test.for([
    ['gsm=abc', 'gsm (abc)'],
    ['gsm=0', 'gsm (0)'],
    ['gsm=-80', 'gsm (-80)'],
    ['gsm=1e9', 'gsm (1e9)'],
    ['gsm=601', 'gsm (601)'],
    ['gsm=NaN', 'gsm (NaN)'],
    ['drop=1801', 'drop (1801)'],
    ['cobb=0', 'cobb (0)'],
    ['place=0', 'place (0)'],
    ['rh=101', 'rh (101)'],
    ['room=-5', 'room (-5)'],
    ['wide=3001', 'wide (3001)'],
    ['high=4', 'high (4)'],
    ['face=furry', 'face (furry)'],
    ['size=wet', 'size (wet)'],
    ['runs=perhaps', 'runs (perhaps)'],
    ['need=undo.fly', 'need (undo.fly)'],
    ['have=pva.UP', 'have (pva.UP)'],
    ['on=<b>', 'on (<b>)'],
    ['paper=../../x', 'paper (../../x)'],
    ['v=2', 'v (2)'],
    ['seen=1.pva.sound.5', 'seen (1.pva.sound.5)'],
    ['thick=%E0%A4%A', 'thick'],
    ['gsm=80&thick=20', 'thick (20)'],
  ] as const)('%s', ([link, named]) => {
    const read = decodeJob(link);
    expect(read.dropped).toEqual([named]);
    expect(jobProblems(read.job, catalogue)).toEqual([]);
  });
  test('what stands beside it is kept', () => {
    const read = decodeJob('paper=unryu&gsm=25&on=glass&drop=never&need=undo.fly.flat');
    expect(read.dropped).toEqual(['drop (never)', 'need (undo.fly.flat)']);
    expect(read.job).toMatchObject({
      paper: { family: 'unryu', grammage: 25 },
      substrate: 'glass',
      needs: ['undo', 'flat'],
    });
  });
  test('a record that this site does not have is named once the shelf is looked at', () => {
    const read = decodeJob('paper=moon-paper&on=cheese&tool=spoon&have=pva.moon-glue');
    expect(read.dropped).toEqual([]);
    const settled = settleJob(read.job, catalogue);
    expect([...settled.dropped].sort()).toEqual(['atHand', 'family', 'substrate', 'tool']);
    expect(settled.job).toEqual({ ...DEFAULT_JOB, atHand: ['pva'] });
  });
});

describe('nothing breaks it', () => {
  const key = fc.constantFrom(
    'v',
    'paper',
    'gsm',
    'thick',
    'drop',
    'cobb',
    'face',
    'size',
    'runs',
    'on',
    'wide',
    'high',
  );
  const later = fc.constantFrom('place', 'need', 'room', 'rh', 'tool', 'have', 'seen', '__proto__', 'constructor', '');
  const value = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.constantFrom('%', '%E0%A4%A', '%00', '__proto__', '1e400', '9'.repeat(400), '.'.repeat(300), '-0', ' '),
    fc.double().map(String),
  );
  const link = fc
    .array(fc.tuple(fc.oneof(key, later), value), { maxLength: 30 })
    .map((pairs) => pairs.map(([name, text]) => `${name}=${text}`).join('&'));
  const sound = (text: unknown) => {
    const { job, dropped } = decodeJob(text);
    expect(dropped.every((name) => typeof name === 'string' && name !== '')).toBe(true);
    expect(jobProblems(settleJob(job, catalogue).job, catalogue)).toEqual([]);
    return job;
  };
  test('any text', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary', maxLength: 300 }), link), (text) => {
        sound(text);
      }),
      { numRuns: 500 },
    );
  });
  test('anything that is not text', () => {
    fc.assert(
      fc.property(fc.anything(), (odd) => {
        sound(odd);
      }),
    );
  });
  test('a damaged link: any piece of a sound one, twice over', () => {
    fc.assert(
      fc.property(soundJob, fc.nat(300), fc.nat(300), (job, from, to) => {
        const whole = encodeJob(job);
        sound(whole.slice(from) + whole.slice(0, to));
      }),
    );
  });
  test('a huge one', () => {
    expect(sound(`gsm=80&${'x=1&'.repeat(1_000_000)}`).paper.grammage).toBe(80);
    expect(sound('have=' + 'a.'.repeat(1_000_000)).atHand.length).toBeLessThanOrEqual(60);
    expect(sound('%'.repeat(100_000))).toEqual(DEFAULT_JOB);
  });
  test('a name that is dangerous in a language is only a name', () => {
    const job = sound('__proto__=1&constructor=2&paper=__proto__&on=constructor&have=__proto__.hasOwnProperty');
    expect(Object.getPrototypeOf(job)).toBe(Object.prototype);
    expect(({} as Record<string, unknown>)['gsm']).toBeUndefined();
    expect(settleJob(job, catalogue).job).toEqual(DEFAULT_JOB);
  });
  test('and what it gives can be answered', () => {
    fc.assert(
      fc.property(link, (text) => {
        expect(choose(decodeJob(text).job, catalogue, 4)).toHaveLength(catalogue.adhesives.size);
      }),
      { numRuns: 40 },
    );
  });
});

describe('what is cut off or too many is named too', () => {
  test('a link cut off at its 4000th character says so', () => {
    const long = `${'x='.padEnd(3994, 'a')}&gsm=80`; // what is left of the end reads gsm=8
    const { job, dropped } = decodeJob(long);
    expect(job.paper.grammage === 80 || dropped.length > 0).toBe(true);
  });
  test('more adhesives at hand than are read are named', () => {
    const many = Array.from({ length: 70 }, (_, i) => `glue-${i}`).join('.');
    expect(decodeJob(`have=${many}`).dropped).not.toEqual([]);
  });
  test('a name that could not be read is shown short', () => {
    const { dropped } = decodeJob(`${'k'.repeat(3000)}=%`);
    expect(dropped.every((name) => name.length <= 100)).toBe(true);
  });
});
