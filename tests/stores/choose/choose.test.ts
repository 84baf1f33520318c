/** The chooser's state: what was typed is kept as typed, and the answer is to the last job that made sense. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import fc from 'fast-check';
import { choose } from '../../../src/core/choose/choose';
import { encodeJob } from '../../../src/core/choose/write-link';
import { formatAmount } from '../../../src/core/base/format';
import { DEFAULT_JOB, JOB_FIELDS } from '../../../src/core/choose/job';
import { rank } from '../../../src/core/choose/ranking';
import { seenIn } from '../../../src/core/choose/seen';
import { decodeJob } from '../../../src/core/choose/read-link';
import { catalogue } from '../../../src/data/catalogue';
import { createChoose, jobOfTexts, textsOfJob } from '../../../src/stores/choose/choose';
import { createChoosePage } from '../../../src/stores/choose/choose-page';
import { createChooseRest } from '../../../src/stores/choose/choose-rest';
import type { Flip } from '../../../src/core/choose/tipping-points';
import { openChoose } from '../../../src/stores/choose/open-choose';
import { openChoosePage } from '../../../src/stores/choose/open-choose-page';
import { jobWith, NUMBER_FIELDS, soundJob } from '../../core/support/jobs';

const open = () => createChoose(catalogue, (job) => rank(job, catalogue, 8));

describe('typing', () => {
  test('a job to inputs and back is the same job', () => {
    fc.assert(
      fc.property(soundJob, (job) => {
        expect(jobOfTexts(textsOfJob(job), catalogue)).toEqual({ job, problems: [] });
      }),
    );
  });
  test('a decimal comma and a thin space are numbers like any other', () => {
    const store = open();
    store.set('grammage', ' 80,5 ');
    expect(store.$job.get().paper.grammage).toBe(80.5);
    store.set('widthMm', '1\u202f200');
    expect(store.$job.get().widthMm).toBe(1200);
    expect(store.$texts.get()).toMatchObject({ grammage: ' 80,5 ', widthMm: '1\u202f200' });
  });
  test.for(NUMBER_FIELDS)('%s: bad text is kept, said to be bad, and the last good answer stays', (field) => {
    const store = open();
    store.set('grammage', '62');
    const [job, choices, tail] = [store.$job.get(), store.$choices.get(), store.$tail.get()];
    for (const text of ['abc', '-1', '1e9', '99999', '1,2,3', 'NaN', '80 g']) {
      store.set(field, text);
      expect(store.$texts.get()[field]).toBe(text);
      const { low, high, unit } = JOB_FIELDS[field];
      const allowed = `from ${formatAmount(low, 6)} to ${formatAmount(high, 6)}\u00a0${unit}`;
      expect(store.$problems.get()).toEqual([
        expect.objectContaining({ field, message: expect.stringContaining(allowed) }),
      ]);
      expect(store.$job.get()).toBe(job);
      expect(store.$choices.get()).toBe(choices);
      expect(store.$tail.get()).toBe(tail);
    }
    store.set(field, String(JOB_FIELDS[field].low));
    expect(store.$texts.get().grammage).toBe(field === 'grammage' ? '5' : '62');
  });
  test('a field that must be filled says so when it is emptied; one that may be empty does not', () => {
    const store = open();
    store.set('celsius', '  ');
    expect(store.$problems.get().map(({ field }) => field)).toEqual(['celsius']);
    store.set('celsius', '20');
    for (const field of ['grammage', 'caliper', 'dropSeconds', 'cobb', 'placeSeconds'] as const) store.set(field, '');
    expect(store.$problems.get()).toEqual([]);
    expect(store.$job.get().paper).toEqual({ family: 'chiyogami' });
  });
  test('two faults are two messages, and mending one leaves the other', () => {
    const store = open();
    store.set('grammage', 'heavy');
    store.set('humidity', '101');
    expect(store.$problems.get().map(({ field }) => field)).toEqual(['grammage', 'humidity']);
    store.set('grammage', '80');
    expect(store.$problems.get().map(({ field }) => field)).toEqual(['humidity']);
    expect(store.$texts.get().humidity).toBe('101');
  });
  test('a thickness that the weight forbids is said beside the thickness', () => {
    const store = open();
    store.set('grammage', '80');
    store.set('caliper', '0,1');
    expect(store.$problems.get()).toEqual([expect.objectContaining({ field: 'caliper' })]);
    store.set('caliper', '20');
    expect(store.$problems.get()[0]!.message).toMatch(/denser than cellulose/);
  });
  test('any text in any field: nothing typed is lost, and there is always an answer', () => {
    fc.assert(
      fc.property(fc.constantFrom(...NUMBER_FIELDS), fc.string(), (field, text) => {
        const store = open();
        store.set(field, text);
        expect(store.$texts.get()[field]).toBe(text);
        expect(store.$choices.get()).toHaveLength(catalogue.adhesives.size);
        expect(store.$tail.get()).not.toMatch(/NaN|undefined/);
      }),
      { numRuns: 60 },
    );
  });
});

describe('picking and ticking', () => {
  test('a tick comes and goes', () => {
    const store = open();
    store.toggle('needs', 'undo');
    store.toggle('atHand', 'pva');
    expect(store.$job.get()).toMatchObject({ needs: ['undo'], atHand: ['pva'] });
    expect(store.$choices.get()[0]!.adhesiveId).toBe('pva');
    store.toggle('needs', 'undo');
    store.toggle('atHand', 'pva');
    expect(store.$job.get()).toEqual(DEFAULT_JOB);
  });
  test('the time it suggests follows the size: A4 about 20 s (common practice, no source)', () => {
    const store = open();
    store.set('widthMm', '210');
    store.set('heightMm', '297');
    expect(store.$suggestedSeconds.get()).toBe(20);
  });
});

describe('what was typed before the chooser woke', () => {
  const opened = (typed: Record<string, string | boolean>) => openChoose(DEFAULT_JOB, { prefix: 'l-', typed });
  test('is what the first answer is to', () => {
    const store = opened({ 'l-grammage': '155', 'l-substrate': 'glass', 'l-unknown': 'x' });
    expect(store.$job.get()).toEqual({
      ...DEFAULT_JOB,
      paper: { ...DEFAULT_JOB.paper, grammage: 155 },
      substrate: 'glass',
    });
    expect(store.$problems.get()).toEqual([]);
  });
  test('stays as it was typed where it makes no job, which is said', () => {
    const store = opened({ 'l-grammage': 'heavy' });
    expect(store.$texts.get().grammage).toBe('heavy');
    expect(store.$problems.get().map(({ field }) => field)).toEqual(['grammage']);
    expect(store.$job.get()).toEqual(DEFAULT_JOB);
  });
  test.for([[{}], [{ 'l-task': 'mend' }], [{ 'l-needs': true }], [{ 'other-grammage': '7' }]])(
    '%j is left to the hand that typed it',
    ([typed]) => expect(opened(typed as Record<string, string>).$texts.get()).toEqual(textsOfJob(DEFAULT_JOB)),
  );
});

describe('the link', () => {
  test('it holds the job and what was seen', () => {
    const store = open();
    store.set('grammage', '62,5');
    const read = decodeJob(store.$tail.get());
    expect(read.job).toEqual(store.$job.get());
    expect(read.seen).toEqual(seenIn(store.$choices.get()[0]!));
  });
  test('the chooser in a lesson and the one on its own page send the same link for the same job', () => {
    expect(openChoose(jobWith('unryu', 25)).$tail.get()).toBe(
      createChoosePage(catalogue, jobWith('unryu', 25)).$tail.get(),
    );
    expect(openChoosePage().$job.get()).toEqual(DEFAULT_JOB);
  });
});

describe('a link that is opened', () => {
  const sent = jobWith('lokta-light', 55, { substrate: 'mount-board', needs: ['flat'], celsius: 24 });
  test('gives the job and the answer that were sent', () => {
    const page = createChoosePage(catalogue);
    const seen = seenIn(choose(sent, catalogue)[0]!);
    page.load(`?${encodeJob(sent, seen)}`);
    expect(page.$job.get()).toEqual(sent);
    expect(page.$texts.get()).toEqual(textsOfJob(sent));
    expect(page.$link.get()).toEqual({ dropped: [], seen });
    expect(page.$otherAnswer.get()).toBeUndefined();
    expect(page.$choices.get()[0]!.adhesiveId).toBe(seen.adhesiveId);
  });
  test('with nothing in it leaves everything alone', () => {
    const page = createChoosePage(catalogue);
    page.set('grammage', 'abc');
    for (const nothing of ['', '?', '#']) page.load(nothing);
    expect(page.$texts.get().grammage).toBe('abc');
    expect(page.$link.get()).toEqual({ dropped: [] });
  });
  test('broken in part names each part, by the name it has in the link, and keeps the rest', () => {
    const page = createChoosePage(catalogue);
    page.load('?v=1&paper=moon-paper&gsm=heavy&on=cheese&rh=40&have=pva.nectar');
    expect(page.$link.get().dropped).toEqual(['gsm (heavy)', 'paper (moon-paper)', 'on (cheese)', 'have']);
    expect(page.$job.get()).toEqual({ ...DEFAULT_JOB, humidity: 40, atHand: ['pva'] });
    expect(page.$problems.get()).toEqual([]);
  });
  test('any text at all: a sound job, no problems, no exception', () => {
    const page = createChoosePage(catalogue);
    const odd = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.string().map((text) => `?gsm=${text}&paper=${text}&have=${text}`),
    );
    fc.assert(
      fc.property(odd, (text) => {
        page.load(text);
        expect(page.$problems.get()).toEqual([]);
        expect(page.$choices.get()).toHaveLength(catalogue.adhesives.size);
      }),
      { numRuns: 40 },
    );
  });
  test('whose sender saw another answer says so, until the reader changes the job', () => {
    const page = createChoosePage(catalogue);
    const other = { modelVersion: 0, adhesiveId: 'glue-stick', verdict: 'sound', slipLow: 1, slipHigh: 2 } as const;
    page.load(encodeJob(sent, other));
    expect(page.$otherAnswer.get()).toEqual(other);
    page.set('grammage', '60');
    expect(page.$otherAnswer.get()).toBeUndefined();
    expect(page.$link.get()).toEqual({ dropped: [] });
  });
  test('what it dropped is said until the reader changes the job', () => {
    const page = createChoosePage(catalogue);
    page.load('gsm=abc');
    expect(page.$link.get().dropped).toEqual(['gsm (abc)']);
    page.toggle('needs', 'flat');
    expect(page.$link.get().dropped).toEqual([]);
  });
});

describe('what would change the answer', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });
  const later = (work: () => void) => void setTimeout(work, 10);

  test('it is looked for in turns, and found', () => {
    const rest = createChooseRest(createChoosePage(catalogue));
    rest.lookForFlips(later);
    expect(rest.$flips.get()).toBeUndefined();
    vi.runAllTimers();
    const flips = rest.$flips.get() as readonly Flip[];
    expect(flips.length).toBeGreaterThan(0);
    expect(new Set(flips.map(({ field }) => field)).size).toBe(flips.length);
  });
  test('the search is given up when the job moves on', () => {
    const page = createChoosePage(catalogue);
    const rest = createChooseRest(page);
    rest.lookForFlips(later);
    vi.advanceTimersByTime(15);
    page.set('grammage', '120');
    vi.runAllTimers();
    expect(rest.$flips.get()).toBeUndefined();
    rest.lookForFlips(later);
    vi.runAllTimers();
    expect((rest.$flips.get() as readonly Flip[]).find(({ field }) => field === 'grammage')?.from ?? 120).toBe(120);
  });
});
